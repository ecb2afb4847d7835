/** Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 297: M = P l x2 / 1152 in.-lb for a yoke between wedges. The numbers are ours. */
import { expect, it } from "vitest";
import { kN, m } from "#lib/kernel/units.ts";
import { KPA_PER_PSF } from "#lib/kernel/us-units.ts";
import { armMoment } from "#lib/trade/engineering/clamps/clamp-strength.ts";
import { poundInches } from "#tests/support/figures/us-customary.ts";
import { evenClampLoad } from "./even-supports.ts";

it("CASE-M20: 900 psf between wedges 24 in. apart, F_b 1500 psi, S 3.06 in3: yokes 10.2 in. apart within 0.1", () => {
  const span = 24 * 0.0254;
  const atOneInch = armMoment(kN(evenClampLoad(900 * KPA_PER_PSF, 0.0254) * span), m(span), m(span));
  expect(Math.abs(poundInches(1500 * 3.06) / atOneInch - 10.2)).toBeLessThanOrEqual(0.1);
  // By hand: 1152 x 1500 x 3.06 / (900 x 24^2) = 10.2.
  expect((1152 * 1500 * 3.06) / (900 * 576)).toBeCloseTo(10.2, 9);
});
