/** Douglas fir-larch No. 2 by the National Design Specification's factors. Coefficients 1/10, 0.6 and 1/145; shear one depth from the support. */
import { kN, kN_per_m, m } from "#lib/kernel/units.ts";
import { KPA_PER_PSF } from "#lib/kernel/us-units.ts";
import { allowableSpans, spanAtDeflection, spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { timberCapacity } from "#lib/trade/engineering/backing/timber-capacity.ts";
import type { NdsFactors } from "#lib/trade/engineering/backing/timber-choice.ts";
import { ndsBearingStress, timberValues } from "#lib/trade/engineering/backing/timber-values.ts";
import { cornerPull } from "#lib/trade/engineering/clamps/clamp-strength.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { inches, plf, psi, toInches, toPlf, toPounds, toPsi } from "#tests/support/figures/us-customary.ts";
import { CONSTRUCTION_LECTURES } from "../sources.ts";
import { evenClampLoad, tributaryForce } from "./even-supports.ts";

const WET: NdsFactors = { loadDuration: 1, wetBending: 0.85, wetShear: 0.97, wetModulus: 0.9, size: 1.5, flatUse: 1, repetitive: 1.15 };
const stresses = (factors: NdsFactors) => valueOf(timberValues({ kind: "nds", bending: psi(900), shear: psi(180), modulus: psi(1.6e6), factors }, inches(1.5), { kind: "permissible-stress" }));
const flat = () => stresses({ ...WET, flatUse: 1.1 });
const onEdge = () => stresses({ ...WET, loadDuration: 1.25 });

const timberSpans = (breadth: number, depth: number, values: ReturnType<typeof stresses>, load: ReturnType<typeof plf>) => {
  const timber = valueOf(timberCapacity({ breadth: inches(breadth), depth: inches(depth), ...values }));
  const beam = { coefficients: spanCoefficients(3), load, stiffness: timber.stiffness };
  const spans = allowableSpans({ ...beam, momentCapacity: timber.moment, shearCapacity: timber.shear, ratio: 360, shearRelief: m(2 * timber.depth) });
  return { ...spans, sixteenth: spanAtDeflection({ ...beam, deflection: m(inches(1 / 16) / 1000) }) };
};
// 1500 psf on battens 9 in. apart; one batten of an even row carries 9 in. of pressure.
const battenLoad = () => kN_per_m(tributaryForce(kN_per_m(1500 * KPA_PER_PSF), 9 * 0.0254));
const battens = () => timberSpans(3.5, 1.5, flat(), battenLoad());
const studs = () => timberSpans(1.5, 3.5, onEdge(), plf(521.25));

// Clamps 13.86 in. apart at 1500 psf: line load on the arm, then over a side of 20 in.
const yokeLoad = () => evenClampLoad(1500 * KPA_PER_PSF, 13.86 * 0.0254);
const sideForce = () => kN(yokeLoad() * 20 * 0.0254);

export const published: PublishedSource = {
  source: CONSTRUCTION_LECTURES,
  cases: [
    {
      id: "CASE-C1", at: "week 8, loads and allowable stresses", what: "2 x 4 laid flat, wet, used again: 900, 180, 625, 1.6e6 psi by their factors",
      figures: {
        Fb_adj: figure(1451.59, "psi", abs(0.05), () => toPsi(flat().bendingStress)),
        Fv_adj: figure(174.6, "psi", abs(0.05), () => toPsi(flat().shearStress)),
        Fcp_adj: figure(418.75, "psi", abs(0.05), () => toPsi(ndsBearingStress(psi(625), 0.67))),
        E_adj: figure(1_440_000, "psi", abs(0.05), () => toPsi(flat().modulus)),
      },
    },
    {
      id: "CASE-C2", at: "week 8, clamp spacings", what: "20 x 20 in. column of 10 ft, 1500 psf at the foot, 2 x 4 flat at 9 in.",
      figures: {
        line_load: figure(1125, "plf", abs(0.02), () => toPlf(battenLoad())),
        bending: figure(14.25, "in", abs(0.02), () => toInches(battens().bending)),
        shear: figure(13.86, "in", abs(0.02), () => toInches(battens().shear)),
        deflection_L360: figure(18.25, "in", abs(0.02), () => toInches(battens().deflection)),
        deflection_1_16: figure(19.24, "in", abs(0.02), () => toInches(battens().sixteenth)),
        governing: figure(13.86, "in", abs(0.02), () => toInches(battens().governing)),
      },
    },
    {
      id: "CASE-C3", at: "week 8, wooden yokes", what: "1500 psf on a side of 20 in., yokes 13.86 in. apart",
      figures: {
        corner_resultant: figure(2042, "lb", abs(1), () => toPounds(cornerPull(sideForce(), sideForce()).resultant)),
        line_load: figure(1733, "plf", abs(1), () => toPlf(yokeLoad())),
      },
    },
    {
      id: "CASE-C4", at: "week 7, wale spacing", what: "2 x 4 studs at 521.25 plf, stresses of CASE-C12, E 1.44e6 psi",
      figures: {
        bending: figure(34.09, "in", abs(0.02), () => toInches(studs().bending)),
        shear: figure(36.3, "in", abs(0.02), () => toInches(studs().shear)),
        deflection_L360: figure(41.5, "in", abs(0.02), () => toInches(studs().deflection)),
        deflection_1_16: figure(35.63, "in", abs(0.02), () => toInches(studs().sixteenth)),
      },
    },
    {
      id: "CASE-C5", at: "week 7, ties", what: "1042.5 psf, ties 1.6 ft apart on wales 2 ft apart",
      figures: { tie_load: figure(3336, "lb", abs(1), () => toPounds(tributaryForce(kN_per_m(1042.5 * KPA_PER_PSF * 2 * 0.3048), 1.6 * 0.3048))) },
    },
    {
      id: "CASE-C12", at: "week 7, adjusted stresses", what: "2 x 4 on edge, wet, used once: 900 and 180 psi by their factors",
      figures: {
        Fb_adj: figure(1649.53, "psi", abs(0.05), () => toPsi(onEdge().bendingStress)),
        Fv_adj: figure(218.25, "psi", abs(0.05), () => toPsi(onEdge().shearStress)),
      },
    },
  ],
};
