import { beamLimitsOf, limitsOf } from "./layout-task.ts";
import type { BeamLimits, LayoutLimits, SpacedTask } from "./layout-task.ts";
import { loadSums } from "./load-sums.ts";
import type { LoadSums } from "./load-sums.ts";

/** The spacing rule in steps of the module. */
export type Lattice = {
  readonly module: number;
  readonly firstFrom: number;
  readonly firstTo: number;
  readonly topFrom: number;
  readonly top: number;
  readonly gapFrom: number;
  readonly gapTo: number;
};

/** Loosens every condition a little, so that rounding never rules out a layout that the exact beam would pass. */
export const LOOSE = 1 + 1e-7;
const NO_COUNT = 10_000;

type Beam = {
  readonly lattice: Lattice;
  readonly limits: BeamLimits;
  readonly sums: LoadSums;
  /** Of the backing timber, away from the ply [m]. */
  readonly depth: number;
};

/** What the backing allows whichever clamp holds it. */
export type BeamBound = Beam & {
  /** Widest gap above each step that a span could bear at its kindest. */
  readonly widest: readonly number[];
  /** Further clamps that each step needs at least to reach the top, seen gap by gap. */
  readonly need: readonly number[];
  /** Load that the clamps under a step hold at least, if a clamp stands on it. */
  readonly below: readonly number[];
};
export type CountBound = BeamBound & { readonly limits: LayoutLimits; readonly least: number };

const stepsUp = (height: number, module: number): number => Math.ceil(height / module - 1e-9);
const stepsDown = (height: number, module: number): number => Math.floor(height / module + 1e-9);

function latticeOf({ formHeight, spacing }: Pick<SpacedTask, "formHeight" | "spacing">): Lattice {
  const { module, firstMin, firstMax, topMax, smallestGap, largestGap } = spacing;
  const top = stepsDown(formHeight, module);
  return {
    module,
    firstFrom: stepsUp(firstMin, module),
    firstTo: Math.min(top, stepsDown(firstMax, module)),
    topFrom: Math.max(0, stepsUp(formHeight - topMax, module)),
    top,
    gapFrom: Math.max(1, stepsUp(smallestGap, module)),
    gapTo: stepsDown(largestGap, module),
  };
}

/**
 * `loadSums` at the steps of the spacing rule: the same for every clamp that is tried on one form.
 *
 * Formula: as of `loadSums`, one step to a module.
 * Parameters: task with form height and module [mm].
 * Result: places [m], pressures [kPa] and sums from the foot, of p x^k [kN/m], [kN], [kN.m], [kN.m2].
 * Limits: none here; the module is held by the shutter rule.
 * Example: 1500 mm on a module of 50 mm: 31 steps.
 * Source: statics of the pressure line.
 */
export function latticeSums(task: Pick<SpacedTask, "envelope" | "formHeight" | "spacing">): LoadSums {
  const { module, top } = latticeOf(task);
  return loadSums(task.envelope, module / 1000, top + 1);
}

/** Simple-beam moment [kN.m/m] at step c of a span from a to b. */
function simpleMoment({ at, s0, s1 }: LoadSums, a: number, b: number, c: number): number {
  const from = at[a] ?? 0;
  const here = at[c] ?? 0;
  const load = (s0[b] ?? 0) - (s0[a] ?? 0);
  const start = load - ((s1[b] ?? 0) - (s1[a] ?? 0) - from * load) / ((at[b] ?? 0) - from);
  return start * (here - from) - (here * ((s0[c] ?? 0) - (s0[a] ?? 0)) - ((s1[c] ?? 0) - (s1[a] ?? 0)));
}

/** Could a span stand, whatever its neighbours do? End moments relieve its middle by the limit at most; its shears share the load evenly at best. */
function mayStand({ sums, limits, depth }: Beam, a: number, b: number): boolean {
  const middle = (a + b) >> 1;
  if (middle > a && simpleMoment(sums, a, b, middle) > 2 * limits.moment * LOOSE) return false;
  const relief = Math.min(depth, ((sums.at[b] ?? 0) - (sums.at[a] ?? 0)) / 2);
  const load = (sums.s0[b] ?? 0) - (sums.s0[a] ?? 0);
  return load - ((sums.pressure[a] ?? 0) + (sums.pressure[b] ?? 0)) * relief <= 2 * limits.shear * LOOSE;
}

/** What a lower start could not bridge a higher one may: the reach never falls going up, so one pass from the foot finds it everywhere. */
function widestGaps(beam: Beam): number[] {
  const { top } = beam.lattice;
  const widest: number[] = [];
  let reach = 1;
  for (let step = 0; step < top; step += 1) {
    reach = Math.max(reach, step + 1);
    while (reach < top && mayStand(beam, step, reach + 1)) reach += 1;
    widest.push(reach - step);
  }
  widest.push(0);
  return widest;
}

/**
 * Load that the clamps under step c hold at least where a clamp stands on c: that below c - h, with int p (c - s) ds from c - h to c = 2 M.
 * For with S held by the clamps under c, the shear just under c is D = load below c - S. Going down from there the shear is nowhere less than D
 * less the load in between, so up to the place x0 where that is used up the moment falls by int p (c - s) ds at least; it can fall by 2 M at
 * most, so x0 is not under c - h, and S is the load below x0. The shear limit bounds D as well.
 */
function heldBelow({ lattice, limits, sums, depth }: Beam): number[] {
  const { at, pressure, s0, s1 } = sums;
  const held: number[] = [];
  const fall = 2 * limits.moment * LOOSE;
  let most = 0;
  let x = 0;
  for (let c = 0; c <= lattice.top; c += 1) {
    const here = at[c] ?? 0;
    const below = s0[c] ?? 0;
    while (x < c && here * (below - (s0[x] ?? 0)) - ((s1[c] ?? 0) - (s1[x] ?? 0)) > fall) x += 1;
    const bySheared = below - limits.shear * LOOSE - (pressure[c] ?? 0) * depth;
    most = Math.max(most, bySheared, s0[Math.max(0, x - 1)] ?? 0);
    held.push(most);
  }
  return held;
}

/**
 * What the backing timbers alone allow between clamps: the part of a bound that is the same for every clamp tried on them.
 *
 * Formula: see `mayStand` for the widest gaps, from the top down the fewest of them that reach it, and `heldBelow`.
 * Parameters: task with spacing [mm], capacities [kN.m], [kN] and share [m]; sums of its own lattice.
 * Result: widest gap and least further clamps above each step of the module [-], load held at least below it [kN/m].
 * Limits: a bound only: the conditions are necessary, not enough.
 * Example: a timber to spare, gaps up to 700 mm on a module of 100 mm, form of 2 m with its top clamp anywhere over 1.7 m: from 200 mm three more.
 * Source: statics of a continuous beam (equations of equilibrium).
 */
export function beamBound(task: Omit<SpacedTask, "clampLimit">, sums: LoadSums = latticeSums(task)): BeamBound {
  const lattice = latticeOf(task);
  const beam = { lattice, limits: beamLimitsOf(task), sums, depth: task.backing.depth };
  const widest = widestGaps(beam);
  const need = new Array<number>(lattice.top + 1).fill(0);
  for (let step = lattice.top; step >= 0; step -= 1) {
    const reach = Math.min(lattice.top, step + Math.min(widest[step] ?? 0, lattice.gapTo));
    need[step] = step >= lattice.topFrom ? 0 : reach <= step ? NO_COUNT : 1 + (need[reach] ?? 0);
  }
  return { ...beam, widest, need, below: heldBelow(beam) };
}

/** Furthest step of each next clamp: within a gap that may stand, and with no more load held below it than the clamps there can take. */
function leastCount({ lattice, sums, widest, need, below }: BeamBound, reaction: number): number {
  const whole = sums.s0[lattice.top] ?? 0;
  let furthest = lattice.firstTo;
  let count = 1;
  while (furthest < lattice.topFrom) {
    let next = Math.min(lattice.top, furthest + Math.min(widest[furthest] ?? 0, lattice.gapTo));
    while (next > furthest && (below[next] ?? 0) > count * reaction) next -= 1;
    if (next <= furthest) return NO_COUNT;
    furthest = next;
    count += 1;
  }
  return Math.max(2, count, 1 + (need[lattice.firstTo] ?? 0), Math.ceil(whole / reaction - 1e-9));
}

/**
 * A count that no layout of clamps can go under, and what a search for the fewest needs.
 *
 * Formula: clamp by clamp the furthest step: c_(j+1) <= c_j + the widest gap that may stand, and S(c_(j+1)) <= j R, S the load that the clamps
 *   below it hold at least (see `heldBelow`); and all clamps together hold the whole load.
 * Parameters: task with spacing [mm] and limits [kN.m/m], [kN/m].
 * Result: least count [-]; 10000 where no layout is possible.
 * Limits: a bound only: the conditions are necessary, not enough.
 * Example: 30 kPa all over 3 m, clamps of 25 kN/m: the whole load of 90 kN/m asks for four at least.
 * Source: statics of a continuous beam (equations of equilibrium).
 */
export function countBound(task: SpacedTask, bound: BeamBound = beamBound(task)): CountBound {
  const limits = limitsOf(task);
  return { ...bound, limits, least: leastCount(bound, limits.reaction * LOOSE) };
}
