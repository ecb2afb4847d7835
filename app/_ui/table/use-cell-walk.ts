"use client";

import { useEffect, useRef, type KeyboardEvent, type RefObject } from "react";

const stepOf = (key: string): number => (key === "Enter" || key === "ArrowDown" ? 1 : key === "ArrowUp" ? -1 : 0);

function focusCell(box: HTMLElement | null, row: number, column: string): boolean {
  const cell = box?.querySelector<HTMLElement>(`[data-row="${row}"][data-column="${column}"]`);
  cell?.focus();
  if (cell instanceof HTMLInputElement) cell.select();
  return Boolean(cell);
}

export type CellWalk = { readonly box: RefObject<HTMLDivElement | null>; readonly walk: (event: KeyboardEvent<HTMLDivElement>) => void };

/** Goes up and down a column of cells; Enter in the last row adds a row and goes to its first cell. */
export function useCellWalk(rowCount: number, firstColumn: string | undefined, onAdd: (() => void) | undefined): CellWalk {
  const box = useRef<HTMLDivElement>(null);
  const goTo = useRef<{ row: number; column: string } | undefined>(undefined);
  useEffect(() => {
    if (goTo.current && focusCell(box.current, goTo.current.row, goTo.current.column)) goTo.current = undefined;
  }, [rowCount]);
  const walk = (event: KeyboardEvent<HTMLDivElement>) => {
    const { row, column } = event.target instanceof HTMLElement ? event.target.dataset : {};
    const step = stepOf(event.key);
    if (step === 0 || row === undefined || column === undefined || event.nativeEvent.isComposing) return;
    // Arrow keys in a list of choices choose.
    if (event.key !== "Enter" && event.target instanceof HTMLSelectElement) return;
    event.preventDefault();
    if (focusCell(box.current, Number(row) + step, column) || event.key !== "Enter" || !onAdd) return;
    goTo.current = { row: Number(row) + 1, column: firstColumn ?? column };
    onAdd();
  };
  return { box, walk };
}
