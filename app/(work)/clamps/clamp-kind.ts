import { choiceOf, numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";

export type SpanLoad = { readonly span: number; readonly load: number };

/** A clamp kind as the page holds it: plain numbers in mm, kN, kg, cm³ and N/mm². */
export type ClampKind = {
  readonly id: string; readonly name: string; readonly minSize: number; readonly maxSize: number; readonly sideCapacity: number;
  readonly barLength: number; readonly barDepth: number; readonly barThickness: number; readonly weight: number;
  readonly source: string; readonly isExample: boolean; readonly capacityBySpan?: readonly SpanLoad[];
  readonly arm?: { readonly sectionModulus: number; readonly stress: number }; readonly wedgeCapacity?: number;
};

/** Lines of the form left empty are no lines. */
export const SPAN_LINES = 6;
const spanLoads = (data: FormData): SpanLoad[] =>
  Array.from({ length: SPAN_LINES }, (_, line) => ({ span: numberOrNull(data, `span-${line}`), load: numberOrNull(data, `load-${line}`) }))
    .filter(({ span, load }) => span !== null || load !== null)
    .map(({ span, load }) => ({ span: span ?? Number.NaN, load: load ?? Number.NaN }));

function armOf(data: FormData) {
  const [sectionModulus, stress] = [numberOrNull(data, "armModulus"), numberOrNull(data, "armStress")];
  return sectionModulus === null && stress === null ? null : { sectionModulus: sectionModulus ?? Number.NaN, stress: stress ?? Number.NaN };
}

export const readClampKind = (data: FormData, id: string | undefined) => ({
  ...(id === undefined ? {} : { id }),
  name: textOf(data, "name"),
  minSize: numberOf(data, "minSize"),
  maxSize: numberOf(data, "maxSize"),
  sideCapacity: numberOf(data, "sideCapacity"),
  capacityBySpan: spanLoads(data),
  arm: armOf(data),
  wedgeCapacity: numberOrNull(data, "wedgeCapacity"),
  barLength: numberOf(data, "barLength"),
  barDepth: numberOf(data, "barDepth"),
  barThickness: numberOf(data, "barThickness"),
  weight: numberOf(data, "weight"),
  source: textOf(data, "source"),
  isExample: choiceOf(data, "standing", ["stated", "example"]) === "example",
});
