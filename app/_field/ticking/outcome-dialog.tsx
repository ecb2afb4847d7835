"use client";

import { useState } from "react";
import { groupBy } from "#lib/kernel/group-by.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { wordFinding } from "#app/_ui/wording-findings.ts";
import type { Outcome, Skipped } from "./outcome.ts";
import { columnName, nameSome, type TickColumn } from "./tick-column.ts";

export type OutcomeDialogProps = {
  readonly outcome: Outcome;
  /** Every column it may speak of. */
  readonly columns: readonly TickColumn[];
  readonly timeZone: string;
  readonly isBusy: boolean;
  readonly onReason: (reason: string) => void;
  readonly onLeave: () => void;
  readonly onSelectOnly?: ((columnIds: readonly string[]) => void) | undefined;
};

type Said = { readonly key: string; readonly title: string; readonly todo: string; readonly columnIds: readonly string[] };

/** Columns with the same thing to say stand together. */
function sayings(rows: readonly { columnId: string; title: string; todo: string }[]): Said[] {
  const byTitle = groupBy(rows, ({ title }) => title);
  return [...byTitle].map(([title, same]) => ({ key: title, title, todo: same[0]?.todo ?? "", columnIds: same.map(({ columnId }) => columnId) }));
}

function wordSkipped({ kind, why }: Skipped, timeZone: string) {
  if (kind === "done") return [{ title: "Done already.", todo: "" }];
  if (why.length === 0) return [{ title: "Not taken.", todo: "Press the line about what is saved at the top of the page to see why." }];
  return why.map((finding) => wordFinding(finding, timeZone));
}

/** After a press that did not go through whole: what was taken, what was skipped and why, and what can be done now. */
export function OutcomeDialog(props: OutcomeDialogProps) {
  const { outcome, columns, timeZone, isBusy, onReason, onLeave, onSelectOnly } = props;
  const [reason, setReason] = useState("");
  const skipped = sayings(outcome.skipped.flatMap((each) => wordSkipped(each, timeZone).map((words) => ({ columnId: each.columnId, ...words }))));
  const queried = sayings(outcome.taken.flatMap(({ columnId, queried: why }) => why.map((finding) => ({ columnId, ...wordFinding(finding, timeZone) }))));
  const asks = outcome.skipped.filter(({ kind }) => kind === "asks");
  const open = [...new Set(outcome.skipped.filter(({ kind }) => kind !== "done").map(({ columnId }) => columnId))];
  const single = outcome.taken.length + outcome.skipped.length === 1;
  const title = single
    ? `${outcome.words}: ${asks.length > 0 ? "say why" : outcome.taken.length > 0 ? "recorded, to be settled" : "not recorded"}`
    : `${outcome.taken.length} taken, ${outcome.skipped.length} skipped`;
  return (
    <Dialog title={title} isAlert isOpen onOpenChange={(isOpen) => { if (!isOpen) onLeave(); }}>
      <div className="flex flex-col gap-4">
        {single ? null : <p className="font-semibold">{outcome.words}</p>}
        {queried.length > 0 ? <Sayings heading={single ? null : "Recorded, but to be settled"} said={queried} columns={columns} /> : null}
        {skipped.length > 0 ? <Sayings heading={single ? null : "Skipped"} said={skipped} columns={columns} /> : null}
        {asks.length > 0 ? (
          <form
            className="flex flex-col gap-3 border-t-2 border-ink pt-3"
            onSubmit={(event) => { event.preventDefault(); if (reason.trim() !== "") onReason(reason.trim()); }}
          >
            <TextField name="reason" label={asks.length === 1 ? "Reason" : `Reason, for all ${asks.length}`} size="glove" rows={2} maxLength={300} value={reason} onChange={setReason} isRequired />
            <Button type="submit" kind="primary" size="glove" wide isPending={isBusy} isDisabled={reason.trim() === ""}>Record with this reason</Button>
          </form>
        ) : null}
        <div className="flex flex-wrap gap-3">
          {onSelectOnly && open.length > 0 && !single ? (
            <Button size="glove" onPress={() => { onLeave(); onSelectOnly(open); }}>Select only these {open.length}</Button>
          ) : null}
          <Button size="glove" onPress={onLeave}>{asks.length > 0 ? "Leave as it is" : "Close"}</Button>
        </div>
      </div>
    </Dialog>
  );
}

function Sayings({ heading, said, columns }: { readonly heading: string | null; readonly said: readonly Said[]; readonly columns: readonly TickColumn[] }) {
  const nameOf = (id: string): string => {
    const column = columns.find((each) => each.id === id);
    return column === undefined ? "a column" : columnName(column);
  };
  return (
    <section>
      {heading ? <h3 className="mb-1">{heading}</h3> : null}
      <ul className="flex flex-col gap-2">
        {said.map(({ key, title, todo, columnIds }) => (
          <li key={key} className="border-l-4 border-flag pl-3">
            <p><strong className="font-semibold">{columnIds.length > 6 ? nameSome(columnIds.map(nameOf)) : columnIds.map(nameOf).join("; ")}:</strong> {title}</p>
            {todo === "" ? null : <p className="text-ink-soft">{todo}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}
