/** The sheet puts K7 on shear too. Its compression line, 3.35 N/mm2, is not held: 2.76 x 0.6 x 1.4 x 1.0 x 1.079 is 2.50. */
import { mm, N_per_mm2 } from "#lib/kernel/units.ts";
import { bs5268DepthFactor, timberValues } from "#lib/trade/engineering/backing/timber-values.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

const depth = mm(150);
const values = () =>
  valueOf(
    timberValues(
      { kind: "bs-5268", bending: N_per_mm2(8.4), shear: N_per_mm2(1.34), modulus: N_per_mm2(5760), wet: { bending: 0.8, shear: 0.9, modulus: 0.8 }, duration: 1.4, loadSharing: 1.1, depthFactorInShear: true },
      depth,
      { kind: "permissible-stress" },
    ),
  );

export const published: PublishedSource = {
  source: "Column formwork sheet 500 x 500 mm, 6 m, to BS 5975:2008+A1 and the Concrete Society guide, 2nd ed. (scribd.com/document/374097820)",
  cases: [
    {
      id: "CASE-C11", at: "timber", what: "C24, 50 x 150 mm, wet, short load, load sharing: 8.4, 1.34, 5760 N/mm2 by K2, K3, K7, K8",
      figures: {
        K7: figure(1.079, "", abs(0.001), () => bs5268DepthFactor(depth)),
        bending: figure(11.17, "N/mm2", abs(0.006), () => values().bendingStress),
        shear: figure(2.004, "N/mm2", abs(0.002), () => values().shearStress),
        E: figure(4608, "N/mm2", abs(1), () => values().modulus),
      },
    },
  ],
};
