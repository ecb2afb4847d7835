import type { Units } from "#app/_ui/value/format-quantity.ts";
import { lengthText, readShown, readSideMm } from "#app/_ui/value/typed-length.ts";

export const SHAPES = [
  { value: "rectangle", label: "Rectangular or square" },
  { value: "circle", label: "Round" },
] as const;
export type Shape = (typeof SHAPES)[number]["value"];

export type Mark = { readonly id: string; readonly name: string; readonly shape: string; readonly widthMm: number; readonly depthMm: number };
/** A mark as it stands in the table while someone types; `given` is the mark it began as. */
export type MarkRow = {
  readonly key: string; readonly given: Mark | undefined; readonly name: string; readonly shape: Shape; readonly width: string; readonly depth: string;
};

export const toShape = (text: string): Shape => (text === "circle" ? "circle" : "rectangle");

export const toMarkRow = (mark: Mark, units: Units): MarkRow => ({
  key: mark.id, given: mark, name: mark.name, shape: toShape(mark.shape),
  width: lengthText(mark.widthMm, units), depth: lengthText(mark.depthMm, units),
});

function sideMm(text: string, givenMm: number | undefined, units: Units): number {
  const shown = givenMm === undefined ? undefined : { text: lengthText(givenMm, units), mm: givenMm };
  return readShown(text, shown, (typed) => readSideMm(typed, units)) ?? Number.NaN;
}

/** A column with one side given is square; a round one has its diameter as width. */
export function toMark(row: MarkRow, units: Units) {
  const widthMm = sideMm(row.width, row.given?.widthMm, units);
  const isOneFigure = row.shape === "circle" || row.depth.trim() === "";
  return {
    ...(row.given === undefined ? {} : { id: row.given.id }),
    name: row.name, shape: row.shape, widthMm, depthMm: isOneFigure ? widthMm : sideMm(row.depth, row.given?.depthMm, units),
  };
}
