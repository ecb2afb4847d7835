/** The lectures' constants (10.95, 20, 1.69, 3.23) lie within 0.1 % of 1/10, 0.6 and 1/145. F_b and F_s are table stresses over 1.25: the form is used again. */
import { m } from "#lib/kernel/units.ts";
import { allowableSpans, spanAtDeflection, spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { apaSection, apaStresses } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { inches, plf, poundInches, pounds, poundSquareInches, toInches } from "#tests/support/figures/us-customary.ts";
import { CONSTRUCTION_LECTURES } from "../sources.ts";

const section = valueOf(apaSection("3/4", "class-i", "across"));
const stresses = apaStresses("class-i", true);
const board = { coefficients: spanCoefficients(3), load: plf(1500), stiffness: poundSquareInches(stresses.stiffness * section.inertia) };
const spans = () =>
  allowableSpans({ ...board, momentCapacity: poundInches(stresses.bending * section.sectionModulus), shearCapacity: pounds(stresses.shear * section.rollingShear), ratio: 360, shearRelief: m(0) });

export const published: PublishedSource = {
  source: CONSTRUCTION_LECTURES,
  cases: [
    {
      id: "CASE-B17", at: "week 8, span limits of the board", what: "3/4 in. board, used again, 1500 psf: F_b 1544, F_s 57.6, E 1.65e6 psi",
      figures: {
        bending: figure(7.49, "in", abs(0.02), () => toInches(spans().bending)),
        shear: figure(5.52, "in", abs(0.02), () => toInches(spans().shear)),
        deflection_L360: figure(10.19, "in", abs(0.02), () => toInches(spans().deflection)),
        deflection_1_16: figure(12.42, "in", abs(0.02), () => toInches(spanAtDeflection({ ...board, deflection: m(inches(1 / 16) / 1000) }))),
        governing_clear_span: figure(5.52, "in", abs(0.02), () => toInches(spans().governing)),
      },
    },
  ],
};
