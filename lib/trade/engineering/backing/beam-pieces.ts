import type { KilonewtonsPerMetre, Metres } from "#lib/kernel/units.ts";

/** Load along the beam: straight lines between corners, nothing outside them. Two corners at one place are a step. */
export type LoadCorner = { readonly at: Metres; readonly load: KilonewtonsPerMetre };

/** Between two cuts, under one straight line of load. */
export type Piece = { readonly start: number; readonly length: number; readonly load: number; readonly rise: number };

/** A part of the beam and its pieces, `first` up to but without `past`, with its load summed up: total, moment about its start, fixed-end moments (sagging positive). */
export type Stretch = { readonly from: number; readonly to: number; readonly first: number; readonly past: number; readonly load: number; readonly firstMoment: number; readonly fixedStart: number; readonly fixedEnd: number };

const GAUSS_PLACES = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const;
const GAUSS_WEIGHTS = [5 / 18, 8 / 18, 5 / 18] as const;
const DUST = 1e-12;

/** Supports and corners merged, both being in order, between the ends of the beam. */
function cutsOf(length: number, supports: readonly number[], corners: readonly LoadCorner[]): number[] {
  const cuts = [0];
  let corner = 0;
  for (let support = 0; support <= supports.length; support += 1) {
    const next = supports[support] ?? length;
    for (let at = corners[corner]?.at; at !== undefined && at < next; at = corners[corner]?.at) {
      if (at > 0) cuts.push(at);
      corner += 1;
    }
    cuts.push(next);
  }
  return cuts;
}

/** Load at both ends of a piece that no corner divides. */
function pieceBetween(corners: readonly LoadCorner[], from: number, to: number): Piece {
  const middle = (from + to) / 2;
  for (let index = 1; index < corners.length; index += 1) {
    const a = corners[index - 1];
    const b = corners[index];
    if (a === undefined || b === undefined || !(a.at <= middle && middle < b.at)) continue;
    const rise = (b.load - a.load) / (b.at - a.at);
    return { start: from, length: to - from, load: a.load + rise * (from - a.at), rise };
  }
  return { start: from, length: to - from, load: 0, rise: 0 };
}

/**
 * The beam cut wherever a support or a load corner stands, so that within a piece the load is one straight line.
 *
 * Formula: cuts at both ends, at every support and at every load corner; load at a place by the straight line between its corners, 0 outside them.
 * Parameters: length [m], over 0; supports [m] and corners (place [m], load [kN/m]), ascending.
 * Result: pieces with start and length [m], load at the start [kN/m] and its rise [kN/m2].
 * Limits: none here; the order of supports and corners is held by `continuousBeam`. Pieces under 1e-12 m are dropped.
 * Example: 2 m under 5 kN/m all over, supports at 0, 0.8 and 2 m: two pieces, 0.8 and 1.2 m long, 5 kN/m and no rise.
 * Source: geometry of the load line (equations of equilibrium).
 */
export function layOutPieces(length: number, supports: readonly number[], corners: readonly LoadCorner[]): readonly Piece[] {
  const cuts = cutsOf(length, supports, corners);
  const pieces: Piece[] = [];
  for (let index = 1; index < cuts.length; index += 1) {
    const from = cuts[index - 1] ?? 0;
    const to = cuts[index] ?? 0;
    if (to - from > DUST) pieces.push(pieceBetween(corners, from, to));
  }
  return pieces;
}

/**
 * The load of a stretch between two cuts, summed up.
 *
 * Formula: w, w x and the fixed-end moments -w x (L - x)^2 / L^2 and -w x^2 (L - x) / L^2 by three Gauss places to a piece, which is exact for
 *   straight loads.
 * Parameters: pieces; from and to [m], cuts of the beam; first [-], where to begin to look for the first piece.
 * Result: which pieces, load [kN], moment about the start and fixed-end moments [kN.m].
 * Limits: none here; a stretch of no length has no pieces and no load.
 * Example: 2 m under 5 kN/m all over: 10 kN, fixed-end moments -5 x 2^2 / 12 = -1.667 kN.m.
 * Source: fixed-end moments and Gauss integration, elastic beam theory.
 */
export function sumStretch(pieces: readonly Piece[], from: number, to: number, first: number): Stretch {
  const span = to - from;
  let load = 0;
  let firstMoment = 0;
  let fixedStart = 0;
  let fixedEnd = 0;
  let past = first;
  for (let piece = pieces[past]; piece !== undefined && piece.start + piece.length <= to + DUST; piece = pieces[past]) {
    past += 1;
    for (let point = 0; point < 3; point += 1) {
      const s = (GAUSS_PLACES[point] ?? 0) * piece.length;
      const force = (GAUSS_WEIGHTS[point] ?? 0) * piece.length * (piece.load + piece.rise * s);
      const x = piece.start + s - from;
      const rest = span - x;
      load += force;
      firstMoment += force * x;
      fixedStart -= (force * x * rest * rest) / (span * span);
      fixedEnd -= (force * x * x * rest) / (span * span);
    }
  }
  return { from, to, first, past, load, firstMoment, fixedStart, fixedEnd };
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
 * Parameters: pieces; stretch of them [m]; at its start: moment m [kN.m], sagging positive, shear v [kN], slope times EI [kN.m2], drop times EI [kN.m3].
 * Result: slope times EI [kN.m2] and drop times EI [kN.m3] at the end; largest moment [kN.m] without its sign, its place [m], largest drop times EI [kN.m3].
 * Limits: none here; the stretch must begin and end at cuts, which is held by `continuousBeam`. The largest drop is that of eight samples to a piece,
 *   moved onto the nearby zero of the slope.
 * Example: 1.6 m under 5 kN/m from a simple support, v = 4 kN: largest moment 5 x 1.6^2 / 8 = 1.6 kN.m at 0.8 m.
 * Source: integration of the load, elastic beam theory.
 */
export function march(pieces: readonly Piece[], stretch: Stretch, moment: number, shear: number, slope: number, drop: number): Marched {
  let m = moment;
  let v = shear;
  let t = slope;
  let y = drop;
  let largestMoment = Math.abs(m);
  let largestMomentAt = stretch.from;
  let largestDrop = Math.abs(y);
  for (let index = stretch.first; index < stretch.past; index += 1) {
    const piece = pieces[index];
    if (piece === undefined) break;
    const { start, length, load: w, rise: k } = piece;
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

/**
 * Slope and drop that a free end's load alone brings over a stretch, beginning level.
 *
 * Formula: first and second integrals of M = - int w (x - s) ds from the start on; drop upwards.
 * Parameters: pieces; stretch of them [m].
 * Result: slope times EI [kN.m2] and drop times EI [kN.m3] at the end of the stretch.
 * Limits: none here.
 * Example: 1 m under 6 kN/m: slope -6 x 1^3 / 6 = -1 kN.m2, drop -6 x 1^4 / 24 = -0.25 kN.m3.
 * Source: integration of the load, elastic beam theory.
 */
export function bentFromRest(pieces: readonly Piece[], stretch: Stretch): { readonly slope: number; readonly drop: number } {
  let m = 0;
  let v = 0;
  let t = 0;
  let y = 0;
  for (let index = stretch.first; index < stretch.past; index += 1) {
    const piece = pieces[index];
    if (piece === undefined) break;
    const { length, load: w, rise: k } = piece;
    y = dropIn(length, y, t, m, v, w, k);
    t = slopeIn(length, t, m, v, w, k);
    m = momentIn(length, m, v, w, k);
    v -= length * (w + (length * k) / 2);
  }
  return { slope: t, drop: y };
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
