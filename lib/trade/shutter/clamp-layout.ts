import type { Kilonewtons, Metres, Millimetres } from "#lib/kernel/units.ts";
import { mm } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { TimberCapacity } from "#lib/trade/engineering/backing/timber-capacity.ts";
import { clampDemands } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import type { ClampDemands } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import type { PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import { pressureAt } from "#lib/trade/engineering/pressure-envelope.ts";
import { refusal } from "#lib/trade/engineering/working.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";
import type { ClampSpacing } from "#lib/trade/engineering/clamps/clamp-spacing.ts";

export type ClampTask = {
  readonly envelope: PressureEnvelope;
  readonly formHeight: Millimetres;
  /** Of the face that the hardest-worked backing timber carries. */
  readonly share: Metres;
  readonly backing: TimberCapacity;
  /** The wider side of the concrete. */
  readonly side: Metres;
  readonly sideCapacity: Kilonewtons;
  readonly deflectionRatio: number;
  readonly spacing: ClampSpacing;
};

export type ClampAnswer = {
  readonly heights: readonly Millimetres[];
  readonly demands: ClampDemands;
  /** Largest of backing in bending, shear, deflection and of the clamp's force; up to 1. */
  readonly use: number;
  readonly lowerBound: number;
};

/** Gaps longer than this multiple of the tabulated span never passed the beam; shorter ones are not worth trying. */
const LOOSEST = 1.45;
const TIGHTEST = 0.2;
const HALVINGS = 10;

/** Furthest span above a point by the tabulated coefficients, the pressure at the point taken over the whole span. */
function gapRule(task: ClampTask): (pressure: number) => number {
  const { moment, shear, deflection } = spanCoefficients(3);
  const bendingConstant = Math.sqrt(task.backing.moment / (moment * task.share));
  const shearConstant = task.backing.shear / (shear * task.share);
  const deflectionConstant = Math.cbrt(task.backing.stiffness / (deflection * task.deflectionRatio * task.share));
  const forceConstant = task.sideCapacity / task.side;
  return (pressure) =>
    1000 * Math.min(bendingConstant / Math.sqrt(pressure), shearConstant / pressure + 2 * task.backing.depth, deflectionConstant / Math.cbrt(pressure), forceConstant / pressure);
}

const onModule = (height: number, module: number): number => Math.floor(height / module + 1e-9) * module;
const upToModule = (height: number, module: number): number => Math.ceil(height / module - 1e-9) * module;

/**
 * Goes up the form by the furthest gap the rule allows at `scale`. Pressure never rises with height, so a higher start reaches at
 * least as high: going furthest each time gives the fewest clamps under the rule. Null where a gap would be under the smallest.
 */
function walk(task: ClampTask, rule: (pressure: number) => number, scale: number): number[] | null {
  const { module, firstMin, firstMax, topMax, smallestGap, largestGap } = task.spacing;
  const topFrom = Math.max(0, task.formHeight - topMax);
  const highest = onModule(task.formHeight, module);
  const atFoot = pressureAt(task.envelope, mm(0));
  const lowest = upToModule(firstMin, module);
  if (lowest > firstMax) return null;
  const first = Math.min(onModule(firstMax, module), Math.max(lowest, onModule(0.5 * scale * rule(atFoot), module)));
  const heights = [first];
  for (let at = first; at < topFrom || heights.length < 2; ) {
    const pressure = pressureAt(task.envelope, mm(at));
    const reach = onModule(at + (pressure > 0 ? Math.min(largestGap, scale * rule(pressure)) : largestGap), module);
    const lowestNext = upToModule(at + smallestGap, module);
    if (reach < lowestNext || lowestNext > highest) return null;
    at = reach >= topFrom ? Math.min(highest, Math.max(lowestNext, upToModule(topFrom, module))) : reach;
    heights.push(at);
  }
  return heights;
}

/** The evenest layout of at most `count` clamps: the smallest scale that still needs no more. */
function evenest(task: ClampTask, rule: (pressure: number) => number, count: number): number[] | null {
  let loose = LOOSEST;
  let tight = TIGHTEST;
  let best: number[] | null = null;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (loose + tight) / 2;
    const heights = walk(task, rule, middle);
    if (heights !== null && heights.length <= count) {
      best = heights;
      loose = middle;
    } else tight = middle;
  }
  return best;
}

export function layoutUse(task: ClampTask, demands: ClampDemands): number {
  return Math.max(
    (demands.moment.value * task.share) / task.backing.moment,
    (demands.shear.value * task.share) / task.backing.shear,
    (demands.deflectionOverSpan.value * task.share * task.deflectionRatio) / task.backing.stiffness,
    (demands.largestReaction.value * task.side) / task.sideCapacity,
  );
}

/** One gap, seen at its kindest: pressure of its upper end all over it, both ends fixed, shear shared evenly. */
function mayStand(task: ClampTask, from: number, gap: number): boolean {
  const span = gap / 1000;
  const above = pressureAt(task.envelope, mm(from + gap)) * task.share;
  const below = pressureAt(task.envelope, mm(from)) * task.share;
  const relief = Math.min(task.backing.depth, span / 2);
  return (above * span * span) / 16 <= task.backing.moment && (above * span) / 2 - below * relief <= task.backing.shear;
}

/**
 * A count that no layout can go under. Between two clamps the moment reaches p L2 / 16 somewhere and the shear p L / 2 at one end,
 * whatever the rest of the beam does, p being the least pressure in the gap; and all clamps together must hold the whole load.
 */
export function leastClamps(task: ClampTask): number {
  const { module, firstMax, topMax, largestGap } = task.spacing;
  const topFrom = task.formHeight - topMax;
  const { limit, liquidDepth, pourHeight } = task.envelope;
  const wholeLoad = limit * (pourHeight - liquidDepth / 2) * task.side;
  let count = 1;
  for (let at: number = firstMax; at < topFrom; count += 1) {
    let gap: number = largestGap;
    while (gap > module && !mayStand(task, at, gap)) gap -= module;
    at += gap;
  }
  return Math.max(2, count, Math.ceil(wholeLoad / task.sideCapacity - 1e-9));
}

/**
 * Clamp heights on the module, few and even, each layout proved on the exact continuous beam.
 *
 * A clamp's reaction depends on the whole layout, so no gap-by-gap search is exact. The tabulated span rule at a common scale gives, for
 * each count from few to many, the evenest layout that rule can make; the first that passes every exact check is taken. That is the
 * fewest of this family, not of all layouts; `lowerBound` comes from conditions every layout must meet, and only where the two agree is
 * the count proven the fewest.
 */
export function clampLayout(task: ClampTask): Result<ClampAnswer, Refusal> {
  const rule = gapRule(task);
  const lowerBound = leastClamps(task);
  const most = 2 + Math.floor(task.formHeight / task.spacing.smallestGap);
  let leastUse = Infinity;
  for (let count = lowerBound; count <= most; count += 1) {
    const heights = evenest(task, rule, count);
    if (heights === null || heights.length !== count) continue;
    const layout = heights.map(mm);
    const demands = clampDemands(task.envelope, task.formHeight, layout, task.backing.depth);
    if (!demands.ok) return demands;
    const use = layoutUse(task, demands.value);
    if (use <= 1) return ok({ heights: layout, demands: demands.value, use, lowerBound });
    leastUse = Math.min(leastUse, use);
  }
  return fail(noLayout(task, leastUse));
}

function noLayout(task: ClampTask, leastUse: number): Refusal {
  const { module, smallestGap, largestGap, firstMin, firstMax, topMax } = task.spacing;
  const met = `gaps ${smallestGap} to ${largestGap} mm, first clamp ${firstMin} to ${firstMax} mm, top clamp within ${topMax} mm of a form of ${task.formHeight} mm, all on ${module} mm`;
  return refusal({
    limit: "use of backing and clamps at the best layout tried",
    given: Number.isFinite(leastUse) ? Math.round(leastUse * 1000) / 1000 : "no layout",
    allowed: `up to 1 with ${met}`,
    source: "The company's own clamp spacing rule; checks as listed",
    message: `The pressure at the foot is ${task.envelope.limit.toFixed(1)} kPa. Slow the pour, use a stronger clamp or backing timber, or allow closer clamps.`,
  });
}
