import { mm } from "#lib/kernel/units.ts";
import type { Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";
import { clampDemands } from "./clamp-demands.ts";
import type { ClampDemands } from "./clamp-demands.ts";
import { heightOf } from "./clamp-spacing.ts";
import { countBound } from "./count-bound.ts";
import type { CountBound, Lattice } from "./count-bound.ts";
import { searchCount } from "./count-search.ts";
import { evenLayout, gapRule } from "./even-layout.ts";
import { layoutUse } from "./layout-task.ts";
import type { SpacedTask } from "./layout-task.ts";

export type ClampAnswer = {
  readonly heights: readonly Millimetres[];
  readonly demands: ClampDemands;
  /** Largest of backing in bending, shear, deflection and of the clamp's checks; up to 1. */
  readonly use: number;
  /** No layout can have fewer. */
  readonly lowerBound: number;
};

/** Spans set by the search before it gives up on a proof: within a design run, and where one layout is asked for by itself: a fraction of a second. */
export const DESIGN_EFFORT = 3000;
export const THOROUGH_EFFORT = 300_000;
/** Judging a layout by the exact beam takes as long as setting so many spans, for every clamp of it. */
const JUDGED = 5;

/** More do not fit into the form. */
const mostClamps = ({ formHeight, spacing }: SpacedTask): number => 2 + Math.floor(formHeight / spacing.smallestGap);

type Passing = { readonly heights: readonly Millimetres[]; readonly demands: ClampDemands; readonly use: number };

function judged(task: SpacedTask, bound: CountBound, heights: readonly Millimetres[]): Passing | null {
  const demands = clampDemands(task.envelope, task.formHeight, heights, task.backing.depth);
  return demands.ok ? { heights, demands: demands.value, use: layoutUse(bound.limits, demands.value) } : null;
}

/** The held steps with up to `idle` further clamps between, below and above them, wherever the spacing rule is kept; the first that `takes`. */
function withIdle(steps: readonly number[], idle: number, lattice: Lattice, takes: (steps: readonly number[]) => boolean): boolean {
  const { firstFrom, firstTo, topFrom, top, gapFrom, gapTo } = lattice;
  const grow = (placed: readonly number[], next: number, left: number): boolean => {
    const last = placed[placed.length - 1];
    const [from, to] = last === undefined ? [firstFrom, firstTo] : [last + gapFrom, last + gapTo];
    const held = steps[next];
    if (held === undefined && last !== undefined && last >= topFrom && takes(placed)) return true;
    if (held !== undefined && held >= from && held <= to && grow([...placed, held], next + 1, left)) return true;
    for (let step = from; left > 0 && step <= Math.min(to, top, (held ?? top + 1) - gapFrom); step += 1) if (grow([...placed, step], next, left - 1)) return true;
    return false;
  };
  return grow([], 0, idle);
}

type Settled = { readonly passing: Passing | null; readonly least: number };

/** Tries every count that is not ruled out yet, from the fewest up to `below`, while effort is left. */
function settle(task: SpacedTask, bound: CountBound, below: number, effort: number): Settled {
  const left = { left: effort };
  for (let count = bound.least; count < below; count += 1) {
    let passing: Passing | null = null;
    const metres = (steps: readonly number[]) => steps.map((step) => heightOf(step, task.spacing.module));
    const answer = searchCount(bound, count, left, (held) => {
      // The clamps that hold are the whole beam: where they do not pass, no idle clamp helps.
      left.left -= JUDGED * count;
      if ((judged(task, bound, metres(held))?.use ?? Infinity) > 1) return false;
      return withIdle(held, count - held.length, bound.lattice, (steps) => {
        left.left -= JUDGED * count;
        const tried = left.left < 0 ? null : judged(task, bound, metres(steps));
        if (tried !== null && tried.use <= 1) passing = tried;
        return passing !== null || left.left < 0;
      }) && passing !== null;
    });
    if (answer === "found") return { passing, least: count };
    if (answer === "unsettled") return { passing: null, least: count };
  }
  return { passing: null, least: below };
}

/**
 * Fewest clamps on the module that pass every check, each layout judged by the exact continuous beam.
 *
 * A clamp's reaction depends on the whole layout, so no gap-by-gap rule is exact. First a good layout: the tabulated span rule at a common
 * scale gives for each count, from the bound up, the evenest layout it can make; the first that passes is kept. Then the proof: every smaller
 * count from the bound of `countBound` up is searched by `searchCount`, which visits all layouts of that count on the lattice except those
 * whose prefix already breaks a check whatever follows. A count it finds is taken; a count it runs through without finding is impossible. So
 * where the search ends by itself the count is the fewest there is; where its effort runs out, `lowerBound` stays under the count and the
 * layout is not called the fewest.
 *
 * Formula: the least count for which a layout has a use up to 1 by `clampDemands` and `layoutUse`.
 * Parameters: task with spacing [mm], share [m], capacities [kN.m], [kN], [kN.m2]; effort [-], spans the search may set; bound, of the same task.
 * Result: heights [mm], demands per metre of face [kN.m], [kN], [-], use [-], and the count that no layout can go under [-].
 * Limits: refused where no layout that was tried passes, with the least use found. The same task and effort always give the same layout.
 * Example: 40 kPa all over 1.5 m, a clamp that may take 45 kN/m, timber to spare, clamps from 150 mm: 60 kN/m asks for two, and two do.
 * Source: fewest supports of a continuous beam under a spacing rule; statics, search and bound are our own, with their proof at `searchCount`.
 */
export function clampLayout(task: SpacedTask, effort: number = DESIGN_EFFORT, bound: CountBound = countBound(task)): Result<ClampAnswer, Refusal> {
  const rule = gapRule(task);
  const most = mostClamps(task);
  let best: Passing | null = null;
  let leastUse = Infinity;
  for (let count = bound.least; count <= most && best === null; count += 1) {
    const heights = evenLayout(task, rule, count);
    const tried = heights === null || heights.length !== count ? null : judged(task, bound, heights.map(mm));
    if (tried === null) continue;
    if (tried.use <= 1) best = tried;
    leastUse = Math.min(leastUse, tried.use);
  }
  const { passing, least } = settle(task, bound, best?.heights.length ?? Math.min(most + 1, bound.least + 3), effort);
  const chosen = passing ?? best;
  return chosen === null ? fail(noLayout(task, leastUse)) : ok({ ...chosen, lowerBound: Math.min(least, chosen.heights.length) });
}

function noLayout(task: SpacedTask, leastUse: number): Refusal {
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
