import type { Term, Working } from "#lib/trade/engineering/working.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";

const lengthOf = ({ value }: Term, units: Units): string => (typeof value === "number" ? lengthFigure(value, units) : value);

/** "storey 3600 − slab 250 − kicker 75", or that the height was given for this column. */
export function heightSum({ inputs }: Pick<Working, "inputs">, headedBy: "slab" | "beam", units: Units): string {
  if (inputs.length < 2) return "given for this column";
  return inputs
    .map((input) => `${input.name.replace("storey height", "storey").replace("slab or beam depth", headedBy)} ${lengthOf(input, units)}`)
    .join(" − ");
}
