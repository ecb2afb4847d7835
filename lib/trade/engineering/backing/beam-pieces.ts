import type { KilonewtonsPerMetre, Metres } from "#lib/kernel/units.ts";

/** Load along the beam: straight lines between corners, nothing outside them. Two corners at one place are a step. */
export type LoadCorner = { readonly at: Metres; readonly load: KilonewtonsPerMetre };

/** A part of the beam with its load summed up: total, moment about its start, fixed-end moments (sagging positive). */
export type Stretch = { from: number; to: number; load: number; firstMoment: number; fixedStart: number; fixedEnd: number };

/** The beam cut wherever a support or a load corner stands, so that within a piece the load is one straight line. */
export type Pieces = {
  readonly count: number;
  readonly start: Float64Array;
  readonly length: Float64Array;
  readonly load: Float64Array;
  readonly rise: Float64Array;
  readonly stretch: (from: number, to: number) => Stretch;
};

const GAUSS_PLACES = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const;
const GAUSS_WEIGHTS = [5 / 18, 8 / 18, 5 / 18] as const;
const DUST = 1e-12;

function cutsOf(length: number, supports: readonly number[], corners: readonly LoadCorner[]): number[] {
  const cuts = [0, length, ...supports];
  for (const corner of corners) if (corner.at > 0 && corner.at < length) cuts.push(corner.at);
  return cuts.sort((a, b) => a - b);
}

/** Load at both ends of a piece that no corner divides. */
function loadOver(corners: readonly LoadCorner[], from: number, to: number): readonly [number, number] {
  const middle = (from + to) / 2;
  for (let index = 1; index < corners.length; index += 1) {
    const a = corners[index - 1];
    const b = corners[index];
    if (a === undefined || b === undefined || !(a.at <= middle && middle < b.at)) continue;
    const rise = (b.load - a.load) / (b.at - a.at);
    return [a.load + rise * (from - a.at), a.load + rise * (to - a.at)];
  }
  return [0, 0];
}

/**
 * The beam cut into pieces under one straight line of load each.
 *
 * Formula: cuts at both ends, at every support and at every load corner; a stretch adds up w, w x and the fixed-end moments -w x (L - x)^2 / L^2 and
 *   -w x^2 (L - x) / L^2 by three Gauss places to a piece, which is exact for straight loads.
 * Parameters: length [m], over 0; supports [m] and corners (place [m], load [kN/m]), ascending.
 * Result: pieces with start and length [m], load at the start [kN/m] and its rise [kN/m2]; stretches with load [kN] and moments [kN.m].
 * Limits: none here; the order of supports and corners is held by `continuousBeam`. Pieces under 1e-12 m are dropped.
 * Example: 2 m under 5 kN/m all over, supports at both ends: one piece, 10 kN, fixed-end moments -5 x 2^2 / 12 = -1.667 kN.m.
 * Source: fixed-end moments and Gauss integration, elastic beam theory.
 */
export function layOutPieces(length: number, supports: readonly number[], corners: readonly LoadCorner[]): Pieces {
  const cuts = cutsOf(length, supports, corners);
  const most = cuts.length;
  const pieces = { start: new Float64Array(most), length: new Float64Array(most), load: new Float64Array(most), rise: new Float64Array(most) };
  let count = 0;
  for (let index = 1; index < cuts.length; index += 1) {
    const from = cuts[index - 1] ?? 0;
    const to = cuts[index] ?? 0;
    if (to - from <= DUST) continue;
    const [a, b] = loadOver(corners, from, to);
    pieces.start[count] = from;
    pieces.length[count] = to - from;
    pieces.load[count] = a;
    pieces.rise[count] = (b - a) / (to - from);
    count += 1;
  }
  const whole = { count, ...pieces };
  return { ...whole, stretch: (from, to) => sumStretch(whole, from, to) };
}

function sumStretch(pieces: Omit<Pieces, "stretch">, from: number, to: number): Stretch {
  const sum: Stretch = { from, to, load: 0, firstMoment: 0, fixedStart: 0, fixedEnd: 0 };
  const span = to - from;
  for (let index = 0; index < pieces.count; index += 1) {
    const start = pieces.start[index] ?? 0;
    const length = pieces.length[index] ?? 0;
    if (start < from - DUST) continue;
    if (start + length > to + DUST) break;
    for (let point = 0; point < 3; point += 1) {
      const s = (GAUSS_PLACES[point] ?? 0) * length;
      const force = (GAUSS_WEIGHTS[point] ?? 0) * length * ((pieces.load[index] ?? 0) + (pieces.rise[index] ?? 0) * s);
      const x = start + s - from;
      const rest = span - x;
      sum.load += force;
      sum.firstMoment += force * x;
      sum.fixedStart -= (force * x * rest * rest) / (span * span);
      sum.fixedEnd -= (force * x * x * rest) / (span * span);
    }
  }
  return sum;
}

export type Marched = {
  readonly slope: number;
  readonly drop: number;
  readonly largestMoment: number;
  readonly largestMomentAt: number;
  readonly largestDrop: number;
};

const momentIn = (s: number, m: number, v: number, w: number, k: number): number => m + s * (v - s * (w / 2 + (s * k) / 6));
const slopeIn = (s: number, t: number, m: number, v: number, w: number, k: number): number => t + s * (m + s * (v / 2 - s * (w / 6 + (s * k) / 24)));
const dropIn = (s: number, y: number, t: number, m: number, v: number, w: number, k: number): number =>
  y + s * (t + s * (m / 2 + s * (v / 6 - s * (w / 24 + (s * k) / 120))));

/**
 * Goes along a stretch piece by piece with the exact polynomials of a straight load. Plain local numbers: this is the innermost loop of every
 * clamp layout.
 *
 * Formula: M = m + v s - w s^2 / 2 - k s^3 / 6; EI slope and EI drop its first and second integrals; drop upwards.
 * Parameters: pieces; from and to [m]; at `from`: moment m [kN.m], sagging positive, shear v [kN], slope times EI [kN.m2], drop times EI [kN.m3].
 * Result: slope times EI [kN.m2] and drop times EI [kN.m3] at the end; largest moment [kN.m] without its sign, its place [m], largest drop times EI [kN.m3].
 * Limits: none here; the stretch must begin and end at cuts, which is held by `continuousBeam`. The largest drop is that of eight samples to a piece,
 *   moved onto the nearby zero of the slope.
 * Example: 1.6 m under 5 kN/m from a simple support, v = 4 kN: largest moment 5 x 1.6^2 / 8 = 1.6 kN.m at 0.8 m.
 * Source: integration of the load, elastic beam theory.
 */
export function march(pieces: Pieces, from: number, to: number, moment: number, shear: number, slope: number, drop: number): Marched {
  let m = moment;
  let v = shear;
  let t = slope;
  let y = drop;
  let largestMoment = Math.abs(m);
  let largestMomentAt = from;
  let largestDrop = Math.abs(y);
  for (let index = 0; index < pieces.count; index += 1) {
    const start = pieces.start[index] ?? 0;
    const length = pieces.length[index] ?? 0;
    if (start < from - DUST) continue;
    if (start + length > to + DUST) break;
    const w = pieces.load[index] ?? 0;
    const k = pieces.rise[index] ?? 0;
    const place = peakPlace(length, m, v, w, k);
    const peak = Math.abs(momentIn(place, m, v, w, k));
    if (peak > largestMoment) {
      largestMoment = peak;
      largestMomentAt = start + place;
    }
    largestDrop = Math.max(largestDrop, largestDropIn(length, y, t, m, v, w, k));
    y = dropIn(length, y, t, m, v, w, k);
    t = slopeIn(length, t, m, v, w, k);
    m = momentIn(length, m, v, w, k);
    v -= length * (w + (length * k) / 2);
    largestDrop = Math.max(largestDrop, Math.abs(y));
  }
  return { slope: t, drop: y, largestMoment, largestMomentAt, largestDrop };
}

/** Where |M| is largest after the piece's start: its end, or a zero of the shear V − w s − k s2 / 2. */
function peakPlace(length: number, m: number, v: number, w: number, k: number): number {
  let best = length;
  if (Math.abs(k) < 1e-9) return inside(v / w, length) && larger(v / w, best, m, v, w, k) ? v / w : best;
  const root = Math.sqrt(w * w + 2 * k * v);
  const first = (root - w) / k;
  const second = (-root - w) / k;
  if (inside(first, length) && larger(first, best, m, v, w, k)) best = first;
  if (inside(second, length) && larger(second, best, m, v, w, k)) best = second;
  return best;
}

const inside = (s: number, length: number): boolean => s > 0 && s < length;
const larger = (s: number, than: number, m: number, v: number, w: number, k: number): boolean =>
  Math.abs(momentIn(s, m, v, w, k)) > Math.abs(momentIn(than, m, v, w, k));

/** The deepest of a few samples, moved onto the nearby zero of the slope by Newton's rule. */
function largestDropIn(length: number, y: number, t: number, m: number, v: number, w: number, k: number): number {
  let best = 0;
  let deepest = 0;
  for (let sample = 1; sample < 8; sample += 1) {
    const drop = Math.abs(dropIn((length * sample) / 8, y, t, m, v, w, k));
    if (drop <= deepest) continue;
    deepest = drop;
    best = (length * sample) / 8;
  }
  let s = best;
  for (let step = 0; step < 3; step += 1) {
    const curvature = momentIn(s, m, v, w, k);
    if (curvature === 0) break;
    s -= slopeIn(s, t, m, v, w, k) / curvature;
    if (!inside(s, length)) return deepest;
  }
  return Math.max(deepest, Math.abs(dropIn(s, y, t, m, v, w, k)));
}
