import { linear, type Point, type Scale } from "../scale.ts";

export type BeamSample = { readonly at_mm: number; readonly moment_kN_m: number; readonly shear_kN: number; readonly deflection_mm: number };
export type BeamLine = { readonly points: readonly Point[]; readonly zero: number; /** The largest size, with its sign, and where it is drawn. */ readonly peak: Point & { readonly value: number; readonly atMm: number } };

/** One quantity along an upright beam: zero in the middle of its strip, the largest size reaching its edge. */
export function beamLine(samples: readonly BeamSample[], of: (sample: BeamSample) => number, toY: Scale, left: number, right: number): BeamLine {
  const most = samples.reduce((largest, sample) => Math.max(largest, Math.abs(of(sample))), 1e-9);
  const toX = linear(-most, most, left, right);
  const points = samples.map((sample) => ({ x: toX(of(sample)), y: toY(sample.at_mm) }));
  const worst = samples.reduce((a, b) => (Math.abs(of(b)) > Math.abs(of(a)) ? b : a), samples[0] ?? { at_mm: 0, moment_kN_m: 0, shear_kN: 0, deflection_mm: 0 });
  return { points, zero: toX(0), peak: { x: toX(of(worst)), y: toY(worst.at_mm), value: of(worst), atMm: worst.at_mm } };
}
