"use client";

import { defaultRangeExtractor, useVirtualizer, type Range } from "@tanstack/react-virtual";
import { useEffect, useRef } from "react";
import type { CellAt, Matrix } from "./lay-matrix.ts";

export const CELL_PX = 56;
export const HEAD_PX = 44;
export const SIDE_PX = 116;

/** The cell that has the keyboard is drawn wherever one has scrolled to, so that Tab finds back to it. */
const keeping = (index: number, count: number) => (range: Range): number[] => {
  const inSight = defaultRangeExtractor(range);
  return index >= count || inSight.includes(index) ? inSight : [...inSight, index].sort((a, b) => a - b);
};

/** Which rows and positions are in sight, and the way to bring a cell there and give it the keyboard. */
export function useMatrixWindow(matrix: Matrix, cell: CellAt) {
  const box = useRef<HTMLDivElement>(null);
  const wanted = useRef(false);
  const [rows, places] = [matrix.levels.length, matrix.places.length];
  const scroll = { getScrollElement: () => box.current, estimateSize: () => CELL_PX, overscan: 3 };
  const down = useVirtualizer({ ...scroll, count: rows, paddingStart: HEAD_PX, scrollPaddingStart: HEAD_PX, rangeExtractor: keeping(cell.row, rows) });
  const across = useVirtualizer({
    ...scroll, count: places, horizontal: true, paddingStart: SIDE_PX, scrollPaddingStart: SIDE_PX, rangeExtractor: keeping(cell.place, places),
  });
  useEffect(() => {
    if (!wanted.current) return;
    const target = box.current?.querySelector<HTMLElement>("[role=gridcell][tabindex='0']");
    if (target) wanted.current = false;
    target?.focus({ preventScroll: true });
  });
  const bringInSight = ({ row, place }: CellAt): void => {
    wanted.current = true;
    down.scrollToIndex(row);
    across.scrollToIndex(place);
  };
  return { box, down, across, bringInSight };
}
