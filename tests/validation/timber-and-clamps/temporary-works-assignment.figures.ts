/** Coefficients as on the sheet: 0.1, 0.6, 0.004. */
import { kN, kN_m, kN_per_m, m } from "#lib/kernel/units.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { allowableSpans } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { TEMPORARY_WORKS_ASSIGNMENT } from "../sources.ts";
import { tributaryForce } from "./even-supports.ts";

const waling = () =>
  allowableSpans({
    coefficients: { label: "as on the sheet", moment: 0.1, shear: 0.6, deflection: 0.004, source: "design sheet" },
    load: kN_per_m(11.39), momentCapacity: kN_m(2.025), shearCapacity: kN(12.8), stiffness: kN_m2(119.14), ratio: 360, shearRelief: m(0),
  });

export const published: PublishedSource = {
  source: TEMPORARY_WORKS_ASSIGNMENT,
  cases: [
    {
      id: "CASE-C8", at: "design sheet", what: "waling at 11.39 kN/m: 2.025 kN.m, 12.8 kN, EI 119.14 kN.m2",
      figures: {
        bending: figure(1.333, "m", abs(0.002), () => waling().bending),
        shear: figure(1.873, "m", abs(0.002), () => waling().shear),
        deflection_L360: figure(1.937, "m", abs(0.002), () => waling().deflection),
        governing: figure(1.333, "m", abs(0.002), () => waling().governing),
      },
    },
    {
      id: "CASE-C9", at: "design sheet", what: "tie at 75.93 kPa, 1.325 m by 1.0 m",
      figures: { force: figure(100.61, "kN", abs(0.02), () => tributaryForce(kN_per_m(75.93 * 1.0), 1.325)) },
    },
  ],
};
