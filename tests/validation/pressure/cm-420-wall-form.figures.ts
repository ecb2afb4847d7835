/** Slides after ACI SP-4 Tables 5-4 and 5-5B. The 4 ft are 600 psf / 150 lb/ft3: the slide's own figure is cut off in the stored text. */
import { KPA_PER_PSF } from "#lib/kernel/us-units.ts";
import { envelopeOf, usPour } from "#tests/support/builders/a-pour.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

// A wall no taller than 14 ft and filled slower than 7 ft/h goes by the column equation.
const wall = () => envelopeOf(usPour(3, 60), 14 * 0.3048, 6);

export const published: PublishedSource = {
  source: "University of Washington CM 420, wall form design example (tr.scribd.com/presentation/38409234)",
  cases: [
    {
      id: "CASE-A3", at: "pressure slide", what: "wall of 14 ft, 150 lb/ft3, R 3 ft/h, 60 degF",
      figures: {
        pressure: figure(600, "psf", abs(1), () => wall().limit / KPA_PER_PSF),
        depth_of_hydrostatic_zone: figure(4, "ft", abs(0.01), () => wall().liquidDepth / 0.3048),
      },
    },
  ],
};
