import { mm } from "#lib/kernel/units.ts";
import { sectionTolerance } from "#lib/trade/engineering/plumb/plumb-tolerance.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { IS_456 } from "../sources.ts";

const side = valueOf(sectionTolerance("is-456", mm(430)));

export const published: PublishedSource = {
  source: IS_456,
  cases: [
    {
      id: "CASE-E4", at: "cl. 11.1, cross-section of columns and beams", what: "any side",
      figures: { plus: figure(12, "mm", abs(0), () => side.plus), minus: figure(6, "mm", abs(0), () => side.minus) },
    },
  ],
};
