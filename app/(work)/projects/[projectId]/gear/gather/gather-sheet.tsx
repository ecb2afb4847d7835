"use client";

import { useEffect, useState } from "react";
import { groupBy } from "#lib/kernel/group-by.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { formatQuantity } from "#app/_ui/value/format-quantity.ts";
import type { GatherList } from "#lib/trade/gear/gather.ts";
import { expectedTake } from "#app/_field/outbox/expected-take.ts";
import type { KeptGathering } from "#app/_field/outbox/kept-item.ts";
import { mayBeSplit } from "#app/_field/outbox/split-gathering.ts";
import { KeptRow } from "#app/_field/ticking/kept-row.tsx";
import type { TickPerson, TickProject } from "#app/_field/ticking/tick-column.ts";
import { lineName } from "./line-name.ts";
import { TakeLines } from "./take-lines.tsx";
import { useGathering } from "./use-gathering.ts";

type Names = Readonly<Record<string, string>>;
export type Places = Readonly<Record<string, { readonly name: string; readonly kind: string }>>;
type Props = {
  readonly project: TickProject; readonly me: TickPerson; /** When the list was read: the server's instant. */ readonly readAt: string;
  readonly listKey: string; readonly list: GatherList; readonly items: Names; readonly places: Places;
  readonly trucks: readonly { readonly id: string; readonly name: string }[]; readonly columns: Names; readonly mayPost: boolean;
};

const STORE = "shutterwright gather ";

/** What is cut is ticked on this phone only, by list, so that it is there again without reception. */
function useTicked(listKey: string) {
  const [ticked, setTicked] = useState<readonly string[]>([]);
  useEffect(() => {
    try {
      const kept: unknown = JSON.parse(localStorage.getItem(STORE + listKey) ?? "[]");
      setTicked(Array.isArray(kept) ? kept.filter((each) => typeof each === "string") : []);
    } catch {
      setTicked([]);
    }
  }, [listKey]);
  const tick = (key: string, isIn: boolean) => {
    const next = isIn ? [...ticked, key] : ticked.filter((each) => each !== key);
    setTicked(next);
    localStorage.setItem(STORE + listKey, JSON.stringify(next));
  };
  return { ticked, tick };
}

export function GatherSheet({ project, me, readAt, listKey, list, items, places, trucks, columns, mayPost }: Props) {
  const { ticked, tick } = useTicked(listKey);
  const length = (mm: number): string => { const { figure, unit } = formatQuantity(mm, "mm", project.units); return unit === "" ? figure : `${figure} ${unit}`; };
  const row = (key: string, label: string) => <li key={key}><CheckField name={key} label={label} size="glove" isSelected={ticked.includes(key)} onChange={(isIn) => tick(key, isIn)} /></li>;
  const gathering = useGathering({ projectId: project.id, me, readAt, columnIds: Object.keys(columns) });
  const { kept, refused } = gathering;
  const nameOf = (lines: KeptGathering["lines"]): string => lineName(items, lines[0]?.itemId ?? "", lines.reduce((sum, { quantity }) => sum + quantity, 0));
  const toTake = groupBy(expectedTake(list.take, kept.map(({ event }) => event)), ({ placeId }) => placeId);
  const keptFrom = groupBy(kept, ({ event }) => event.lines[0]?.fromId ?? "");
  const taken = [...new Set([...list.take.map(({ placeId }) => placeId), ...toTake.keys(), ...keptFrom.keys()])].filter((id) => toTake.has(id) || keptFrom.has(id));
  const cut = [
    ...list.cutPanels.map(({ widthMm, heightMm, count }) => row(`cut ${widthMm} ${heightMm}`, `${count} × panel ${length(widthMm)} × ${length(heightMm)}`)),
    ...list.cutFillets.map(({ lengthMm, count }) => row(`fillet ${lengthMm}`, `${count} × fillet ${length(lengthMm)}`)),
  ];
  const lists = "grid gap-x-6 sm:grid-cols-2 lg:grid-cols-3 print:grid-cols-3";
  const isAllThere = taken.length + cut.length + list.elsewhere.length + list.short.length === 0;
  return (
    <div className="flex flex-col gap-6 print:gap-2">
      {isAllThere ? <p className="border-2 border-l-8 border-accent bg-accent-wash p-3 font-semibold">Everything these columns need lies at them.</p> : null}
      {refused.length > 0 ? (
        <ul className="no-print flex flex-col gap-2">
          {refused.map((item) => (
            <KeptRow key={item.event.id} item={item} project={project}>
              {mayBeSplit(item.event) ? <Button size="glove" kind="primary" onPress={() => void gathering.oneByOne(item, nameOf)}>Take its lines one by one</Button> : null}
            </KeptRow>
          ))}
        </ul>
      ) : null}
      {taken.map((placeId) => (
        <Section key={placeId} title={places[placeId]?.kind === "truck" ? `On the truck: ${places[placeId]?.name ?? ""}` : `Take from: ${places[placeId]?.name ?? "elsewhere"}`}>
          <TakeLines place={places[placeId]?.name ?? "elsewhere"} lines={toTake.get(placeId) ?? []} kept={keptFrom.get(placeId) ?? []} gathering={gathering} items={items} columns={columns} trucks={places[placeId]?.kind === "truck" ? [] : trucks} mayPost={mayPost} />
        </Section>
      ))}
      {cut.length > 0 ? <Section title="Cut" note={<span className="no-print">ticks stay on this phone</span>}><ul className={lists}>{cut}</ul></Section> : null}
      {list.elsewhere.length > 0 ? (
        <Section title="Not at hand" note="Panels of its set, or spoken for, that are still elsewhere">
          <ul className={lists}>{list.elsewhere.map(({ itemId, placeId }) => <li key={itemId} className="flex min-h-hand items-center">{items[itemId] ?? "Panel"}: {placeId ? (places[placeId]?.name ?? "elsewhere") : "nowhere"}</li>)}</ul>
        </Section>
      ) : null}
      {list.short.length > 0 ? (
        <Section title="Short: order or bring">
          <ul className="border-2 border-l-8 border-flag bg-flag-wash px-4 py-2">{list.short.map(({ itemId, quantity }) => <li key={itemId} className="font-semibold">{quantity} × {items[itemId] ?? "item"}</li>)}</ul>
        </Section>
      ) : null}
    </div>
  );
}
