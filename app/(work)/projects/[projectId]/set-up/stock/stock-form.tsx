"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { EditTable } from "#app/_ui/table/edit-table.tsx";
import { OutdatedNotice } from "#app/_ui/table/outdated-notice.tsx";
import { useEntries } from "#app/_ui/table/use-entries.ts";
import { useRows } from "#app/_ui/table/use-rows.ts";
import type { CuttingRule } from "#lib/contracts/planning/cutting.ts";
import { changeCuttingRuleAction } from "./actions.ts";
import { readSaw, SawFields } from "./saw-fields.tsx";
import { sheetColumns, timberColumns } from "./stock-columns.tsx";
import { toSheet, toSheetRow, toTimber, toTimberRow, type Edge } from "./stock-row.ts";

export type StockFormProps = { readonly projectId: string; readonly version: number; readonly edge: Edge; readonly rule: CuttingRule; readonly canEdit: boolean };

export function StockForm({ projectId, version, edge, rule, canEdit }: StockFormProps) {
  const keyed = <Item,>(items: readonly Item[]) => items.map((item, index) => ({ item, key: `row-${index}` }));
  const sheets = useRows(keyed(rule.sheets), ({ item, key }) => toSheetRow(item, edge, key), version);
  const timbers = useRows(keyed(rule.timbers), ({ item, key }) => toTimberRow(item, edge, key), version);
  const saw = useEntries(version, () => rule);
  const parts = [sheets, timbers, saw];
  const saving = <Answer extends { readonly ok: boolean }>(save: Promise<Answer>) => parts.reduce((saved, part) => part.saving(saved), save);
  const answered = useAnswer((data) => saving(changeCuttingRuleAction({
    projectId, version: Math.min(...parts.map(({ seen }) => seen)),
    cuttingRule: { ...readSaw(data, edge), sheets: sheets.rows.map((row) => toSheet(row, edge)), timbers: timbers.rows.map((row) => toTimber(row, edge)) },
  })));
  const addSheet = () => sheets.add((key) => ({ key, given: undefined, length: "", width: "", price: "", onHand: "" }));
  const addTimber = () => timbers.add((key) => ({ key, given: undefined, use: "backing", length: "", price: "", onHand: "" }));
  const { failure } = answered;
  return (
    <SaveForm answered={answered} label="Save the stock" done="Saved. Cutting plans follow it from now on." canEdit={canEdit} className="flex flex-col gap-8">
      <OutdatedNotice isOutdated={parts.some(({ isOutdated }) => isOutdated)} startAgain={() => parts.forEach((part) => part.startAgain())} />
      <Section title="Sheets of ply" note="A count on the rack is used up and not bought; no count means as many as needed">
        <div className="flex flex-col gap-3">
          <EditTable caption="Sheets of ply" columns={sheetColumns({ edge, failure, change: sheets.change })} rows={sheets.rows} rowKey={({ key }) => key} rowName={(_row, index) => `row ${index + 1}`} onAdd={canEdit ? addSheet : undefined} onRemove={canEdit ? sheets.remove : undefined} />
          {canEdit ? <div><Button onPress={addSheet}>Add a sheet or an offcut</Button></div> : null}
        </div>
      </Section>
      <Section title="Lengths of timber">
        <div className="flex flex-col gap-3">
          <EditTable caption="Lengths of timber" columns={timberColumns({ edge, failure, change: timbers.change })} rows={timbers.rows} rowKey={({ key }) => key} rowName={(_row, index) => `row ${index + 1}`} onAdd={canEdit ? addTimber : undefined} onRemove={canEdit ? timbers.remove : undefined} />
          {canEdit ? <div><Button onPress={addTimber}>Add a length</Button></div> : null}
        </div>
      </Section>
      <div onInput={() => saw.set((now) => now)}><SawFields key={saw.seen} rule={saw.value} edge={edge} /></div>
    </SaveForm>
  );
}
