import { inchesOnly } from "#app/_ui/value/feet-inches.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";

/** A size as it is cut: millimetres, or inches alone whatever the length. */
export const cutSize = (valueMm: number, units: Units): string => (units === "us" ? inchesOnly(valueMm) : lengthFigure(valueMm, units));
