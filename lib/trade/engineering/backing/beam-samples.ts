import { kN, kN_m, mm } from "#lib/kernel/units.ts";
import type { KilonewtonMetres, Kilonewtons, Metres, Millimetres } from "#lib/kernel/units.ts";
import type { KilonewtonSquareMetres } from "../engineering-units.ts";
import type { LoadCorner } from "./beam-pieces.ts";

/** The lines of the drawing; moment sagging positive, deflection outwards positive. */
export type BeamSample = { readonly at: Millimetres; readonly moment: KilonewtonMetres; readonly shear: Kilonewtons; readonly deflection: Millimetres };

const GAUSS = [[0.5 - Math.sqrt(0.15), 5 / 18], [0.5, 8 / 18], [0.5 + Math.sqrt(0.15), 5 / 18]] as const;

/** Integral of w(s) (x - s)^power from the start to x; three Gauss places are exact up to the cube. */
function gathered(load: readonly LoadCorner[], x: number, power: number): number {
  let sum = 0;
  for (let index = 1; index < load.length; index += 1) {
    const a = load[index - 1];
    const b = load[index];
    if (a === undefined || b === undefined || a.at >= x || b.at <= a.at) continue;
    const to = Math.min(b.at, x);
    for (const [place, weight] of GAUSS) {
      const s = a.at + (to - a.at) * place;
      const w = a.load + ((b.load - a.load) * (s - a.at)) / (b.at - a.at);
      sum += weight * (to - a.at) * w * (x - s) ** power;
    }
  }
  return sum;
}

/**
 * Moment, shear and deflection along a beam whose reactions are known.
 *
 * Formula: V = sum R - int w; M = sum R (x - a) - int w (x - s); EI y = sum R (x - a)^3 / 6 - int w (x - s)^3 / 6 + C x + D, with y = 0 on the first
 *   and the last support; deflection outwards is -y.
 * Parameters: length [m]; supports [m] with reactions [kN]; load corners [m, kN/m]; stiffness EI [kN.m2]; count [-] of equal steps, from 1.
 * Result: samples from foot to top: at [mm], moment [kN.m], shear [kN], deflection [mm].
 * Limits: reactions must come from the same beam; the shear given at a support is that just above it.
 * Example: one span of 1.6 m under 5 kN/m, EI = 3: 5 x 1.6^2 / 8 = 1.6 kN.m and 5 x 5 x 1.6^4 / (384 x 3) = 142.2 mm in the middle.
 * Source: integration with step functions, elastic beam theory.
 */
export function beamSamples(
  length: Metres,
  supports: readonly { readonly at: Metres; readonly force: Kilonewtons }[],
  load: readonly LoadCorner[],
  stiffness: KilonewtonSquareMetres,
  count: number,
): readonly BeamSample[] {
  const sum = (x: number, power: number, over: number) => {
    const pushed = supports.reduce((total, support) => (support.at <= x ? total + support.force * (x - support.at) ** power : total), 0);
    return (pushed - gathered(load, x, power)) / over;
  };
  const first = supports[0]?.at ?? 0;
  const last = supports[supports.length - 1]?.at ?? length;
  const [atFirst, atLast] = [sum(first, 3, 6), sum(last, 3, 6)];
  const slope = last > first ? -(atLast - atFirst) / (last - first) : 0;
  return Array.from({ length: count + 1 }, (_, step) => {
    const x = (length * step) / count;
    const drop = (sum(x, 3, 6) - atFirst + slope * (x - first)) / stiffness;
    return { at: mm(x * 1000), moment: kN_m(sum(x, 1, 1)), shear: kN(sum(x, 0, 1)), deflection: mm(-drop * 1000) };
  });
}
