import type { Millimetres } from "#lib/kernel/units.ts";
import { m, m2, m3 } from "#lib/kernel/units.ts";
import type { ColumnSection, Quantities } from "./form-set.ts";

/** Contact area = perimeter × height, volume = plan area × height; arris fillets are not taken off. */
export function quantities(section: ColumnSection, height: Millimetres): Quantities {
  const tall = height / 1000;
  if (section.shape === "round") {
    const diameter = section.diameter / 1000;
    return { contactArea: m2(Math.PI * diameter * tall), volume: m3((Math.PI * diameter * diameter * tall) / 4), height: m(tall) };
  }
  const width = section.width / 1000;
  const depth = section.depth / 1000;
  return { contactArea: m2(2 * (width + depth) * tall), volume: m3(width * depth * tall), height: m(tall) };
}
