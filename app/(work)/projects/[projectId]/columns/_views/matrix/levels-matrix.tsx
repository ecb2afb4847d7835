"use client";

import { useVirtualizer } from "@tanstack/react-virtual";
import { useEffect, useMemo, useRef } from "react";
import type { SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { columnWords, type Names } from "#app/(work)/projects/[projectId]/columns/_views/column-words.ts";
import { MatrixCell } from "./matrix-cell.tsx";
import { matrixOf } from "#app/(work)/projects/[projectId]/columns/_views/place-columns.ts";
import { useMatrixKeys, type CellAt } from "./use-matrix-keys.ts";

export type LevelsMatrixProps = {
  readonly columns: readonly SheetColumn[];
  readonly levels: readonly SheetLevel[];
  readonly names: Names;
  readonly isShown: (column: SheetColumn) => boolean;
  readonly selected: ReadonlySet<string>;
  readonly onToggle: (id: string, isRange: boolean) => void;
  readonly onToggleAll: (ids: readonly string[]) => void;
  readonly onOpen: (id: string) => void;
};

const CELL_PX = 56;
const HEAD_PX = 44;
const SIDE_PX = 116;
const HEAD = "absolute cursor-pointer truncate border-b border-r border-rule-soft bg-wash px-1 text-sm font-semibold hover:bg-accent-wash";

/** Levels down, grid positions across; only the cells in sight are drawn. */
export function LevelsMatrix({ columns, levels, names, isShown, selected, onToggle, onToggleAll, onOpen }: LevelsMatrixProps) {
  const matrix = useMemo(() => matrixOf(columns, levels), [columns, levels]);
  const box = useRef<HTMLDivElement>(null);
  const scroll = { getScrollElement: () => box.current, estimateSize: () => CELL_PX, overscan: 3 };
  const down = useVirtualizer({ ...scroll, count: matrix.levels.length, paddingStart: HEAD_PX, scrollPaddingStart: HEAD_PX });
  const across = useVirtualizer({ ...scroll, count: matrix.places.length, horizontal: true, paddingStart: SIDE_PX, scrollPaddingStart: SIDE_PX });
  const columnAt = ({ row, place }: CellAt): SheetColumn | undefined => matrix.at(matrix.levels[row]?.id ?? "", matrix.places[place] ?? "");
  const withColumn = (act: (id: string) => void) => (cell: CellAt) => {
    const column = columnAt(cell);
    if (column) act(column.id);
  };
  const wantsFocus = useRef(false);
  const keys = useMatrixKeys({
    rows: matrix.levels.length, places: matrix.places.length, onToggle: withColumn((id) => onToggle(id, false)), onOpen: withColumn(onOpen),
    onShow: ({ row, place }) => {
      wantsFocus.current = true;
      down.scrollToIndex(row);
      across.scrollToIndex(place);
    },
  });
  useEffect(() => {
    if (!wantsFocus.current) return;
    const target = box.current?.querySelector<HTMLElement>("[role=gridcell][tabindex='0']");
    if (target) wantsFocus.current = false;
    target?.focus({ preventScroll: true });
  });
  const shownIds = (kept: (column: SheetColumn) => boolean): string[] => columns.filter((column) => isShown(column) && kept(column)).map(({ id }) => id);
  return (
    <div
      ref={box} role="grid" aria-label="Levels and columns" aria-rowcount={matrix.levels.length + 1} aria-colcount={matrix.places.length + 1} aria-multiselectable
      onKeyDown={keys.onKeyDown} className="max-h-[70dvh] overflow-auto border-2 border-ink bg-sheet"
    >
      <div role="presentation" className="relative" style={{ height: down.getTotalSize(), width: across.getTotalSize() }}>
        <div role="row" aria-rowindex={1} className="sticky top-0 z-20" style={{ height: HEAD_PX }}>
          <span role="columnheader" className="sticky left-0 z-10 block h-full border-b border-r border-rule-soft bg-wash px-2 py-2 text-sm" style={{ width: SIDE_PX }}>Level</span>
          {across.getVirtualItems().map(({ index, start }) => (
            <span key={index} role="columnheader" aria-colindex={index + 2} className="contents">
              <button
                type="button" tabIndex={-1} title={`Select every shown column at ${matrix.places[index] ?? ""}`} className={`${HEAD} top-0`} style={{ left: start, width: CELL_PX, height: HEAD_PX }}
                onClick={() => onToggleAll(shownIds(({ gridRef }) => gridRef === matrix.places[index]))}
              >
                {matrix.places[index]}
              </button>
            </span>
          ))}
        </div>
        {down.getVirtualItems().map(({ index: row, start: top }) => {
          const level = matrix.levels[row];
          return (
            <div key={row} role="row" aria-rowindex={row + 2} className="absolute left-0" style={{ top, height: CELL_PX, width: across.getTotalSize() }}>
              <span role="rowheader" aria-colindex={1} className="sticky left-0 z-10 block h-full" style={{ width: SIDE_PX }}>
                <button
                  type="button" tabIndex={-1} title={`Select every shown column on ${level?.name ?? ""}`} className={`${HEAD} inset-0 px-2 text-left`}
                  onClick={() => onToggleAll(shownIds(({ fromLevelId }) => fromLevelId === level?.id))}
                >
                  {level?.name}
                </button>
              </span>
              {across.getVirtualItems().map(({ index: place, start: left }) => {
                const column = columnAt({ row, place });
                const isHere = keys.cell.row === row && keys.cell.place === place;
                const isSelected = column !== undefined && selected.has(column.id);
                return (
                  <div
                    key={place} role="gridcell" aria-colindex={place + 2} tabIndex={isHere ? 0 : -1} {...(column ? { "aria-selected": isSelected } : {})}
                    className="absolute top-0 cursor-pointer border-b border-r border-rule-soft focus-visible:z-10"
                    style={{ left, width: CELL_PX, height: CELL_PX }}
                    onClick={(event) => { keys.setCell({ row, place }); if (column) onToggle(column.id, event.shiftKey); }}
                    onDoubleClick={() => { if (column) onOpen(column.id); }}
                  >
                    {column
                      ? <MatrixCell column={column} words={columnWords(column, names)} isFaint={!isShown(column)} isSelected={isSelected} />
                      : <span className="sr-only">no column</span>}
                  </div>
                );
              })}
            </div>
          );
        })}
      </div>
    </div>
  );
}
