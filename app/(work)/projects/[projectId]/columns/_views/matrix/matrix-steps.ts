import { idAt, type CellAt, type Matrix } from "./lay-matrix.ts";

export type Step = "up" | "down" | "left" | "right" | "row-start" | "row-end" | "first" | "last" | "page-up" | "page-down";

const PAGE = 5;
const WAYS: Readonly<Partial<Record<Step, readonly [row: number, place: number]>>> = { up: [-1, 0], down: [1, 0], left: [0, -1], right: [0, 1] };

const STEPS: Readonly<Record<string, Step>> = {
  ArrowUp: "up", ArrowDown: "down", ArrowLeft: "left", ArrowRight: "right", Home: "row-start", End: "row-end",
  PageUp: "page-up", PageDown: "page-down",
};
export function stepOf(pressed: string, isCtrl: boolean): Step | null {
  const step = STEPS[pressed] ?? null;
  if (!isCtrl) return step;
  return step === "row-start" ? "first" : step === "row-end" ? "last" : step;
}

/** Where a step leads. Arrows go on to the next cell with a column in it and stay where there is none. */
export function stepTo(matrix: Matrix, from: CellAt, step: Step): CellAt {
  const [lastRow, lastPlace] = [matrix.levels.length - 1, matrix.places.length - 1];
  const way = WAYS[step];
  if (way) return nextColumn(matrix, from, way) ?? from;
  switch (step) {
    case "row-start": return { row: from.row, place: 0 };
    case "row-end": return { row: from.row, place: lastPlace };
    case "first": return { row: 0, place: 0 };
    case "last": return { row: lastRow, place: lastPlace };
    case "page-up": return { row: Math.max(0, from.row - PAGE), place: from.place };
    default: return { row: Math.min(lastRow, from.row + PAGE), place: from.place };
  }
}

function nextColumn(matrix: Matrix, from: CellAt, [down, across]: readonly [number, number]): CellAt | null {
  let cell = { row: from.row + down, place: from.place + across };
  while (cell.row >= 0 && cell.place >= 0 && cell.row < matrix.levels.length && cell.place < matrix.places.length) {
    if (idAt(matrix, cell) !== null) return cell;
    cell = { row: cell.row + down, place: cell.place + across };
  }
  return null;
}
