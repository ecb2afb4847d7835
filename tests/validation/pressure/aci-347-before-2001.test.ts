/** Nunnally, construction methods text, ch. 12 Concrete Form Design, eq. 12-1: the ACI text before 2001, with its caps and minimum in both units. */
import { describe, expect, it } from "vitest";
import { psf, psfToKilopascals } from "#lib/trade/engineering/engineering-units.ts";
import { envelopeOf, usPour } from "#tests/support/builders/a-pour.ts";

const old = (rate: number, temperature: number, side: number) => envelopeOf(usPour(rate, temperature, { method: "aci-347-us-before-2001" }), 9, side);
const now = (rate: number, temperature: number, side: number) => envelopeOf(usPour(rate, temperature), 9, side);

describe("[CASE-A5] contrast: the caps of the old text, 3000 psf for columns and 2000 psf for walls, minimum 600 psf", () => {
  it("stand in the old edition as 143.6, 95.8 and 28.7 kPa, within 0.1", () => {
    expect(Math.abs(old(17, 45, 0.5).limit - 143.6)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(psfToKilopascals(psf(2000)) - 95.8)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(old(1, 80, 0.5).limit - 28.7)).toBeLessThanOrEqual(0.1);
  });
  it("the walls' cap is never met from 40 degF up: 150 + 43400 / 40 + 2800 x 10 / 40 = 1935 psf at the fastest rate of its equation", () =>
    expect(old(10, 40, 6).limit).toBeCloseTo(psfToKilopascals(psf(1935)), 6));
  it("are gone from the current one, which is why a fast cold column is pressed harder there; the minimum is kept", () => {
    // 150 + 9000 x 17 / 45 = 3550 psf.
    expect(now(17, 45, 0.5).limit).toBeCloseTo(psfToKilopascals(psf(3550)), 6);
    expect(now(1, 80, 0.5)).toMatchObject({ governs: "minimum" });
    expect([old(17, 45, 0.5).withdrawn, now(17, 45, 0.5).withdrawn]).toEqual([true, false]);
  });
  it("a wall in the old edition goes by the first equation up to 7 ft/h whatever its height: 150 + 9000 x 6 / 60 = 1050 psf", () =>
    expect(old(6, 60, 6).limit).toBeCloseTo(psfToKilopascals(psf(1050)), 6));
});
