"use client";

import type { Failure } from "#lib/kernel/result.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import { EditTable, type EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn } from "#app/_ui/table/use-rows.ts";
import { RATE_FIELDS, type RateField, type RateRow } from "./terms-entry.ts";

const HEADS: Readonly<Record<RateField, string>> = {
  supplierName: "Supplier calls it", perDay: "Day", perWeek: "Week", perMonth: "Month", minimumDays: "Least days", lossPrice: "Loss", damagePrice: "Damage", cleaningPrice: "Cleaning",
};

export type RatesTableProps = { readonly rows: readonly RateRow[]; readonly failure: Failure | undefined; readonly onChange: (index: number, part: Partial<RateRow>) => void };

export function RatesTable({ rows, failure, onChange }: RatesTableProps) {
  if (rows.length === 0) return <EmptyState title="No gear to price yet">Add the items on the Gear page, or the clamps under Clamps; they appear here with a row each.</EmptyState>;
  // The server counts the rows that were sent; the ones without a rate were not.
  const sent = rows.filter(({ perDay, perWeek, perMonth }) => [perDay, perWeek, perMonth].some((text) => text.trim() !== ""));
  const columns: EditColumn<RateRow>[] = [
    { key: "name", head: "Item", width: "11rem", cell: ({ name }) => <span className="inline-flex min-h-hand items-center font-semibold">{name}</span> },
    ...RATE_FIELDS.map((field): EditColumn<RateRow> => ({
      key: field, head: HEADS[field], width: field === "supplierName" ? "11rem" : "5.5rem", isFigure: field !== "supplierName",
      cell: (row, index) => {
        const path = `rates.${sent.indexOf(row)}.${field}`;
        return (
          <CellInput
            label={`${HEADS[field]} of ${row.name}`} value={row[field]} onChange={(text) => onChange(index, { [field]: text })} field={path}
            place={{ row: index, column: field }} problem={problemIn(failure, path)} isFigure={field !== "supplierName"}
          />
        );
      },
    })),
  ];
  return <EditTable caption="Rates and prices a piece" columns={columns} rows={rows} rowKey={({ key }) => key} rowName={({ name }) => name} />;
}
