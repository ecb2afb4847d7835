"use client";

import { actWords } from "#app/_field/ticking/act-words.ts";
import { STANDING_WORDS } from "#app/_field/ticking/kept-row.tsx";
import type { KeptGathering, KeptItem } from "#app/_field/outbox/kept-item.ts";
import { Button } from "#app/_ui/control/button.tsx";
import type { ToTake } from "#lib/trade/gear/gather.ts";
import { lineName } from "./line-name.ts";
import type { Gathering } from "./use-gathering.ts";

type Names = Readonly<Record<string, string>>;
type Props = {
  readonly place: string; readonly lines: readonly ToTake[]; readonly kept: readonly KeptItem<KeptGathering>[]; readonly items: Names; readonly columns: Names;
  /** Trucks it can go on; none where it lies on one already. */
  readonly trucks: readonly { readonly id: string; readonly name: string }[]; readonly mayPost: boolean; readonly gathering: Gathering;
};

const MOST_NAMED = 6;
const ROW = "flex flex-wrap items-center justify-between gap-x-4 gap-y-2 p-3 print:p-0.5";

/** Lines to take from one place. Ticking one saves the movement on this phone, which sends it; it leaves the list at once. */
export function TakeLines({ place, lines, kept, items, columns, trucks, mayPost, gathering }: Props) {
  const keep = (given: readonly ToTake[], about: string, truckId: string | null) => void gathering.keep({
    kind: "gathered", about, readAt: gathering.readAt, to: truckId === null ? { what: "columns" } : { what: "truck", truckId },
    lines: given.flatMap(({ itemId, placeId, columns: parts }) => parts.map(({ columnId, quantity }) => ({ itemId, fromId: placeId, columnId, quantity }))),
  });
  const buttons = (given: readonly ToTake[], about: string) => (
    <div className="no-print flex flex-wrap gap-2">
      {trucks.map(({ id, name }) => <Button key={id} size="glove" onPress={() => keep(given, about, id)}>{trucks.length > 1 ? `On ${name}` : "On the truck"}</Button>)}
      <Button size="glove" kind="primary" onPress={() => keep(given, about, null)}>At the column</Button>
    </div>
  );
  const nameOf = ({ itemId, quantity }: ToTake): string => lineName(items, itemId, quantity);
  const forColumns = ({ columns: parts }: ToTake): string => {
    const named = parts.slice(0, MOST_NAMED).map(({ columnId, quantity }) => (parts.length > 1 ? `${columns[columnId] ?? ""} ${quantity}` : (columns[columnId] ?? "")));
    return `${named.join(", ")}${parts.length > MOST_NAMED ? ` and ${parts.length - MOST_NAMED} more` : ""}`;
  };
  return (
    <div className="flex flex-col gap-3">
      <ul className="border-2 border-ink bg-sheet print:columns-3 print:border-0">
        {kept.map((item) => <KeptLine key={item.event.id} item={item} onUndo={gathering.mayUndo(item) ? () => void gathering.undo(item) : null} />)}
        {lines.map((line) => (
          <li key={line.itemId} className="keep border-b border-rule-soft last:border-b-0 print:border-0">
            <div role="group" aria-label={nameOf(line)} className={ROW}>
              <p className="min-w-0 grow basis-52"><span aria-hidden className="mr-2 hidden size-3 border border-ink print:inline-block" /><strong className="font-semibold">{nameOf(line)}</strong> <span className="text-sm text-ink-soft">for {forColumns(line)}</span></p>
              {mayPost ? buttons([line], `${nameOf(line)} for ${forColumns(line)}`) : null}
            </div>
          </li>
        ))}
      </ul>
      {mayPost && lines.length > 1 ? <div className="no-print flex flex-wrap items-center gap-3"><p className="font-semibold">All {lines.length} lines:</p>{buttons(lines, `${lines.length} lines from ${place}`)}</div> : null}
    </div>
  );
}

/** Gathered on this phone; the list as it was read does not know of it yet. */
function KeptLine({ item: { about, event, standing }, onUndo }: { readonly item: KeptItem<KeptGathering>; readonly onUndo: (() => void) | null }) {
  return (
    <li className="no-print border-b border-rule-soft bg-accent-wash last:border-b-0">
      <div role="group" aria-label={`${about}: ${actWords(event)}`} className={ROW}>
        <p className="min-w-0 grow basis-52"><strong className="font-semibold">{about}</strong> <span className="block text-sm font-semibold text-accent">{actWords(event)}, {STANDING_WORDS[standing]}</span></p>
        {onUndo ? <Button size="glove" onPress={onUndo}>Undo</Button> : null}
      </div>
    </li>
  );
}
