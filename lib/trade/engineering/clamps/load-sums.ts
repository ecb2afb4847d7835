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
  // One buffer: six of their own would cost more than the sums.
  const buffer = new ArrayBuffer(6 * 8 * count);
  const at = new Float64Array(buffer, 0, count);
  const pressure = new Float64Array(buffer, 8 * count, count);
  const s0 = new Float64Array(buffer, 16 * count, count);
  const s1 = new Float64Array(buffer, 24 * count, count);
  const s2 = new Float64Array(buffer, 32 * count, count);
  const s3 = new Float64Array(buffer, 40 * count, count);
  for (let index = 0; index < count; index += 1) {
    const place = index * step;
    const x = Math.min(place, pourHeight);
    const x2 = x * x;
    const straight = x <= bend;
    const c = straight ? limit : a;
    const d = straight ? 0 : slope;
    const on = straight ? 0 : 1;
    at[index] = place;
    pressure[index] = place >= pourHeight ? 0 : Math.min(limit, a - slope * place);
    s0[index] = c * x - (d * x2) / 2 + on * b0;
    s1[index] = (c * x2) / 2 - (d * x2 * x) / 3 + on * b1;
    s2[index] = (c * x2 * x) / 3 - (d * x2 * x2) / 4 + on * b2;
    s3[index] = (c * x2 * x2) / 4 - (d * x2 * x2 * x) / 5 + on * b3;
  }
  return { at, pressure, s0, s1, s2, s3 };
}
