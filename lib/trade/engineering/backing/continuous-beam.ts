import { kN, kN_m } from "#lib/kernel/units.ts";
import type { KilonewtonMetres, Kilonewtons, Metres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { bentFromRest, layOutPieces, march, sumStretch } from "./beam-pieces.ts";
import type { LoadCorner, Marched, Piece, Stretch } from "./beam-pieces.ts";
import type { KilonewtonSquareMetres } from "../engineering-units.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";

const SOURCE = "Stiffness (slope-deflection) method, elastic beam theory; see any text on structural analysis";

export type BeamInput = {
  readonly length: Metres;
  /** Places of the supports from the beam's start, ascending. */
  readonly supports: readonly Metres[];
  /** Ascending. */
  readonly load: readonly LoadCorner[];
  readonly stiffness: KilonewtonSquareMetres;
};

/** Largest values over a stretch between supports, or over an overhang (`from` or `to` is then an end of the beam). */
export type BeamStretch = {
  readonly from: Metres;
  readonly to: Metres;
  readonly overhang: boolean;
  /** Largest moment without its sign. */
  readonly moment: KilonewtonMetres;
  readonly momentAt: Metres;
  /** Without sign, beside its first support and beside its last (0 at a free end). */
  readonly shearFrom: Kilonewtons;
  readonly shearTo: Kilonewtons;
  /** Largest, without its sign. */
  readonly deflection: Metres;
};

export type BeamAnswer = {
  readonly reactions: readonly Kilonewtons[];
  /** Over the supports; sagging is positive. */
  readonly supportMoments: readonly KilonewtonMetres[];
  readonly stretches: readonly BeamStretch[];
};

const refuse = (limit: string, given: number, allowed: string): Refusal => refusal({ limit, given, allowed, source: SOURCE, message: "The beam cannot be solved." });

function invalid(beam: BeamInput): Refusal | null {
  const { length, supports, load, stiffness } = beam;
  if (supports.length < 2) return refuse("supports of a beam", supports.length, "two or more");
  if (!(stiffness > 0)) return refuse("stiffness (kN.m2)", stiffness, "over 0");
  for (let index = 0, last = -1e-12; index < supports.length; index += 1) {
    const at = supports[index] ?? NaN;
    if (!(at > last && at <= length + 1e-12)) return refuse("place of a support (m)", at, `ascending, 0 to ${length} m`);
    last = at;
  }
  for (let index = 1; index < load.length; index += 1)
    if (!((load[index]?.at ?? NaN) >= (load[index - 1]?.at ?? NaN))) return refuse("place of a load corner (m)", load[index]?.at ?? NaN, "ascending");
  return null;
}

/** Slopes (times EI) at the supports: one tridiagonal system, since a support neither sinks nor lifts. */
function solveSlopes(spans: readonly Stretch[], startMoment: number, endMoment: number): readonly number[] {
  const count = spans.length + 1;
  const diagonal = new Array<number>(count).fill(0);
  const right = new Array<number>(count).fill(0);
  for (let index = 0; index < spans.length; index += 1) {
    const span = spans[index];
    if (span === undefined) continue;
    const length = span.to - span.from;
    diagonal[index] = (diagonal[index] ?? 0) + 4 / length;
    diagonal[index + 1] = (diagonal[index + 1] ?? 0) + 4 / length;
    right[index] = (right[index] ?? 0) + span.fixedStart;
    right[index + 1] = (right[index + 1] ?? 0) - span.fixedEnd;
  }
  right[0] = (right[0] ?? 0) - startMoment;
  right[count - 1] = (right[count - 1] ?? 0) + endMoment;
  for (let index = 1; index < count; index += 1) {
    const span = spans[index - 1];
    const coupling = span === undefined ? 0 : 2 / (span.to - span.from);
    const factor = coupling / (diagonal[index - 1] ?? 1);
    diagonal[index] = (diagonal[index] ?? 0) - factor * coupling;
    right[index] = (right[index] ?? 0) - factor * (right[index - 1] ?? 0);
  }
  for (let index = count - 1; index >= 0; index -= 1) {
    const span = spans[index];
    const next = span === undefined ? 0 : (2 / (span.to - span.from)) * (right[index + 1] ?? 0);
    right[index] = ((right[index] ?? 0) - next) / (diagonal[index] ?? 1);
  }
  return right;
}

/**
 * Continuous beam on unyielding supports anywhere along it, with free ends beyond the outer ones, under a load of straight lines.
 *
 * Formula: for each support, 2 t(i-1)/L(i-1) + 4 t(i) (1/L(i-1) + 1/L(i)) + 2 t(i+1)/L(i) = F(start, i) - F(end, i-1), t = EI x slope,
 *   F the fixed-end moments by three-point Gauss integration (exact for straight loads); then statics within each span.
 * Parameters: length [m], over 0; supports [m], two or more, ascending within the length; load [kN/m] at ascending places [m];
 *   stiffness EI [kN.m2], over 0 and the same along the beam.
 * Result: reactions [kN], moments over the supports [kN.m], sagging positive, and per stretch the largest moment [kN.m], the shears
 *   beside its supports [kN] and the largest deflection [m].
 * Limits: fewer than two supports, supports or loads out of order and EI of 0 are refused. Linear elastic, small deflections, no shear
 *   deformation; a support can pull as well as push, so a negative reaction means lift-off and must be looked at by the caller.
 * Example: two spans of 1.3 m under 7 kN/m: reactions 3.4125, 11.375, 3.4125 kN; 7 x 1.3^2 / 8 = 1.47875 kN.m over the middle.
 * Source: slope-deflection equations (stiffness method), elastic beam theory; worked example from the two-span coefficients 3/8, 5/4, 1/8.
 */
export function continuousBeam(beam: BeamInput): Result<BeamAnswer, Refusal> {
  const wrong = invalid(beam);
  return wrong === null ? ok(solveBeam(beam)) : fail(wrong);
}

/**
 * Reactions alone of a continuous beam: what `continuousBeam` answers, without going along its spans.
 *
 * Formula: slopes over the supports and statics of each span, as of `continuousBeam`.
 * Parameters: beam, with length [m], supports [m] ascending, load corners [m, kN/m], stiffness [kN.m2].
 * Result: reactions [kN], lowest first.
 * Limits: those of `continuousBeam`: fewer than two supports, supports or loads out of order and EI of 0 are refused.
 * Example: two spans of 1.3 m under 7 kN/m: 3.4125, 11.375, 3.4125 kN.
 * Source: slope-deflection equations (stiffness method), elastic beam theory.
 */
export function beamReactions(beam: BeamInput): Result<readonly Kilonewtons[], Refusal> {
  const wrong = invalid(beam);
  return wrong === null ? ok(carry(beam).reactions) : fail(wrong);
}

type Carried = {
  readonly pieces: readonly Piece[];
  readonly start: Stretch;
  readonly spans: readonly Stretch[];
  readonly end: Stretch;
  readonly slopes: readonly number[];
  readonly moments: readonly KilonewtonMetres[];
  /** Just above the lower support of each span. */
  readonly shears: readonly number[];
  readonly reactions: readonly Kilonewtons[];
};

function carry({ length, supports, load }: BeamInput): Carried {
  const pieces = layOutPieces(length, supports, load);
  const first = supports[0] ?? 0;
  const start = sumStretch(pieces, 0, first, 0);
  const spans: Stretch[] = [];
  let piece = start.past;
  for (let index = 1; index < supports.length; index += 1) {
    const span = sumStretch(pieces, supports[index - 1] ?? 0, supports[index] ?? 0, piece);
    piece = span.past;
    spans.push(span);
  }
  const end = sumStretch(pieces, supports[supports.length - 1] ?? length, length, piece);
  const startMoment = -(start.load * first - start.firstMoment);
  const endMoment = -end.firstMoment;
  const slopes = solveSlopes(spans, startMoment, endMoment);
  const moments = [kN_m(startMoment)];
  const shears: number[] = [];
  const reactions: Kilonewtons[] = [];
  let below = start.load;
  for (let index = 0; index < spans.length; index += 1) {
    const span = spans[index];
    if (span === undefined) break;
    const l = span.to - span.from;
    const moment = index === spans.length - 1 ? endMoment : (2 * (slopes[index] ?? 0) + 4 * (slopes[index + 1] ?? 0)) / l + span.fixedEnd;
    const shear = (moment - (moments[index] ?? 0) + span.load * l - span.firstMoment) / l;
    moments.push(kN_m(moment));
    shears.push(shear);
    reactions.push(kN(below + shear));
    below = span.load - shear;
  }
  reactions.push(kN(below + end.load));
  return { pieces, start, spans, end, slopes, moments, shears, reactions };
}

function solveBeam(beam: BeamInput): BeamAnswer {
  const { stiffness } = beam;
  const { pieces, start, spans, end, slopes, moments, shears, reactions } = carry(beam);
  const stretches: BeamStretch[] = [];
  if (start.to > 0) stretches.push(startOverhang(pieces, start, slopes[0] ?? 0, stiffness));
  for (let index = 0; index < spans.length; index += 1) {
    const span = spans[index];
    const shear = shears[index] ?? 0;
    if (span !== undefined) stretches.push(toStretch(span, false, march(pieces, span, moments[index] ?? 0, shear, slopes[index] ?? 0, 0), shear, span.load - shear, stiffness));
  }
  if (end.from < beam.length) stretches.push(toStretch(end, true, march(pieces, end, moments[spans.length] ?? 0, end.load, slopes[spans.length] ?? 0, 0), end.load, 0, stiffness));
  return { reactions, supportMoments: moments, stretches };
}

/** A free start has unknown slope and drop: let it bend from rest, then put it back onto the support. */
function startOverhang(pieces: readonly Piece[], start: Stretch, slope: number, stiffness: number): BeamStretch {
  const rest = bentFromRest(pieces, start);
  const freeSlope = slope - rest.slope;
  const state = march(pieces, start, 0, 0, freeSlope, -(rest.drop + freeSlope * start.to));
  return toStretch(start, true, state, 0, start.load, stiffness);
}

function toStretch(stretch: Stretch, overhang: boolean, state: Marched, from: number, to: number, stiffness: number): BeamStretch {
  return {
    from: stretch.from as Metres,
    to: stretch.to as Metres,
    overhang,
    moment: state.largestMoment as KilonewtonMetres,
    momentAt: state.largestMomentAt as Metres,
    shearFrom: Math.abs(from) as Kilonewtons,
    shearTo: Math.abs(to) as Kilonewtons,
    deflection: (state.largestDrop / stiffness) as Metres,
  };
}
