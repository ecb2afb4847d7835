/** Coefficients as on the sheet: 0.1, 0.6, 0.007. It prints no bending span. */
import { kN, kN_m, kN_per_m, m } from "#lib/kernel/units.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { allowableSpans } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { TEMPORARY_WORKS_ASSIGNMENT } from "../sources.ts";

const spans = () =>
  allowableSpans({
    coefficients: { label: "as on the sheet", moment: 0.1, shear: 0.6, deflection: 0.007, source: "design sheet" },
    load: kN_per_m(75.93), momentCapacity: kN_m(0.46), shearCapacity: kN(6.86), stiffness: kN_m2(3.25), ratio: 360, shearRelief: m(0),
  });

export const published: PublishedSource = {
  source: TEMPORARY_WORKS_ASSIGNMENT,
  cases: [
    {
      id: "CASE-B19", at: "design sheet", what: "board at 75.93 kPa: 0.46 kN.m, 6.86 kN, EI 3.25 kN.m2 per metre",
      figures: {
        shear: figure(0.151, "m", abs(0.001), () => spans().shear),
        deflection_L360: figure(0.257, "m", abs(0.001), () => spans().deflection),
      },
    },
  ],
};
