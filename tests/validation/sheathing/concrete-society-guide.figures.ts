/** Load case 58: M = 0.095 W L, V = 0.525 W (L - b - t) / L, d = 0.0066 W L3 / EI with W = w L. */
import { kN_per_m, m } from "#lib/kernel/units.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { CONCRETE_SOCIETY_CASE_58, spanActions } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

const [span, load] = [m(0.244), kN_per_m(74)];
const actions = () => spanActions({ coefficients: CONCRETE_SOCIETY_CASE_58, load, span, shearSpan: m(span - 0.075 - 0.018), stiffness: kN_m2(2.65) });

export const published: PublishedSource = {
  source: "One-page check of 18 mm plywood by the Concrete Society, Formwork: a guide to good practice, 2nd ed. (scribd.com/document/514080077)",
  cases: [
    {
      id: "CASE-B18", at: "load case 58", what: "18 mm board of EI 2.65 kN.m2/m at 74 kPa, span 244 mm, supports 75 mm wide",
      figures: {
        W: figure(18.056, "kN", abs(0.001), () => load * span),
        M: figure(0.4185, "kN.m", abs(0.0005), () => actions().moment),
        V: figure(5.87, "kN", abs(0.01), () => actions().shear),
        deflection: figure(0.65, "mm", abs(0.01), () => actions().deflection * 1000),
        deflection_allow_L270: figure(0.904, "mm", abs(0.001), () => (span * 1000) / 270),
      },
    },
  ],
};
