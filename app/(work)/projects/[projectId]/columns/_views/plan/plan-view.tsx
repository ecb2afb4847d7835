"use client";

import { useMemo } from "react";
import type { ColumnsSheet, SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { LevelPlan } from "#app/_ui/drawing/level-plan/level-plan.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { ColumnList } from "../column-list.tsx";
import type { Names } from "../sheet/column-words.ts";
import { axesOf, placeColumns } from "./place-columns.ts";
import { PrintedPlan } from "./printed-plan.tsx";

export type PlanViewProps = {
  readonly sheet: Pick<ColumnsSheet, "gridLines">;
  readonly level: SheetLevel;
  /** Every column of the level, shown or not. */
  readonly columns: readonly SheetColumn[];
  readonly names: Names;
  readonly shown: ReadonlySet<string>;
  readonly selected: ReadonlySet<string>;
  readonly onSelect: (ids: ReadonlySet<string>) => void;
  readonly onToggle: (id: string, isRange: boolean) => void;
  readonly onOpen: (id: string) => void;
  readonly hrefOf: (id: string) => string;
};

/** One level on its grid, and under it the columns that stand on no two known grid lines. */
export function PlanView({ sheet, level, columns, names, shown, selected, onSelect, onToggle, onOpen, hrefOf }: PlanViewProps) {
  const axes = useMemo(() => axesOf(sheet.gridLines), [sheet]);
  const { placed, unplaced } = useMemo(() => placeColumns(columns, sheet.gridLines, ({ id }) => shown.has(id)), [columns, sheet, shown]);
  const listed = unplaced.filter(({ id }) => shown.has(id));
  return (
    <div className="flex flex-col gap-5">
      {placed.length > 0
        ? <div className="print:hidden"><LevelPlan levelName={level.name} columns={placed} axes={axes} selected={selected} onSelect={onSelect} onOpen={onOpen} tap="select" /></div>
        : null}
      {placed.length > 0 ? <PrintedPlan columns={placed} axes={axes} /> : null}
      {listed.length > 0 ? (
        <Section title="Not on the grid" note={`${listed.length}; their reference names no two grid lines`}>
          <ColumnList columns={listed} names={names} selected={selected} onToggle={onToggle} hrefOf={hrefOf} />
          <ul className="hidden print:block">{listed.map((column) => <li key={column.id}>{column.gridRef}</li>)}</ul>
        </Section>
      ) : null}
    </div>
  );
}
