"use client";

import { memo, useMemo } from "react";
import type { SheetStore } from "../sheet/sheet-store.ts";
import type { Names } from "../sheet/column-words.ts";
import type { Toggle } from "../state/use-selection.ts";
import { cellOf, columnsBetween, idAt, layMatrix, type CellAt } from "./lay-matrix.ts";
import { MatrixHead, MatrixSide } from "./matrix-heads.tsx";
import { MatrixRow } from "./matrix-row.tsx";
import { useMatrixKeys } from "./use-matrix-keys.ts";
import { HEAD_PX, useMatrixWindow } from "./use-matrix-window.ts";

export type LevelsMatrixProps = {
  readonly store: SheetStore;
  readonly names: Names;
  /** The columns that pass the filter: their levels and positions are laid out. */
  readonly shownIds: readonly string[];
  readonly selected: ReadonlySet<string>;
  readonly onToggle: Toggle;
  readonly onToggleAll: (ids: readonly string[]) => void;
  readonly onSelect: (ids: ReadonlySet<string>) => void;
  readonly onOpen: (id: string) => void;
};

const useLaidOut = (store: SheetStore, shownIds: readonly string[]) =>
  useMemo(() => {
    const columns = shownIds.flatMap((id) => store.get(id) ?? []);
    const matrix = layMatrix(store.list(), columns, store.sheet.levels);
    const idsOn = (levelId: string | undefined) => columns.filter(({ fromLevelId }) => fromLevelId === levelId).map(({ id }) => id);
    const idsAt = (gridRef: string | undefined) => columns.filter((column) => column.gridRef === gridRef).map(({ id }) => id);
    return { matrix, shown: new Set(shownIds), idsOn, idsAt };
  }, [store, shownIds]);

/** Levels down, grid positions across; only the cells in sight are drawn. */
export const LevelsMatrix = memo(function LevelsMatrix(props: LevelsMatrixProps) {
  const { store, names, shownIds, selected, onToggle, onToggleAll, onSelect, onOpen } = props;
  const { matrix, shown, idsOn, idsAt } = useLaidOut(store, shownIds);
  const between = (fromId: string, toId: string): readonly string[] => {
    const [from, to] = [fromId, toId].map((id) => store.get(id)).map((column) => (column ? cellOf(matrix, column) : null));
    return from && to ? columnsBetween(matrix, from, to).filter((id) => shown.has(id)) : [toId];
  };
  const toggle = (id: string, isRange: boolean): void => onToggle(id, isRange, between);
  const selectLevel = (row: number): void => onToggleAll(idsOn(matrix.levels[row]?.id));
  const selectPlace = (place: number): void => onToggleAll(idsAt(matrix.places[place]));
  const keys = useMatrixKeys(matrix, {
    onShow: (cell) => view.bringInSight(cell), onToggle: toggle, onOpen, onLevel: selectLevel, onPlace: selectPlace,
    onAll: () => onSelect(new Set(shownIds)), onNone: () => onSelect(new Set()),
  });
  const view = useMatrixWindow(matrix, keys.cell);
  const places = view.across.getVirtualItems();
  const press = (cell: CellAt, isRange: boolean): void => {
    keys.setCell(cell);
    const id = idAt(matrix, cell);
    if (id !== null) toggle(id, isRange);
  };
  return (
    <div
      ref={view.box} role="grid" aria-label="Levels and columns" aria-rowcount={matrix.levels.length + 1} aria-colcount={matrix.places.length + 1} aria-multiselectable
      onKeyDown={keys.onKeyDown} className="max-h-[70dvh] select-none overflow-auto border-2 border-ink bg-sheet"
    >
      <div role="presentation" className="relative" style={{ height: view.down.getTotalSize(), width: view.across.getTotalSize() }}>
        <div role="row" aria-rowindex={1} className="sticky top-0 z-20" style={{ height: HEAD_PX }}>
          <MatrixHead places={places} names={matrix.places} onSelect={selectPlace} />
        </div>
        {view.down.getVirtualItems().map(({ index: row, start }) => (
          <MatrixRow
            key={row} row={row} top={start} width={view.across.getTotalSize()} places={places} matrix={matrix} store={store} names={names} shown={shown} selected={selected}
            tabStop={keys.cell.row === row ? keys.cell.place : null} onPress={press} onOpen={onOpen}
          >
            <MatrixSide name={matrix.levels[row]?.name ?? ""} onSelect={() => selectLevel(row)} />
          </MatrixRow>
        ))}
      </div>
    </div>
  );
});
