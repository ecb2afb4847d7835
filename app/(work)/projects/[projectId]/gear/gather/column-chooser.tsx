"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import { groupBy } from "#lib/kernel/group-by.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { paths } from "#app/paths.ts";

type Column = { readonly id: string; readonly gridRef: string; readonly level: string; readonly mark: string; readonly stoodOn: string | null };
type Props = { readonly projectId: string; readonly columns: readonly Column[]; readonly chosen: readonly string[]; readonly on: string | null };

/** By the day they are planned for, or one by one; closed once a list is there. */
export function ColumnChooser({ projectId, columns, chosen, on }: Props) {
  const router = useRouter();
  const [ids, setIds] = useState<ReadonlySet<string>>(new Set(chosen));
  const toggle = (own: readonly string[], isIn: boolean) => setIds((before) => new Set(isIn ? [...before, ...own] : [...before].filter((id) => !own.includes(id))));
  if (columns.length === 0) return null;
  return (
    <details className="no-print border-2 border-ink bg-sheet" open={chosen.length === 0}>
      <summary className="flex min-h-glove cursor-pointer items-center px-4 font-semibold hover:bg-accent-wash">Which columns</summary>
      <div className="flex flex-col gap-5 border-t border-rule-soft p-4">
        <div className="max-w-xs">
          <TextField name="on" type="date" label="All planned to be stood on" isFilter size="glove" value={on ?? ""} onChange={(day) => router.push(paths.gather(projectId, day === "" ? {} : { on: day }))} />
        </div>
        {[...groupBy(columns, ({ level }) => level)].map(([level, own]) => {
          const all = own.every(({ id }) => ids.has(id));
          return (
            <fieldset key={level}>
              <legend className="font-semibold">{level}</legend>
              <CheckField name={`all-${level}`} label={`All ${own.length}`} size="glove" isSelected={all} onChange={(isIn) => toggle(own.map(({ id }) => id), isIn)} />
              <div className="grid grid-cols-2 gap-x-4 sm:grid-cols-4 lg:grid-cols-6">
                {own.map(({ id, gridRef, mark }) => <CheckField key={id} name={id} label={`${gridRef} ${mark}`} size="glove" isSelected={ids.has(id)} onChange={(isIn) => toggle([id], isIn)} />)}
              </div>
            </fieldset>
          );
        })}
        <Button kind="primary" size="glove" isDisabled={ids.size === 0} onPress={() => router.push(paths.gather(projectId, { columns: columns.filter(({ id }) => ids.has(id)).map(({ id }) => id).join(",") }))}>
          Make the list for {ids.size} {ids.size === 1 ? "column" : "columns"}
        </Button>
      </div>
    </details>
  );
}
