import { mm } from "#lib/kernel/units.ts";
import { spanCoefficients } from "../backing/span-coefficients.ts";
import { pressureAt } from "../pressure-envelope.ts";
import { heightOf } from "./clamp-spacing.ts";
import { limitsOf } from "./layout-task.ts";
import type { SpacedTask } from "./layout-task.ts";

/** Gaps longer than this multiple of the tabulated span never passed the beam; shorter ones are not worth trying. */
const LOOSEST = 1.45;
const TIGHTEST = 0.2;
const HALVINGS = 10;

/** By steps of the module, from the foot of the form. */
export type GapRule = (step: number) => number;

/**
 * Furthest gap above a step of the module by the tabulated coefficients, the pressure at the step taken over the whole gap.
 *
 * Formula: least of (M / (c_M p))^(1/2), V / (c_V p) + 2 d, (EI / (c_d n p))^(1/3) and R / p, limits per metre of face by `limitsOf`.
 * Parameters: task with capacities [kN.m], [kN], [kN.m2], share [m] and clamp limit [kN/m]; the rule then takes a step [-], 0 or more.
 * Result: gap [mm]; no end to it where there is no pressure.
 * Limits: a guess to start from, since a clamp's reaction depends on the whole layout: every layout is judged by `clampDemands`.
 * Example: a clamp that may take 40 kN/m under 50 kPa, timber to spare: 800 mm.
 * Source: coefficients as of `spanCoefficients` (construction lectures and Peurifoy and Oberlender, 2010).
 */
export function gapRule(task: SpacedTask): GapRule {
  const { moment, shear, deflection } = spanCoefficients(3);
  const limits = limitsOf(task);
  const bending = Math.sqrt(limits.moment / moment);
  const sheared = limits.shear / shear;
  const bent = Math.cbrt(limits.bend / deflection);
  const gaps: number[] = [];
  return (step) => {
    const known = gaps[step];
    if (known !== undefined) return known;
    const pressure = pressureAt(task.envelope, mm(step * task.spacing.module));
    const gap = pressure > 0 ? 1000 * Math.min(bending / Math.sqrt(pressure), sheared / pressure + 2 * task.backing.depth, bent / Math.cbrt(pressure), limits.reaction / pressure) : Infinity;
    gaps[step] = gap;
    return gap;
  };
}

const stepsDown = (height: number, module: number): number => Math.floor(height / module + 1e-9);
const stepsUp = (height: number, module: number): number => Math.ceil(height / module - 1e-9);

/**
 * Goes up the form by the furthest gap the rule allows at `scale`, and tells how many clamps that took. Pressure never rises with height, so a
 * higher start reaches at least as high: going furthest each time gives the fewest clamps under the rule. 0 where a gap would be under the
 * smallest, or more than `most` clamps are needed.
 */
function walk(task: SpacedTask, rule: GapRule, scale: number, most: number, steps: number[]): number {
  const { module, firstMin, firstMax, topMax, smallestGap, largestGap } = task.spacing;
  const topFrom = Math.max(0, task.formHeight - topMax);
  const highest = stepsDown(task.formHeight, module);
  const lowest = stepsUp(firstMin, module);
  if (lowest > stepsDown(firstMax, module)) return 0;
  let at = Math.min(stepsDown(firstMax, module), Math.max(lowest, stepsDown(0.5 * scale * rule(0), module)));
  steps[0] = at;
  let count = 1;
  while (at * module < topFrom || count < 2) {
    const reach = stepsDown(at * module + Math.min(largestGap, scale * rule(at)), module);
    const next = stepsUp(at * module + smallestGap, module);
    if (count === most || reach < next || next > highest) return 0;
    at = reach * module >= topFrom ? Math.min(highest, Math.max(next, stepsUp(topFrom, module))) : reach;
    steps[count] = at;
    count += 1;
  }
  return count;
}

/**
 * The evenest layout of at most `count` clamps by the tabulated rule.
 *
 * Formula: the smallest scale on the gaps of `gapRule` that needs no more clamps, by ten halvings between 0.2 and 1.45.
 * Parameters: task with spacing [mm]; rule; count [-], 2 or more.
 * Result: heights [mm] on the module, ascending, or null where the rule finds none.
 * Limits: a good guess, no proof: that a null comes back does not mean that there is no layout.
 * Example: even 40 kPa and a gap rule of 800 mm: three clamps stand about 800 mm apart, four closer.
 * Source: bisection; spacing by the company's own rule, common practice, no source.
 */
export function evenLayout(task: SpacedTask, rule: GapRule, count: number): readonly number[] | null {
  let loose = LOOSEST;
  let tight = TIGHTEST;
  const steps: number[] = [];
  let found: number[] | null = null;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (loose + tight) / 2;
    const used = walk(task, rule, middle, count, steps);
    if (used > 0) {
      found = steps.slice(0, used);
      loose = middle;
    } else tight = middle;
  }
  return found === null ? null : found.map((step) => heightOf(step, task.spacing.module));
}
