import { mm } from "#lib/kernel/units.ts";
import { sectionTolerance } from "#lib/trade/engineering/plumb/plumb-tolerance.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

export const published: PublishedSource = {
  source: "ENV 1992-1-1:1991 cl. 6.2.2, as given at eurocode.us (tolerances)",
  cases: [
    {
      id: "CASE-E5", at: "cl. 6.2.2, deviations covered by the partial factors", what: "a side of 400 mm",
      figures: { deviation: figure(15, "mm", abs(0), () => valueOf(sectionTolerance("env-1992", mm(400))).plus) },
    },
  ],
};
