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
    if (start < from - DUST || start + length > to + DUST) continue;
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

export type MarchState = { moment: number; shear: number; slope: number; drop: number };
export type Marched = MarchState & { largestMoment: number; largestMomentAt: number; largestDrop: number };

/** Goes along a stretch piece by piece with the exact polynomials of a straight load; slope and drop are times EI, drop upwards. */
export function march(pieces: Pieces, from: number, to: number, begin: MarchState): Marched {
  const state: Marched = { ...begin, largestMoment: Math.abs(begin.moment), largestMomentAt: from, largestDrop: Math.abs(begin.drop) };
  for (let index = 0; index < pieces.count; index += 1) {
    const start = pieces.start[index] ?? 0;
    const length = pieces.length[index] ?? 0;
    if (start < from - DUST || start + length > to + DUST) continue;
    marchPiece(state, start, length, pieces.load[index] ?? 0, pieces.rise[index] ?? 0);
  }
  return state;
}

const momentIn = (s: number, at: MarchState, w: number, k: number): number => at.moment + s * (at.shear - s * (w / 2 + (s * k) / 6));
const slopeIn = (s: number, at: MarchState, w: number, k: number): number =>
  at.slope + s * (at.moment + s * (at.shear / 2 - s * (w / 6 + (s * k) / 24)));
const dropIn = (s: number, at: MarchState, w: number, k: number): number =>
  at.drop + s * (at.slope + s * (at.moment / 2 + s * (at.shear / 6 - s * (w / 24 + (s * k) / 120))));

function marchPiece(state: Marched, start: number, length: number, w: number, k: number): void {
  const consider = (s: number) => {
    const moment = Math.abs(momentIn(s, state, w, k));
    if (moment > state.largestMoment) {
      state.largestMoment = moment;
      state.largestMomentAt = start + s;
    }
  };
  for (const s of shearZeros(state.shear, w, k)) if (s > 0 && s < length) consider(s);
  consider(length);
  state.largestDrop = Math.max(state.largestDrop, largestDropIn(state, length, w, k), Math.abs(dropIn(length, state, w, k)));
  const moment = momentIn(length, state, w, k);
  const slope = slopeIn(length, state, w, k);
  state.drop = dropIn(length, state, w, k);
  state.shear = state.shear - w * length - (k * length * length) / 2;
  state.moment = moment;
  state.slope = slope;
}

/** Where V0 - w s - k s2 / 2 = 0. */
function shearZeros(shear: number, w: number, k: number): readonly number[] {
  if (Math.abs(k) < 1e-9) return w === 0 ? [] : [shear / w];
  const root = w * w + 2 * k * shear;
  if (root < 0) return [];
  return [(-w + Math.sqrt(root)) / k, (-w - Math.sqrt(root)) / k];
}

/** The deepest of a few samples, moved onto the nearby zero of the slope by Newton's rule. */
function largestDropIn(at: MarchState, length: number, w: number, k: number): number {
  let best = 0;
  let deepest = 0;
  for (let sample = 1; sample < 8; sample += 1) {
    const drop = Math.abs(dropIn((length * sample) / 8, at, w, k));
    if (drop <= deepest) continue;
    deepest = drop;
    best = (length * sample) / 8;
  }
  let s = best;
  for (let step = 0; step < 3; step += 1) {
    const curvature = momentIn(s, at, w, k);
    if (curvature === 0) break;
    s -= slopeIn(s, at, w, k) / curvature;
    if (!(s > 0 && s < length)) return deepest;
  }
  return Math.max(deepest, Math.abs(dropIn(s, at, w, k)));
}
