import { useState, type KeyboardEvent } from "react";
import { idAt, type CellAt, type Matrix } from "./lay-matrix.ts";
import { stepOf, stepTo } from "./matrix-steps.ts";

export type MatrixActs = {
  readonly onShow: (cell: CellAt) => void;
  readonly onToggle: (id: string, isRange: boolean) => void;
  readonly onOpen: (id: string) => void;
  readonly onLevel: (row: number) => void;
  readonly onPlace: (place: number) => void;
  readonly onAll: () => void;
  readonly onNone: () => void;
};

/**
 * Keys of a grid as WAI-ARIA describes it: arrows walk, with Shift they select on the way, Home and End run along the
 * row, Space selects, with Shift the level, with Ctrl the position; Enter opens.
 */
export function useMatrixKeys(matrix: Matrix, acts: MatrixActs) {
  const [asked, setCell] = useState<CellAt>({ row: 0, place: 0 });
  const within = (value: number, count: number): number => Math.max(0, Math.min(count - 1, value));
  const cell = { row: within(asked.row, matrix.levels.length), place: within(asked.place, matrix.places.length) };
  const here = idAt(matrix, cell);

  const space = (event: KeyboardEvent): void => {
    if (event.shiftKey) acts.onLevel(cell.row);
    else if (event.ctrlKey) acts.onPlace(cell.place);
    else if (here !== null) acts.onToggle(here, false);
  };
  const goTo = (to: CellAt, isSelecting: boolean): void => {
    setCell(to);
    acts.onShow(to);
    const id = idAt(matrix, to);
    if (isSelecting && id !== null) acts.onToggle(id, true);
  };
  const actOf = (event: KeyboardEvent): (() => void) | null => {
    const isCtrl = event.ctrlKey || event.metaKey;
    const step = stepOf(event.key, isCtrl);
    if (step !== null) return () => goTo(stepTo(matrix, cell, step), event.shiftKey);
    if (event.key === " ") return () => space(event);
    if (event.key === "Enter") return () => { if (here !== null) acts.onOpen(here); };
    if (event.key === "Escape") return acts.onNone;
    return isCtrl && event.key.toLowerCase() === "a" ? acts.onAll : null;
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const act = actOf(event);
    if (!act) return;
    event.preventDefault();
    act();
  };
  return { cell, setCell, onKeyDown };
}
