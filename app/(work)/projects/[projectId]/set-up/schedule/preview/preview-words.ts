import type { ColumnChange } from "#lib/trade/schedule/compare-schedule.ts";
import type { LayoutName, RecognisedHeading } from "#lib/trade/schedule/table/raw-lift.ts";
import { STAGES } from "#lib/trade/progress/stages.ts";
import { lengthFigure, sectionText, type Units } from "#app/_ui/value/format-quantity.ts";
import type { ShortPreview } from "./shorten-preview.ts";

/** "1 column", "14 columns". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

export const LAYOUTS: Readonly<Record<LayoutName, string>> = {
  "list": "a list: one row for each mark and lift",
  "matrix": "a matrix: marks or grid references across, levels down",
  "turned matrix": "a matrix: levels across, marks or grid references down",
};

/** 0 is nothing yet, 1 the first stage. */
export const stageWords = (stage: number): string => STAGES[stage - 1] ?? "not started";

const FIELD_WORDS: Readonly<Partial<Record<string, string>>> = {
  fromLevel: "from level", toLevel: "to level", fromElevation: "elevation of the lower level", toElevation: "elevation of the upper level",
  mainBars: "main bars", grid: "grid reference",
};

/** "Width (mm): width, in mm"; a heading that says nothing to us is left alone. */
export const headingWords = ({ heading, field, unit }: RecognisedHeading): string =>
  field === null ? `“${heading}” is left alone` : `“${heading}” read as ${FIELD_WORDS[field] ?? field}${unit === null ? "" : `, in ${unit}`}`;

const WHAT: Readonly<Record<ColumnChange["what"], string>> = { mark: "mark", shape: "section", width: "width", depth: "depth", toLevel: "to level" };
const SHAPES: Readonly<Record<string, string>> = { rectangle: "rectangular", circle: "round" };

/** "width 400 → 450". */
export function changeText({ what, from, to }: Pick<ColumnChange, "what" | "from" | "to">, units: Units): string {
  const value = (given: string | number | null): string => {
    if (given === null) return "none";
    if (typeof given === "number") return lengthFigure(given, units);
    return what === "shape" ? (SHAPES[given] ?? given) : given;
  };
  return `${WHAT[what]} ${value(from)} → ${value(to)}`;
}

type Sized = { readonly shape: string; readonly width_mm: number; readonly depth_mm: number };
export const sizeText = ({ shape, width_mm, depth_mm }: Sized, units: Units): string =>
  sectionText(shape === "circle" ? "circle" : "rectangle", width_mm, depth_mm, units);

/** What the button says, or null where there is nothing to take in. */
export function importLabel({ create, change }: Pick<ShortPreview, "create" | "change">): string | null {
  const columns = create.columns.count + change.columns.count;
  if (columns > 0) return `Import ${counted(columns, "column")}`;
  const levels = create.levels.length + change.levels.length;
  return levels > 0 ? `Import ${counted(levels, "level")}` : null;
}
