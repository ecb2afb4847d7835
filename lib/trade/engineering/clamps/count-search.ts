import { LOOSE } from "./count-bound.ts";
import type { CountBound } from "./count-bound.ts";

const DUST = 1e-9;

/** What is known of a prefix of clamps, each a straight line in u: moment over the last, slope there (times EI), shear it takes from below. */
type Prefix = { readonly m0: number; readonly m1: number; readonly q0: number; readonly q1: number; readonly v0: number; readonly v1: number };
/** Judges a layout by the exact beam; the steps are those of the clamps that hold. */
export type Leaf = (steps: readonly number[]) => boolean;
export type Effort = { left: number };

type Walk = {
  readonly bound: CountBound;
  readonly count: number;
  readonly effort: Effort;
  readonly leaf: Leaf;
  readonly steps: number[];
  /** Load held at least by a clamp and those below it, by how many may still follow. */
  readonly floors: readonly number[];
  readonly moment: number;
  readonly shear: number;
  readonly reaction: number;
  readonly bend: number;
  low: number;
  high: number;
};

/** c0 + c1 u ≤ limit narrows what is left for u. */
function narrow(walk: Walk, c0: number, c1: number, limit: number): void {
  if (c1 > 0) walk.high = Math.min(walk.high, (limit - c0) / c1);
  else if (c1 < 0) walk.low = Math.max(walk.low, (limit - c0) / c1);
  else if (c0 > limit) walk.high = -Infinity;
}

/** The load left over by a clamp and those below must be within reach of the clamps that may follow, wherever those can stand. */
function loadFloors({ lattice, widest, below, limits, sums }: CountBound, count: number): number[] {
  const under: number[] = [];
  for (let step = lattice.topFrom; under.length < count; ) {
    under.push(below[step] ?? 0);
    let next = step;
    while (next > 0 && next - 1 + Math.min(widest[next - 1] ?? 0, lattice.gapTo) >= step) next -= 1;
    step = next;
  }
  const whole = sums.s0[lattice.top] ?? 0;
  return Array.from({ length: count + 1 }, (_, left) => under.slice(0, left).reduce((most, load, over) => Math.max(most, load - (left - 1 - over) * limits.reaction * LOOSE), whole - left * limits.reaction * LOOSE));
}

/** Sets the next holding clamp on step b; false when no u is left. The slope-deflection equations of one span carry every line on. */
function extend(walk: Walk, a: number, b: number, used: number, { m0, m1, q0, q1, v0, v1 }: Prefix): boolean {
  const { sums, depth, lattice } = walk.bound;
  const { at, pressure, s0, s1, s2, s3 } = sums;
  walk.effort.left -= 1;
  const x = at[a] ?? 0;
  const end = at[b] ?? 0;
  const span = end - x;
  const d0 = (s0[b] ?? 0) - (s0[a] ?? 0);
  const d1 = (s1[b] ?? 0) - (s1[a] ?? 0);
  const d2 = (s2[b] ?? 0) - (s2[a] ?? 0);
  const d3 = (s3[b] ?? 0) - (s3[a] ?? 0);
  const fixedStart = -(d3 - (2 * end + x) * d2 + (end * end + 2 * x * end) * d1 - x * end * end * d0) / (span * span);
  const fixedEnd = (d3 - (end + 2 * x) * d2 + (x * x + 2 * x * end) * d1 - x * x * end * d0) / (span * span);
  const r0 = ((fixedStart - m0) * span) / 2 - 2 * q0;
  const r1 = (-m1 * span) / 2 - 2 * q1;
  const n0 = (2 * q0 + 4 * r0) / span + fixedEnd;
  const n1 = (2 * q1 + 4 * r1) / span;
  const w0 = (n0 - m0 + end * d0 - d1) / span;
  const w1 = (n1 - m1) / span;
  narrow(walk, n0, n1, walk.moment);
  narrow(walk, -n0, -n1, walk.moment);
  if (walk.low > walk.high) return false;
  narrow(walk, v0 + w0, v1 + w1, walk.reaction);
  // Of two clamps that hold one may pull; from the third on none does.
  if (walk.steps.length >= 2) narrow(walk, -v0 - w0, -v1 - w1, DUST);
  narrow(walk, -w0, -w1, (s0[a] ?? 0) - (walk.floors[walk.count - used + Math.ceil((b - a) / lattice.gapTo)] ?? 0) + DUST);
  if (walk.low > walk.high) return false;
  const relief = Math.min(depth, span / 2);
  const lower = walk.shear + pressureAbove(walk.bound, x + relief) * relief;
  const upper = walk.shear + (pressure[b] ?? 0) * relief;
  narrow(walk, w0, w1, lower);
  narrow(walk, -w0, -w1, lower);
  narrow(walk, d0 - w0, -w1, upper);
  narrow(walk, w0 - d0, w1, upper);
  if (b - a >= 3) narrowInSpan(walk, a, b, m0, m1, q0, q1, w0, w1);
  return walk.low <= walk.high && onwards(walk, b, used, { m0: n0, m1: n1, q0: r0, q1: r1, v0: d0 - w0, v1: -w1 });
}

function pressureAbove({ sums, lattice }: CountBound, place: number): number {
  const step = (place * 1000) / lattice.module;
  const k = Math.min(lattice.top, Math.floor(step));
  const here = sums.pressure[k] ?? 0;
  return here + ((sums.pressure[Math.min(lattice.top, k + 1)] ?? 0) - here) * (step - k);
}

/** Moment and deflection somewhat below the middle of the span, where they are largest under a load that falls upwards. */
function narrowInSpan(walk: Walk, a: number, b: number, m0: number, m1: number, q0: number, q1: number, w0: number, w1: number): void {
  const { at, s0, s1, s2, s3 } = walk.bound.sums;
  const c = a + Math.round((b - a) * 0.46);
  const x = at[c] ?? 0;
  const s = x - (at[a] ?? 0);
  const e0 = (s0[c] ?? 0) - (s0[a] ?? 0);
  const e1 = (s1[c] ?? 0) - (s1[a] ?? 0);
  const e2 = (s2[c] ?? 0) - (s2[a] ?? 0);
  const e3 = (s3[c] ?? 0) - (s3[a] ?? 0);
  narrow(walk, m0 + w0 * s - (x * e0 - e1), m1 + w1 * s, walk.moment);
  const dropped = (x * x * x * e0 - 3 * x * x * e1 + 3 * x * e2 - e3) / 6;
  narrow(walk, dropped - q0 * s - (m0 * s * s) / 2 - (w0 * s * s * s) / 6, -q1 * s - (m1 * s * s) / 2 - (w1 * s * s * s) / 6, walk.bend * ((at[b] ?? 0) - (at[a] ?? 0)));
}

/** A clamp stands on step b: the layout ends here, or goes on to every next step that can still reach the top. u is taken anew, −1 to 1 over what is left of it. */
function onwards(walk: Walk, b: number, used: number, lines: Prefix): boolean {
  const { lattice, widest, need } = walk.bound;
  const centre = (walk.low + walk.high) / 2;
  const half = (walk.high - walk.low) / 2;
  const prefix = {
    m0: lines.m0 + lines.m1 * centre, m1: lines.m1 * half, q0: lines.q0 + lines.q1 * centre, q1: lines.q1 * half, v0: lines.v0 + lines.v1 * centre, v1: lines.v1 * half,
  };
  walk.steps.push(b);
  const idle = b >= lattice.topFrom ? 0 : Math.ceil((lattice.topFrom - b) / lattice.gapTo);
  if (used + idle <= walk.count && walk.steps.length >= 2 && closes(walk, b, prefix) && walk.leaf(walk.steps)) return true;
  const left = walk.count - used;
  for (let gap = Math.min(lattice.top - b, widest[b] ?? 0, left * lattice.gapTo); left > 0 && gap >= lattice.gapFrom && walk.effort.left > 0; gap -= 1) {
    const next = used + Math.ceil(gap / lattice.gapTo);
    if (next + (need[b + gap] ?? 0) > walk.count) {
      if (gap <= lattice.gapTo) break;
      continue;
    }
    walk.low = -1;
    walk.high = 1;
    if (extend(walk, b, b + gap, next, prefix)) return true;
  }
  walk.steps.pop();
  return false;
}

/** The overhang above the last clamp fixes the moment over it. */
function closes({ bound, moment }: Walk, b: number, { m0, m1 }: Prefix): boolean {
  const { at, s0, s1 } = bound.sums;
  const { top } = bound.lattice;
  const above = (s1[top] ?? 0) - (s1[b] ?? 0) - (at[b] ?? 0) * ((s0[top] ?? 0) - (s0[b] ?? 0));
  return Math.abs(above + m0) <= Math.abs(m1) * LOOSE + moment * 1e-6;
}

/**
 * Looks for a layout of `count` clamps by depth first over the lattice, and proves that there is none where it finds none.
 *
 * Along the beam moment and slope at a clamp follow from those at the clamp below, linearly; the one thing a prefix of clamps leaves open is
 * the slope at the lowest. So with every clamp set, all forces so far are straight lines in one unknown u, and every check so far (moment over
 * each clamp and in each span, shear, deflection, reaction, load left for the rest) is a condition on u: what is left is an interval. When it
 * is empty no continuation can pass, and the prefix is dropped. The conditions are those of the exact beam or weaker, loosened by 1e-7, so no
 * passing layout is dropped; leaves are judged by the exact beam itself. A clamp that would pull carries nothing, in the exact check too: the
 * search therefore allows a gap of several largest gaps, at the price of the idle clamps that have to stand in it.
 *
 * Answers "none" as a proof only while effort is left; every span set costs one.
 */
export function searchCount(bound: CountBound, count: number, effort: Effort, leaf: Leaf): "found" | "none" | "unsettled" {
  const { lattice, limits, sums, need } = bound;
  const walk: Walk = {
    bound, count, effort, leaf, steps: [], floors: loadFloors(bound, count), low: 0, high: 0,
    moment: limits.moment * LOOSE + DUST, shear: limits.shear * LOOSE + DUST, reaction: limits.reaction * LOOSE + DUST, bend: limits.bend * LOOSE,
  };
  const furthest = Math.min(lattice.top, lattice.firstTo + (count - 2) * lattice.gapTo);
  for (let first = lattice.firstFrom; first <= furthest && effort.left > 0; first += 1) {
    const used = 1 + Math.max(0, Math.ceil((first - lattice.firstTo) / lattice.gapTo));
    if (used + (need[first] ?? 0) > count) continue;
    const under = (sums.at[first] ?? 0) * (sums.s0[first] ?? 0) - (sums.s1[first] ?? 0);
    if (under > walk.moment) break;
    // A slope (times EI) of a million is far over any that the moments allow.
    walk.low = -1e6;
    walk.high = 1e6;
    if (onwards(walk, first, used, { m0: -under, m1: 0, q0: 0, q1: 1, v0: sums.s0[first] ?? 0, v1: 0 })) return "found";
  }
  return effort.left > 0 ? "none" : "unsettled";
}
