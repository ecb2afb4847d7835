import { KPA_PER_PSF } from "#lib/kernel/us-units.ts";
import { envelopeOf, usPour } from "#tests/support/builders/a-pour.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { CONSTRUCTION_LECTURES } from "../sources.ts";

const footOf = (pour: ReturnType<typeof usPour>, feet: number, side: number) => envelopeOf(pour, feet * 0.3048, side).limit / KPA_PER_PSF;

export const published: PublishedSource = {
  source: CONSTRUCTION_LECTURES,
  cases: [
    {
      id: "CASE-A1", at: "week 8, worked column example", what: "column of 10 ft filled fast, 150 lb/ft3",
      figures: { pressure_base: figure(1500, "psf", abs(0.01), () => footOf(usPour(20, 70, { method: "full-head" }), 10, 0.508)) },
    },
    {
      // ACI 347-04 and R-14 send R from 7 to 15 ft/h to the second equation too: the example holds under both editions.
      id: "CASE-A2", at: "week 7, worked wall example", what: "wall of 15 ft, 150 lb/ft3, R 10 ft/h, 80 degF",
      figures: {
        pressure: figure(1042.5, "psf", abs(0.5), () => footOf(usPour(10, 80), 15, 6)),
        hydrostatic: figure(2250, "psf", abs(0.5), () => footOf(usPour(10, 80, { method: "full-head" }), 15, 6)),
      },
    },
  ],
};
