"use client";

import { useRouter } from "next/navigation";
import { CHARGE_KINDS } from "#lib/trade/hire/accrual/charge-line.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import { CellSelect } from "#app/_ui/table/cell-select.tsx";
import { EditTable, type EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn, useRows } from "#app/_ui/table/use-rows.ts";
import { paths } from "#app/paths.ts";
import { enterInvoiceAction } from "../../_parts/actions.ts";
import { CHARGE_WORDS } from "../../_parts/charge-words.ts";
import { HeadFields, type InvoiceGiven } from "./head-fields.tsx";
import { toLines, type HandRow } from "./hand-row.ts";

export type HandFormProps = InvoiceGiven & { readonly items: readonly { readonly id: string; readonly name: string }[] };
const blank = (key: string): HandRow => ({ key, kind: "hire", docket: "", itemId: "", quantity: "", from: "", to: "", rate: "", amount: "" });

/** An invoice on paper, typed line by line. */
export function HandForm({ items, ...given }: HandFormProps) {
  const router = useRouter();
  const { project } = given;
  const { rows, change, add, remove } = useRows(["first"], blank);
  const answered = useAnswer(async (data) => {
    const text = (name: string): string => textOf(data, name);
    const head = { projectId: project.id, supplierId: text("supplierId"), number: text("number"), issuedOn: text("issuedOn"), from: text("from"), to: text("to"), currency: text("currency") };
    const entered = await enterInvoiceAction({ ...head, lines: toLines(rows, items, project.currency) });
    if (entered.ok) router.push(paths.hireInvoice(project.id, entered.value.invoiceId));
    return entered;
  });
  const input = (key: Exclude<keyof HandRow, "key" | "kind" | "itemId">, head: string, width: string, isFigure = false): EditColumn<HandRow> => ({
    key, head, width, isFigure,
    cell: (row, index) => (
      <CellInput label={`${head} of row ${index + 1}`} value={row[key]} onChange={(text) => change(index, { [key]: text })} field={`lines.${index}.${key}`} place={{ row: index, column: key }} problem={problemIn(answered.failure, `lines.${index}.${key}`)} isFigure={isFigure} />
    ),
  });
  const columns: EditColumn<HandRow>[] = [
    input("docket", "Docket", "8rem"),
    { key: "kind", head: "Charge", width: "9rem", cell: (row, index) => <CellSelect label={`Charge of row ${index + 1}`} value={row.kind} onChange={(kind) => change(index, { kind })} place={{ row: index, column: "kind" }} choices={CHARGE_KINDS.map((kind) => ({ value: kind, label: CHARGE_WORDS[kind] }))} /> },
    { key: "itemId", head: "Item", width: "10rem", cell: (row, index) => <CellSelect label={`Item of row ${index + 1}`} value={row.itemId} onChange={(itemId) => change(index, { itemId })} place={{ row: index, column: "itemId" }} choices={[{ value: "", label: "none" }, ...items.map(({ id, name }) => ({ value: id, label: name }))]} /> },
    input("quantity", "Pieces", "5rem", true), input("from", "From (YYYY-MM-DD)", "8rem"), input("to", "To (YYYY-MM-DD)", "8rem"),
    input("rate", "Rate", "5rem", true), input("amount", `Amount (${project.currency})`, "7rem", true),
  ];
  return (
    <SaveForm answered={answered} label="Enter and compare" done="Entered.">
      <HeadFields {...given} />
      <Section title="Lines" actions={<Button onPress={() => add(blank)}>Add a line</Button>}>
        <EditTable caption="Lines of the invoice" columns={columns} rows={rows} rowKey={({ key }) => key} rowName={(_row, index) => `row ${index + 1}`} onAdd={() => add(blank)} onRemove={remove} />
      </Section>
    </SaveForm>
  );
}
