"use client";

import type { ColumnsSheet, SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { LevelPlan } from "#app/_ui/drawing/level-plan/level-plan.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { ColumnList } from "./column-list.tsx";
import type { Names } from "./column-words.ts";
import { axesOf, placeColumns } from "./place-columns.ts";

export type PlanViewProps = {
  readonly sheet: Pick<ColumnsSheet, "gridLines">;
  readonly level: SheetLevel;
  /** Every column of the level, shown or not. */
  readonly columns: readonly SheetColumn[];
  readonly names: Names;
  readonly isShown: (column: SheetColumn) => boolean;
  readonly selected: ReadonlySet<string>;
  readonly onSelect: (ids: ReadonlySet<string>) => void;
  readonly onToggle: (id: string, isRange: boolean) => void;
  readonly onOpen: (id: string) => void;
  readonly hrefOf: (id: string) => string;
};

/** One level on its grid, and under it the columns that stand on no two known grid lines. */
export function PlanView({ sheet, level, columns, names, isShown, selected, onSelect, onToggle, onOpen, hrefOf }: PlanViewProps) {
  const { placed, unplaced } = placeColumns(columns, sheet.gridLines, isShown);
  const shown = unplaced.filter(isShown);
  return (
    <div className="flex flex-col gap-5">
      {placed.length > 0
        ? <LevelPlan levelName={level.name} columns={placed} axes={axesOf(sheet.gridLines)} selected={selected} onSelect={onSelect} onOpen={onOpen} tap="select" />
        : null}
      {shown.length > 0 ? (
        <Section title="Not on the grid" note={`${shown.length}; their reference names no two grid lines`}>
          <ColumnList columns={shown} names={names} selected={selected} onToggle={onToggle} hrefOf={hrefOf} />
        </Section>
      ) : null}
      {placed.length === 0 && unplaced.length === 0 ? <p>No column stands on {level.name}.</p> : null}
    </div>
  );
}
