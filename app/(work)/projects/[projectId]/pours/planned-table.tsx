"use client";

import { toDay, weekday } from "#lib/kernel/days.ts";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import type { PlannedColumn, ShownDay } from "./planned-column.ts";

export type PlannedTableProps = {
  readonly columns: readonly PlannedColumn[]; readonly chosen: ReadonlySet<string>; readonly canPlan: boolean;
  readonly workingDays: readonly number[]; readonly today: string; readonly onToggle: (id: string) => void;
};

export function PlannedTable({ columns, chosen, canPlan, workingDays, today, onToggle }: PlannedTableProps) {
  const day = (shown: ShownDay) => <OneDay shown={shown} workingDays={workingDays} today={today} />;
  const cells: DataColumn<PlannedColumn>[] = [
    {
      key: "column", head: "Column", isRowHead: true,
      cell: (column) => canPlan
        ? <CheckField name={`choose-${column.id}`} label={column.gridRef} size="glove" isSelected={chosen.has(column.id)} onChange={() => onToggle(column.id)} />
        : column.gridRef,
    },
    { key: "mark", head: "Mark", cell: ({ mark }) => mark },
    { key: "stood", head: "Stand", cell: ({ stood }) => day(stood) },
    { key: "poured", head: "Pour", cell: ({ poured }) => day(poured) },
    { key: "stripped", head: "Strip", cell: ({ stripped }) => day(stripped) },
    { key: "pour", head: "Pour name", cell: ({ pour }) => pour ?? "" },
  ];
  return <DataTable caption="Columns of this level with the days planned or recorded" columns={cells} rows={columns} rowKey={({ id }) => id} />;
}

type OneDayProps = { readonly shown: ShownDay; readonly workingDays: readonly number[]; readonly today: string };

function OneDay({ shown, workingDays, today }: OneDayProps) {
  if (shown === null) return <span className="text-ink-soft">–</span>;
  const note = noteOn(shown, workingDays, today);
  return (
    <span className="flex flex-col">
      <DayText day={shown.on} />
      {note ? <span className={`text-sm ${note === "recorded" ? "text-ink-soft" : "font-semibold text-flag-deep"}`}>{note}</span> : null}
    </span>
  );
}

function noteOn({ on, isRecorded }: NonNullable<ShownDay>, workingDays: readonly number[], today: string): string | null {
  if (isRecorded) return "recorded";
  if (on < today) return "overdue";
  return workingDays.includes(weekday(toDay(on))) ? null : "no working day";
}
