"use client";

import { useRouter } from "next/navigation";
import { useMemo } from "react";
import type { ColumnsSheet, SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { SignLegend } from "#app/_ui/drawing/sign/sign-legend.tsx";
import { TickPanel } from "#app/_field/tick-panel.tsx";
import type { TickColumn, TickPerson } from "#app/_field/ticking/tick-column.ts";
import { paths } from "#app/paths.ts";
import { passes } from "./column-filter.ts";
import { ColumnList } from "./column-list.tsx";
import { namesOf, type Names } from "./column-words.ts";
import { FilterBar } from "#app/(work)/projects/[projectId]/columns/_views/bars/filter-bar.tsx";
import { LevelsMatrix } from "#app/(work)/projects/[projectId]/columns/_views/matrix/levels-matrix.tsx";
import { PlanView } from "./plan-view.tsx";
import { PrintedMatrix } from "#app/(work)/projects/[projectId]/columns/_views/matrix/printed-matrix.tsx";
import { SelectionBar } from "#app/(work)/projects/[projectId]/columns/_views/bars/selection-bar.tsx";
import { amountsOf } from "./shown-amounts.ts";
import { StageCounts } from "#app/(work)/projects/[projectId]/columns/_views/bars/stage-counts.tsx";
import { useLiveColumns } from "#app/(work)/projects/[projectId]/columns/_views/state/use-live-columns.ts";
import { useSelection } from "#app/(work)/projects/[projectId]/columns/_views/state/use-selection.ts";
import { useShown } from "#app/(work)/projects/[projectId]/columns/_views/state/use-shown.ts";
import { useWhichView } from "#app/(work)/projects/[projectId]/columns/_views/state/use-which-view.ts";
import { ViewBar } from "#app/(work)/projects/[projectId]/columns/_views/bars/view-bar.tsx";

export type ColumnsBoardProps = { readonly sheet: ColumnsSheet; readonly me: TickPerson };

const toTickColumn = (column: SheetColumn, names: Names): TickColumn => ({
  id: column.id, gridRef: column.gridRef, mark: names.mark(column.markId), level: names.level(column.fromLevelId), shape: column.shape,
  widthMm: column.width_mm, depthMm: column.depth_mm, done: column.done, flagged: column.flagged,
});

/** Two views of the same columns, a list for the phone, and the panel to record on those selected. */
export function ColumnsBoard({ sheet, me }: ColumnsBoardProps) {
  const router = useRouter();
  const { columns, hear } = useLiveColumns(sheet, me);
  const { shown, show } = useShown();
  const { view, level, levels } = useWhichView(sheet, columns, shown);
  const names = useMemo(() => namesOf(sheet), [sheet]);
  const { filter } = shown;
  const elevation = useMemo(() => new Map(sheet.levels.map(({ id, elevationMm }) => [id, elevationMm])), [sheet]);
  const inView = useMemo(() => {
    const kept = columns.filter((column) => passes(column, filter) && (view === "levels" || level === null || column.fromLevelId === level.id));
    return kept.sort((a, b) => (elevation.get(a.fromLevelId) ?? 0) - (elevation.get(b.fromLevelId) ?? 0) || naturalOrder(a.gridRef, b.gridRef));
  }, [columns, filter, view, level, elevation]);
  const ids = useMemo(() => inView.map(({ id }) => id), [inView]);
  const { selected, setSelected, toggle, toggleMany, clear, last } = useSelection(ids);
  const chosen = columns.filter(({ id }) => selected.has(id)).map((column) => toTickColumn(column, names));
  const hrefOf = (id: string): string => paths.column(sheet.projectId, id);
  const open = (id: string): void => router.push(hrefOf(id));
  const isShown = (column: SheetColumn): boolean => passes(column, filter);
  const common = { names, selected, onToggle: toggle };

  return (
    <div className={`flex flex-col gap-4 ${chosen.length > 0 ? "pb-72" : ""}`}>
      <ViewBar view={view} level={level} levels={levels} onView={(next) => show({ ...shown, view: next })} onLevel={(levelId) => show({ ...shown, levelId })} />
      <FilterBar sheet={sheet} filter={filter} onFilter={(next) => show({ ...shown, filter: next })} />
      <StageCounts columns={inView} amounts={useMemo(() => amountsOf(inView, sheet), [inView, sheet])} units={sheet.units} />
      <SelectionBar count={selected.size} shownIds={ids} last={last} onSelect={setSelected} onClear={clear} />
      {view === "plan" && level ? (
        <PlanView sheet={sheet} level={level} columns={columns.filter(({ fromLevelId }) => fromLevelId === level.id)} isShown={isShown} onSelect={setSelected} onOpen={open} hrefOf={hrefOf} {...common} />
      ) : null}
      {view === "levels" ? (
        <>
          <div className="print:hidden"><LevelsMatrix columns={columns} levels={sheet.levels} isShown={isShown} onToggleAll={toggleMany} onOpen={open} {...common} /></div>
          <PrintedMatrix columns={inView} levels={sheet.levels} />
        </>
      ) : null}
      {view === "list" ? <ColumnList columns={inView} hrefOf={hrefOf} {...common} /> : null}
      {inView.length === 0 ? <p className="text-ink-soft">No column passes the filter. “Show all” takes it away.</p> : null}
      <SignLegend />
      <TickPanel
        project={{ id: sheet.projectId, timeZone: sheet.timeZone, units: sheet.units }} me={me} plumbing={sheet.plumbing} columns={chosen}
        onTaken={hear} onSelectOnly={(only) => setSelected(new Set(only))} onClear={clear}
      />
    </div>
  );
}
