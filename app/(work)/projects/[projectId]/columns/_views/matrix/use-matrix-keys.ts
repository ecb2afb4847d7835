import { useState, type KeyboardEvent } from "react";

export type CellAt = { readonly row: number; readonly place: number };
type Input = { readonly rows: number; readonly places: number; readonly onShow: (cell: CellAt) => void; readonly onToggle: (cell: CellAt) => void; readonly onOpen: (cell: CellAt) => void };

/** Keys of a grid as WAI-ARIA describes it: arrows walk, Home and End run along the row, Space selects, Enter opens. */
export function useMatrixKeys({ rows, places, onShow, onToggle, onOpen }: Input) {
  const [cell, setCell] = useState<CellAt>({ row: 0, place: 0 });
  const within = (value: number, count: number): number => Math.max(0, Math.min(count - 1, value));
  const goTo = (next: CellAt): void => {
    const to = { row: within(next.row, rows), place: within(next.place, places) };
    setCell(to);
    onShow(to);
  };
  const moves: Readonly<Record<string, CellAt>> = {
    ArrowUp: { ...cell, row: cell.row - 1 }, ArrowDown: { ...cell, row: cell.row + 1 },
    ArrowLeft: { ...cell, place: cell.place - 1 }, ArrowRight: { ...cell, place: cell.place + 1 },
    Home: { ...cell, place: 0 }, End: { ...cell, place: places - 1 },
    PageUp: { ...cell, row: cell.row - 5 }, PageDown: { ...cell, row: cell.row + 5 },
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const move = moves[event.key];
    if (!move && event.key !== " " && event.key !== "Enter") return;
    event.preventDefault();
    if (move) goTo(move);
    else if (event.key === " ") onToggle(cell);
    else onOpen(cell);
  };
  return { cell: { row: within(cell.row, rows), place: within(cell.place, places) }, setCell, onKeyDown };
}
