/** The book's shear constant is 5/8 (192 F_v b d / 15 w + 2 d), where ours for three spans is 0.6. It prints 2062 and 66, cut off, for 2062.5 and 66.25. */
import { m } from "#lib/kernel/units.ts";
import { allowableSpans, spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { timberValues } from "#lib/trade/engineering/backing/timber-values.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { inches, plf, poundInches, pounds, poundSquareInches, psi, toInches, toPsi } from "#tests/support/figures/us-customary.ts";
import { FORMWORK_FOR_CONCRETE_STRUCTURES } from "../sources.ts";

const shortLoad = () => {
  const factors = { loadDuration: 1.25, wetBending: 1, wetShear: 1, wetModulus: 1, size: 1, flatUse: 1, repetitive: 1 };
  return valueOf(timberValues({ kind: "nds", bending: psi(1650), shear: psi(53), modulus: psi(1.8e6), factors }, inches(0.75), { kind: "permissible-stress" }));
};
const studs = () =>
  allowableSpans({
    coefficients: { ...spanCoefficients(3), shear: 5 / 8 },
    load: plf(825), momentCapacity: poundInches(1875 * 3.06), shearCapacity: pounds((2 / 3) * 218 * 1.5 * 3.5), stiffness: poundSquareInches(1.6e6 * 5.359), ratio: 360, shearRelief: m((2 * inches(3.5)) / 1000),
  });

export const published: PublishedSource = {
  source: FORMWORK_FOR_CONCRETE_STRUCTURES,
  cases: [
    {
      id: "CASE-C6", at: "ch. 5, wall form example, p. 139", what: "2 x 4 studs at 825 plf: F_b 1875, F_v 218 psi, S 3.06 in3",
      figures: {
        bending: figure(28.9, "in", abs(0.1), () => toInches(studs().bending)),
        shear: figure(24.8, "in", abs(0.1), () => toInches(studs().shear)),
      },
    },
    {
      id: "CASE-C7", at: "ch. 5, p. 137", what: "1650 and 53 psi for a load of days",
      figures: {
        Fb: figure(2062, "psi", abs(1), () => toPsi(shortLoad().bendingStress)),
        Fs: figure(66, "psi", abs(1), () => toPsi(shortLoad().shearStress)),
      },
    },
  ],
};
