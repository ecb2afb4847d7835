import { mm } from "#lib/kernel/units.ts";
import { spanCoefficients } from "../backing/span-coefficients.ts";
import { pressureAt } from "../pressure-envelope.ts";
import { limitsOf } from "./layout-task.ts";
import type { SpacedTask } from "./layout-task.ts";

/** Gaps longer than this multiple of the tabulated span never passed the beam; shorter ones are not worth trying. */
const LOOSEST = 1.45;
const TIGHTEST = 0.2;
const HALVINGS = 10;

export type GapRule = (pressure: number) => number;

/** Furthest span [mm] above a point by the tabulated coefficients, the pressure at the point taken over the whole span. */
export function gapRule(task: SpacedTask): GapRule {
  const { moment, shear, deflection } = spanCoefficients(3);
  const limits = limitsOf(task);
  const bending = Math.sqrt(limits.moment / moment);
  const sheared = limits.shear / shear;
  const bent = Math.cbrt(limits.bend / deflection);
  return (pressure) => 1000 * Math.min(bending / Math.sqrt(pressure), sheared / pressure + 2 * task.backing.depth, bent / Math.cbrt(pressure), limits.reaction / pressure);
}

const onModule = (height: number, module: number): number => Math.floor(height / module + 1e-9) * module;
const upToModule = (height: number, module: number): number => Math.ceil(height / module - 1e-9) * module;

/**
 * Goes up the form by the furthest gap the rule allows at `scale`. Pressure never rises with height, so a higher start reaches at
 * least as high: going furthest each time gives the fewest clamps under the rule. Null where a gap would be under the smallest.
 */
function walk(task: SpacedTask, rule: GapRule, scale: number): number[] | null {
  const { module, firstMin, firstMax, topMax, smallestGap, largestGap } = task.spacing;
  const topFrom = Math.max(0, task.formHeight - topMax);
  const highest = onModule(task.formHeight, module);
  const lowest = upToModule(firstMin, module);
  if (lowest > firstMax) return null;
  const first = Math.min(onModule(firstMax, module), Math.max(lowest, onModule(0.5 * scale * rule(pressureAt(task.envelope, mm(0))), module)));
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

/** The evenest layout of at most `count` clamps by the tabulated rule: the smallest scale that still needs no more. A good guess, no proof. */
export function evenLayout(task: SpacedTask, rule: GapRule, count: number): readonly number[] | null {
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
