import type { Units } from "#app/_ui/value/format-quantity.ts";
import { lengthText, readSideMm } from "#app/_ui/value/typed-length.ts";

export const SHAPES = [
  { value: "rectangle", label: "Rectangular or square" },
  { value: "circle", label: "Round" },
] as const;
export type Shape = (typeof SHAPES)[number]["value"];

export type Mark = { readonly id: string; readonly name: string; readonly shape: string; readonly widthMm: number; readonly depthMm: number };
export type MarkRow = {
  readonly key: string; readonly id: string | undefined; readonly name: string; readonly shape: Shape; readonly width: string; readonly depth: string;
};

export const toShape = (text: string): Shape => (text === "circle" ? "circle" : "rectangle");

export const toMarkRow = (mark: Mark, units: Units): MarkRow => ({
  key: mark.id, id: mark.id, name: mark.name, shape: toShape(mark.shape),
  width: lengthText(mark.widthMm, units), depth: lengthText(mark.depthMm, units),
});

/** A column with one side given is square; a round one has its diameter as width. */
export function toMark(row: MarkRow, units: Units) {
  const widthMm = readSideMm(row.width, units) ?? Number.NaN;
  const isOneFigure = row.shape === "circle" || row.depth.trim() === "";
  return {
    ...(row.id === undefined ? {} : { id: row.id }),
    name: row.name, shape: row.shape, widthMm, depthMm: isOneFigure ? widthMm : readSideMm(row.depth, units) ?? Number.NaN,
  };
}
