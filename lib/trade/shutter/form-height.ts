import type { Millimetres } from "#lib/kernel/units.ts";
import { mm } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { refusal, term } from "#lib/trade/engineering/working.ts";
import type { Refusal, Working } from "#lib/trade/engineering/working.ts";

export type FormHeightInput = {
  /** Floor to floor. */
  readonly storeyHeight: Millimetres;
  /** Of the slab, beam or drop over the column, whichever is deepest. */
  readonly depthOver: Millimetres;
  readonly kickerHeight: Millimetres;
  /** A height measured or drawn for this one column; it wins over the sum. */
  readonly override: Millimetres | null;
};
export type FormHeight = { readonly height: Millimetres; readonly overridden: boolean; readonly working: Working };

/** Depth of what a column stops under: the slab, or the beam where one frames in and is deeper. */
export const depthOver = (headedBy: "slab" | "beam", over: { readonly slab: Millimetres; readonly beam: Millimetres }): Millimetres =>
  headedBy === "beam" ? mm(Math.max(over.slab, over.beam)) : over.slab;

const SOURCE = "Taking off column forms, slab top to underside of slab or beam, less the kicker (common practice, no source)";

/** Height of a column's form: storey height − slab or beam depth − kicker, unless a height is given for the column itself. */
export function formHeight(given: FormHeightInput): Result<FormHeight, Refusal> {
  const { storeyHeight, depthOver, kickerHeight, override } = given;
  const height = override ?? storeyHeight - depthOver - kickerHeight;
  const sum = override === null ? `${storeyHeight} − ${depthOver} − ${kickerHeight}` : "given for this column";
  if (!(height > 0 && Number.isFinite(height)))
    return fail(refusal({ limit: "form height (mm)", given: height, allowed: "over 0 mm", source: SOURCE, message: `It came from: ${sum}. Check the levels, the depth over the column and the kicker.` }));
  return ok({
    height: mm(height),
    overridden: override !== null,
    working: {
      title: "Form height",
      inputs: override === null ? [term("storey height", storeyHeight, "mm"), term("slab or beam depth", depthOver, "mm"), term("kicker", kickerHeight, "mm")] : [term("given height", override, "mm")],
      formula: override === null ? "storey height − slab or beam depth − kicker" : "as given",
      steps: [],
      result: term("form height", height, "mm"),
      source: SOURCE,
    },
  });
}
