import { isDeepStrictEqual } from "node:util";
import { workOutClampLayout } from "#lib/server/workings/work-out.ts";
import type { ClampLayoutTold } from "#lib/contracts/workings/clamp-layout.ts";
import { isExample } from "#app/_ui/message/example-notice.tsx";
import { significant } from "#app/_ui/value/working-words.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { lengthWords, pressureLines, timberLines, typedWords } from "../_parts/answer/input-words.ts";
import type { Calculator, InputLine, Start } from "../_parts/calculator.ts";
import { ClampLayoutAnswer } from "./answer/clamp-layout-answer.tsx";
import { ClampLayoutFields } from "./fields/clamp-layout-fields.tsx";
import type { Spacing } from "./fields/layout-fields.tsx";
import { readClampLayout, type ClampLayoutGiven } from "./read-clamp-layout.ts";

const spacingOf = ({ values: { clampLayout: { layout } } }: Start): Spacing =>
  layout.kind === "fewest" ? layout.spacing : { module_mm: 25, first_min_mm: 0, first_max_mm: 0, top_max_mm: 0, smallest_gap_mm: 0, largest_gap_mm: 0 };

function layoutLines(layout: ClampLayoutGiven["layout"], units: Units): readonly InputLine[] {
  const length = (value: number) => lengthWords(value, units);
  if (layout.kind === "measured") return [["Clamps as they stand", layout.heights_mm.map(length).join(", ")]];
  const { first_min_mm, first_max_mm, smallest_gap_mm, largest_gap_mm, top_max_mm, module_mm } = layout.spacing;
  return [
    ["Clamps", "the fewest"], ["Lowest clamp", `${length(first_min_mm)} to ${length(first_max_mm)}`], ["Gaps", `${length(smallest_gap_mm)} to ${length(largest_gap_mm)}`],
    ["Top clamp within", length(top_max_mm)], ["Steps of", length(module_mm)],
  ];
}

function clampLines({ side_capacity_kN, arm, wedge_capacity_kN, capacity_by_span = [] }: ClampLayoutGiven["clamp"], units: Units): readonly InputLine[] {
  const isGiven = <T,>(value: T | null | undefined): value is T => value !== null && value !== undefined;
  return [
    ["One side may put on a clamp", typedWords(side_capacity_kN, "kN", units)],
    ...(capacity_by_span.length > 0 ? [["Loads by span", capacity_by_span.map(({ span_mm, load_kN }) => `${lengthWords(span_mm, units)}: ${typedWords(load_kN, "kN", units)}`).join(", ")] as const] : []),
    ...(isGiven(arm) ? [["Clamp arm", `W ${typedWords(arm.section_modulus_cm3, "cm3", units)}, ${typedWords(arm.stress_N_per_mm2, "N/mm2", units)}`] as const] : []),
    ...(isGiven(wedge_capacity_kN) ? [["Wedge pull", typedWords(wedge_capacity_kN, "kN", units)] as const] : []),
  ];
}

function inputLines(input: ClampLayoutGiven, units: Units): readonly InputLine[] {
  const { across, along } = input.sides;
  const length = (value: number) => lengthWords(value, units);
  return [
    ...layoutLines(input.layout, units),
    ...pressureLines(input.pressure, units),
    ["Column", `${length(across.side_mm)} × ${length(along.side_mm)}`],
    ["Wedge to wedge", `${length(across.wedge_span_mm)} and ${length(along.wedge_span_mm)}`],
    ...clampLines(input.clamp, units),
    ...timberLines(input.timber, input.format, units),
    ["Timber carries", length(input.share_mm)], ["Bends up to", `span / ${significant(input.deflection_ratio)}`],
  ];
}

function examples(input: ClampLayoutGiven, { sources, values }: Start): readonly string[] {
  const start = values.clampLayout;
  return [
    ...(isExample(sources.backing) && isDeepStrictEqual(input.timber.values, start.timber.values) ? ["the backing timber’s stresses"] : []),
    ...(sources.clamp !== null && isExample(sources.clamp) && input.clamp.side_capacity_kN === start.clamp.side_capacity_kN ? ["the clamp’s capacity"] : []),
  ];
}

const MIND = [
  "Props, bracing and wind are not computed here, nor is the strength of what the form stands on.",
  "Uplift is not computed here. It matters where a face is battered or slopes, where grout can get under the form, and wherever the form is not held down: work it out on the pressure page and hold the form down.",
  "Clamps are taken as unyielding and wedged tight, at the heights given; the timber runs whole from foot to top.",
];

export const CLAMP_LAYOUT: Calculator<ClampLayoutGiven, ClampLayoutTold> = {
  name: "clamp-layout",
  of: "clamp layout",
  start: ({ values, column }) => (column === null ? values.clampLayout : { ...values.clampLayout, layout: { kind: "measured", heights_mm: [...column.heights] } }),
  startNote: ({ sources: { clampName }, column }) =>
    column !== null ? "The clamps are those of its form set: enter the heights as they stand on site." : `Started from the project’s pour, backing timber and clamp rule, and one column of its own size${clampName === null ? "" : `; the clamp’s capacity is that of “${clampName}”`}.`,
  examples,
  read: readClampLayout,
  workOut: workOutClampLayout,
  fields: (given, { units, told, start }) => <ClampLayoutFields given={given} units={units} foundHeights={told?.heights_mm ?? start.values.backing.supports_mm} spacing={spacingOf(start)} />,
  inputLines,
  answer: (told, input, context) => <ClampLayoutAnswer told={told} input={input} {...context} />,
  mind: (told) => [...MIND, ...(told?.pressure.value_kind === "characteristic" ? ["The pressure is a characteristic value; the load factor entered is the project’s to state."] : [])],
};
