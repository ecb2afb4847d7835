"use client";

import { useState, useTransition } from "react";
import { uuidv7From } from "#lib/kernel/ids.ts";
import { brokenRule, type Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import type { GatherList } from "#lib/trade/gear/gather.ts";
import { gatherLinesAction } from "../_parts/actions.ts";

type Names = Readonly<Record<string, string>>;
type Line = GatherList["take"][number];
type Props = {
  readonly projectId: string; readonly lines: readonly Line[]; readonly items: Names; readonly columns: Names;
  /** Trucks it can go on; none where it lies on one already. */
  readonly trucks: readonly { readonly id: string; readonly name: string }[]; readonly mayPost: boolean;
};

const newId = (): string => uuidv7From(Date.now(), crypto.getRandomValues(new Uint8Array(10)));
const MOST_NAMED = 6;

/** Lines to take from one place. Ticking one posts the movement: it needs reception, and leaves the list once it is taken. */
export function TakeLines({ projectId, lines, items, columns, trucks, mayPost }: Props) {
  const [failure, setFailure] = useState<Failure | null>(null);
  const [sending, setSending] = useState<string | null>(null);
  const [isPending, start] = useTransition();
  const send = (key: string, given: readonly Line[], truckId: string | null) => {
    setSending(key);
    start(async () => {
      const answer = await gatherLinesAction({
        projectId, movementId: newId(), happenedAt: new Date().toISOString(), to: truckId === null ? { what: "columns" } : { what: "truck", truckId },
        lines: given.flatMap(({ itemId, placeId, columns: parts }) => parts.map(({ columnId, quantity }) => ({ itemId, fromId: placeId, columnId, quantity }))),
      }).catch(() => brokenRule("not-reached"));
      setFailure(answer.ok ? null : answer.failure);
      setSending(null);
    });
  };
  const busy = (key: string) => ({ isPending: isPending && sending === key, isDisabled: isPending && sending !== key });
  const buttons = (key: string, given: readonly Line[]) => (
    <div className="no-print flex flex-wrap gap-2">
      {trucks.map(({ id, name }) => <Button key={id} size="glove" {...busy(`${key} ${id}`)} onPress={() => send(`${key} ${id}`, given, id)}>{trucks.length > 1 ? `On ${name}` : "On the truck"}</Button>)}
      <Button size="glove" kind="primary" {...busy(`${key} column`)} onPress={() => send(`${key} column`, given, null)}>At the column</Button>
    </div>
  );
  const nameOf = ({ itemId, quantity }: Line): string => (items[itemId]?.startsWith("P-") ? `Panel ${items[itemId]}` : `${quantity} × ${items[itemId] ?? "item"}`);
  const forColumns = ({ columns: parts }: Line): string => {
    const named = parts.slice(0, MOST_NAMED).map(({ columnId, quantity }) => (parts.length > 1 ? `${columns[columnId] ?? ""} ${quantity}` : (columns[columnId] ?? "")));
    return `${named.join(", ")}${parts.length > MOST_NAMED ? ` and ${parts.length - MOST_NAMED} more` : ""}`;
  };
  return (
    <div className="flex flex-col gap-3">
      {failure ? <FailureNotice failure={failure} /> : null}
      <ul className="border-2 border-ink bg-sheet print:columns-3 print:border-0">
        {lines.map((line) => (
          <li key={line.itemId} className="keep border-b border-rule-soft last:border-b-0 print:border-0">
            <div role="group" aria-label={nameOf(line)} className="flex flex-wrap items-center justify-between gap-x-4 gap-y-2 p-3 print:p-0.5">
              <p className="min-w-0 grow basis-52"><span aria-hidden className="mr-2 hidden size-3 border border-ink print:inline-block" /><strong className="font-semibold">{nameOf(line)}</strong> <span className="text-sm text-ink-soft">for {forColumns(line)}</span></p>
              {mayPost ? buttons(line.itemId, [line]) : null}
            </div>
          </li>
        ))}
      </ul>
      {mayPost && lines.length > 1 ? <div className="no-print flex flex-wrap items-center gap-3"><p className="font-semibold">All {lines.length} lines:</p>{buttons("all", lines)}</div> : null}
    </div>
  );
}
