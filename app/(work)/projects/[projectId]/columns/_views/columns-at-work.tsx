"use client";

import { useRouter } from "next/navigation";
import { useCallback, useMemo } from "react";
import type { ColumnsSheet, SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { SignLegend } from "#app/_ui/drawing/sign/sign-legend.tsx";
import { TickPanel } from "#app/_field/tick-panel.tsx";
import { columnName, type TickColumn, type TickPerson } from "#app/_field/ticking/tick-column.ts";
import { paths } from "#app/paths.ts";
import { FilterBar } from "./bars/filter-bar.tsx";
import { PrintedCaption } from "./bars/printed-caption.tsx";
import { SelectionBar } from "./bars/selection-bar.tsx";
import { StageCounts } from "./bars/stage-counts.tsx";
import { ViewBar } from "./bars/view-bar.tsx";
import { ColumnList } from "./column-list.tsx";
import { LevelsMatrix } from "./matrix/levels-matrix.tsx";
import { PrintedMatrix } from "./matrix/printed-matrix.tsx";
import { PlanView } from "./plan/plan-view.tsx";
import { namesOf, type Names } from "./sheet/column-words.ts";
import { sameAsLast } from "./sheet/select-columns.ts";
import { measure } from "./sheet/shown-amounts.ts";
import { useInView } from "./state/use-in-view.ts";
import { useLiveColumns } from "./state/use-live-columns.ts";
import { useSelection } from "./state/use-selection.ts";

export type ColumnsAtWorkProps = { readonly sheet: ColumnsSheet; readonly me: TickPerson };

const toTickColumn = (column: SheetColumn, names: Names): TickColumn => ({
  id: column.id, gridRef: column.gridRef, mark: names.mark(column.markId), level: names.level(column.fromLevelId), shape: column.shape,
  widthMm: column.width_mm, depthMm: column.depth_mm, done: column.done, flagged: column.flagged,
});

/** Two views of the same columns, a list for the phone, and the panel to record on those selected. */
export function ColumnsAtWork({ sheet, me }: ColumnsAtWorkProps) {
  const router = useRouter();
  const { store, columns, hear } = useLiveColumns(sheet, me);
  const { which, shown, show, inView, ids, shownIds } = useInView(store, columns);
  const { view, level, levels } = which;
  const names = useMemo(() => namesOf(sheet), [sheet]);
  const amountsOf = useMemo(() => measure(sheet), [sheet]);
  const { selected, setSelected, toggle, toggleMany, clear, last } = useSelection(ids);
  const chosen = useMemo(() => columns.filter(({ id }) => selected.has(id)).map((column) => toTickColumn(column, names)), [columns, selected, names]);
  const onLevel = useMemo(() => (level ? columns.filter(({ fromLevelId }) => fromLevelId === level.id) : columns), [columns, level]);
  const hrefOf = useCallback((id: string): string => paths.column(sheet.projectId, id), [sheet.projectId]);
  const open = useCallback((id: string): void => router.push(hrefOf(id)), [router, hrefOf]);
  const [one, another] = chosen;
  const common = { names, selected, onToggle: toggle };

  return (
    <div className={`flex flex-col gap-4 ${chosen.length > 0 ? "pb-72 print:pb-0" : ""}`}>
      <ViewBar
        view={view} level={level} levels={levels} onLevel={(levelId) => show({ ...shown, levelId })}
        onView={(next) => show({ ...shown, view: next, levelId: next === "levels" ? "" : shown.levelId })}
      />
      <FilterBar sheet={sheet} filter={shown.filter} onFilter={(next) => show({ ...shown, filter: next })} />
      <PrintedCaption sheet={sheet} level={level} filter={shown.filter} />
      <StageCounts columns={inView} amounts={amountsOf(inView)} units={sheet.units} />
      <SelectionBar
        count={chosen.length} hidden={chosen.filter(({ id }) => !shownIds.has(id)).length} canSelect={ids.length > 0} hasLast={last.size > 0}
        only={one && !another ? { name: columnName(one), href: hrefOf(one.id) } : null}
        onAll={() => setSelected(new Set(ids))} onLast={() => setSelected(sameAsLast(columns, last, level?.id ?? null))} onClear={clear}
      />
      {inView.length === 0 ? <p className="text-ink-soft">No column passes the filter. “Show all” takes it away.</p> : null}
      {view === "plan" && level ? (
        <PlanView sheet={sheet} level={level} columns={onLevel} shown={shownIds} onSelect={setSelected} onOpen={open} hrefOf={hrefOf} {...common} />
      ) : null}
      {view === "levels" && ids.length > 0 ? (
        <div className="print:hidden"><LevelsMatrix store={store} shownIds={ids} onToggleAll={toggleMany} onSelect={setSelected} onOpen={open} {...common} /></div>
      ) : null}
      {view === "list" ? <ColumnList columns={inView} hrefOf={hrefOf} {...common} /> : null}
      {view === "plan" ? null : <PrintedMatrix columns={inView} levels={sheet.levels} />}
      <SignLegend />
      <TickPanel
        project={{ id: sheet.projectId, timeZone: sheet.timeZone, units: sheet.units }} me={me} plumbing={sheet.plumbing} columns={chosen}
        onTaken={hear} onSelectOnly={(only) => setSelected(new Set(only))} onClear={clear}
      />
    </div>
  );
}
