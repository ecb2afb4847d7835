"use client";

import { useState } from "react";
import type { Choice } from "#app/_ui/field/select-field.tsx";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { Link } from "#app/_ui/control/link.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { settleShortfallsAction } from "../actions.ts";

type Entry = { readonly id: string; readonly about: "not in the ledger" | "gone on"; readonly itemId: string; readonly item: string; readonly family: string; readonly column: string; readonly columnId: string; readonly level: string; readonly quantity: number };
type Place = Choice & { readonly kind: string };
type Props = { readonly projectId: string; readonly shortfalls: readonly Entry[]; readonly places: readonly Place[]; readonly canSettle: boolean };
type Group = { readonly key: string; readonly item: string; readonly about: Entry["about"]; readonly isPanel: boolean; readonly entries: readonly Entry[]; readonly total: number };

function grouped(entries: readonly Entry[]): readonly Group[] {
  const keys = [...new Set(entries.map(({ itemId, about }) => `${about} ${itemId}`))];
  return keys.flatMap((key) => {
    const own = entries.filter(({ itemId, about }) => `${about} ${itemId}` === key);
    const [first] = own;
    return first ? [{ key, item: first.item, about: first.about, isPanel: first.family === "panel", entries: own, total: own.reduce((sum, { quantity }) => sum + quantity, 0) }] : [];
  });
}

/** What the ticks used and the ledger could not give: the first thing to put right on this page. */
export function ShortfallList({ projectId, shortfalls, places, canSettle }: Props) {
  const [settling, setSettling] = useState<Group | null>(null);
  return (
    <section aria-labelledby="shortfalls" className="border-2 border-l-8 border-flag bg-flag-wash p-3">
      <h2 id="shortfalls" className="text-flag-deep">Ledger and columns disagree</h2>
      <ul className="mt-2 flex flex-col">
        {grouped(shortfalls).map((group) => (
          <li key={group.key} className="flex flex-wrap items-center justify-between gap-x-4 gap-y-2 border-t border-flag py-2">
            <div className="min-w-0 grow basis-72">
              <p className="font-semibold">{group.about === "not in the ledger" ? `${group.total} × ${group.item} used but not in the ledger` : `${group.total} × ${group.item} already gone on when a tick was taken back`}</p>
              <p className="text-sm">
                {group.entries.slice(0, 8).map(({ id, column, columnId, level, quantity }, index) => (
                  <span key={id}>{index > 0 ? ", " : ""}<Link href={paths.column(projectId, columnId)}>{column}</Link> {level} ({quantity})</span>
                ))}
                {group.entries.length > 8 ? ` and ${group.entries.length - 8} more` : ""}
              </p>
            </div>
            {canSettle ? <Button size="glove" onPress={() => setSettling(group)}>Settle</Button> : null}
          </li>
        ))}
      </ul>
      {canSettle ? null : <p className="mt-1 text-sm">The owner and the office settle this.</p>}
      <Dialog title={settling ? `Settle ${settling.total} × ${settling.item}` : "Settle"} isOpen={settling !== null} onOpenChange={(isOpen) => { if (!isOpen) setSettling(null); }}>
        {settling ? <SettleForms projectId={projectId} group={settling} places={places} onDone={() => setSettling(null)} /> : null}
      </Dialog>
    </section>
  );
}

function SettleForms({ projectId, group, places, onDone }: { readonly projectId: string; readonly group: Group; readonly places: readonly Place[]; readonly onDone: () => void }) {
  const shortfallIds = group.entries.map(({ id }) => id);
  const sources = places.filter(({ kind }) => kind === "bought" || kind === "supplier");
  const spots = places.filter(({ kind }) => kind === "cleaning bay" || kind === "rack");
  const added = useAnswer(async (data) => {
    const answer = await settleShortfallsAction({ projectId, shortfallIds, as: "added", sourceId: textOf(data, "source"), placeId: textOf(data, "place"), happenedAt: new Date().toISOString() });
    if (answer.ok) onDone();
    return answer;
  });
  const dismissed = useAnswer(async (data) => {
    const answer = await settleShortfallsAction({ projectId, shortfallIds, as: "dismissed", reason: textOf(data, "reason") });
    if (answer.ok) onDone();
    return answer;
  });
  const mayAdd = group.about === "not in the ledger" && !group.isPanel;
  return (
    <div className="flex flex-col gap-6">
      {mayAdd ? (
        <FieldForm action={added.submit} {...(added.failure ? { failure: added.failure } : {})}>
          <h3>They were there: take them into the ledger</h3>
          <SelectField name="source" label="They came from" choices={sources} defaultValue={sources[0]?.value ?? ""} isRequired />
          <SelectField name="place" label="Where the column is stripped, they are now at" choices={spots} defaultValue={spots[0]?.value ?? ""} isRequired />
          <div className="flex justify-end"><Button type="submit" kind="primary" isPending={added.isPending}>Take in {group.total}</Button></div>
        </FieldForm>
      ) : null}
      <FieldForm action={dismissed.submit} {...(dismissed.failure ? { failure: dismissed.failure } : {})}>
        <h3>{mayAdd ? "They were not used, or are counted elsewhere" : "The ledger is right as it stands"}</h3>
        <TextField name="reason" label="Why" maxLength={200} isRequired />
        <div className="flex justify-end"><Button type="submit" isPending={dismissed.isPending}>Dismiss</Button></div>
      </FieldForm>
    </div>
  );
}
