import type { PressureEnvelope } from "../pour-conditions.ts";

/** At each step of the lattice: height [m], pressure, and the sums of p x^k from the foot up to it, k = 0 to 3. All load terms of a span follow. */
export type LoadSums = {
  readonly at: Float64Array;
  readonly pressure: Float64Array;
  readonly s0: Float64Array;
  readonly s1: Float64Array;
  readonly s2: Float64Array;
  readonly s3: Float64Array;
};

/**
 * Running sums of the pressure from the foot of the form up.
 *
 * Formula: s_k(x) = int p u^k du from 0 to x, k = 0 to 3; p is constant up to the foot of the liquid zone, then falls straight to 0 at the surface.
 * Parameters: envelope; step [m], over 0; count [-] of places, the first at 0.
 * Result: per metre of face: places [m], pressures [kPa], s0 [kN/m], s1 [kN], s2 [kN.m], s3 [kN.m2].
 * Limits: none here; above the surface the sums stay as they are there.
 * Example: 20 kPa all over up to 1.5 m: s0 = 30 kN/m, s1 = 20 x 1.5^2 / 2 = 22.5 kN.
 * Source: statics of the pressure line.
 */
export function loadSums(envelope: PressureEnvelope, step: number, count: number): LoadSums {
  const { limit, liquidDepth, pourHeight } = envelope;
  const bend = pourHeight - liquidDepth;
  const slope = limit / liquidDepth;
  const a = slope * pourHeight;
  const whole = (k: number) => ((limit - a) * bend ** (k + 1)) / (k + 1) + (slope * bend ** (k + 2)) / (k + 2);
  const [b0, b1, b2, b3] = [whole(0), whole(1), whole(2), whole(3)];
  const sums = { at: new Float64Array(count), pressure: new Float64Array(count), s0: new Float64Array(count), s1: new Float64Array(count), s2: new Float64Array(count), s3: new Float64Array(count) };
  for (let index = 0; index < count; index += 1) {
    const place = index * step;
    const x = Math.min(place, pourHeight);
    const x2 = x * x;
    const straight = x <= bend;
    const [c, d] = straight ? [limit, 0] : [a, slope];
    const on = straight ? 0 : 1;
    sums.at[index] = place;
    sums.pressure[index] = place >= pourHeight ? 0 : Math.min(limit, a - slope * place);
    sums.s0[index] = c * x - (d * x2) / 2 + on * b0;
    sums.s1[index] = (c * x2) / 2 - (d * x2 * x) / 3 + on * b1;
    sums.s2[index] = (c * x2 * x) / 3 - (d * x2 * x2) / 4 + on * b2;
    sums.s3[index] = (c * x2 * x2) / 4 - (d * x2 * x2 * x) / 5 + on * b3;
  }
  return sums;
}
