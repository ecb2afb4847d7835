import { kN, mm } from "#lib/kernel/units.ts";
import type { Kilonewtons, Millimetres } from "#lib/kernel/units.ts";
import { ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { Refusal } from "../working.ts";
import { clampDemands } from "./clamp-demands.ts";
import type { ClampDemands } from "./clamp-demands.ts";
import type { ClampSides } from "./clamp-capacity.ts";
import type { ClampCheck } from "./clamp-strength.ts";
import type { LayoutTask } from "./layout-task.ts";

export type LayoutElement = "backing" | "clamp" | "arm" | "wedge";
export type LayoutCheck = {
  readonly element: LayoutElement;
  readonly what: "bending" | "shear" | "deflection" | "force";
  /** Which side of the column; null for the backing, whose hardest-worked timber counts. */
  readonly side: keyof ClampSides | null;
  readonly demand: number;
  readonly capacity: number;
  readonly unit: string;
  readonly utilisation: number;
  /** Above the foot of the form. */
  readonly at: Millimetres;
};

export type ClampForce = {
  readonly height: Millimetres;
  /** What each side of the column puts on this clamp. */
  readonly across: Kilonewtons;
  readonly along: Kilonewtons;
  /** The hardest-worked check of this clamp. */
  readonly utilisation: number;
};

/** The layout without one of its clamps. */
export type LeftOut = { readonly height: Millimetres; readonly passes: boolean; readonly utilisation: number; readonly worst: LayoutElement };
export type CheckedLayout = { readonly demands: ClampDemands; readonly checks: readonly LayoutCheck[]; readonly forces: readonly ClampForce[] };

function checksOf(task: LayoutTask, demands: ClampDemands, clamp: readonly ClampCheck[]): readonly LayoutCheck[] {
  const { backing, share, loadFactor, deflectionRatio } = task;
  const { moment, shear, deflectionOverSpan: bend, largestReaction } = demands;
  const strength = share * loadFactor;
  const check = (element: LayoutElement, what: LayoutCheck["what"], side: LayoutCheck["side"], demand: number, capacity: number, unit: string, at: Millimetres): LayoutCheck => ({ element, what, side, demand, capacity, unit, utilisation: demand / capacity, at });
  return [
    check("backing", "bending", null, moment.value * strength, backing.moment, "kN.m", moment.at),
    check("backing", "shear", null, shear.value * strength, backing.shear, "kN", shear.at),
    check("backing", "deflection", null, (1000 * bend.value * share) / backing.stiffness, 1000 / deflectionRatio, "mm/m", bend.at),
    ...clamp.map((one) => check(one.part, one.part === "arm" ? "bending" : "force", one.side, largestReaction.value * loadFactor * one.perReaction, one.capacity, one.unit, largestReaction.at)),
  ];
}

/**
 * Checks a layout of clamps as it stands: every element, and the force on every clamp.
 *
 * Formula: `clampDemands`, each demand over its capacity; strength under the load factor, deflection under the load as it is.
 * Parameters: task with capacities [kN.m], [kN], share [m]; clamp checks [kN] or [kN.m] per reaction; sides [mm]; heights [mm], ascending, two or more.
 * Result: demands [kN.m], [kN], [-] per metre of face, checks with their use [-] and height [mm], and each clamp's forces [kN].
 * Limits: those of `clampDemands`. Heights are taken as they are: the spacing rule is not asked.
 * Example: middle reaction 65 kN/m on a side of 0.4 m: 26 kN, 0.929 of a clamp of 28 kN.
 * Source: as of `clampDemands` and `clampChecks` (equations of equilibrium).
 */
export function checkLayout(task: LayoutTask, clamp: readonly ClampCheck[], sides: ClampSides, heights: readonly Millimetres[]): Result<CheckedLayout, Refusal> {
  const answer = clampDemands(task.envelope, task.formHeight, heights, task.backing.depth);
  if (!answer.ok) return answer;
  const demands = answer.value;
  const perReaction = Math.max(...clamp.map((check) => check.perReaction / check.capacity)) * task.loadFactor;
  const forces = heights.map((height, index) => {
    const reaction = demands.reactions[index] ?? kN(0);
    return { height, across: kN((reaction * sides.across.side) / 1000), along: kN((reaction * sides.along.side) / 1000), utilisation: reaction * perReaction };
  });
  return ok({ demands, checks: checksOf(task, demands, clamp), forces });
}

/**
 * What happens when one clamp is left out, for each clamp in turn.
 *
 * Formula: `checkLayout` of the layout without it; the largest use and the element that sets it.
 * Parameters: as of `checkLayout`, heights [mm], three or more.
 * Result: for each clamp its height [mm], whether the rest passes, the largest use [-] and where.
 * Limits: with two clamps neither can be left out: the answer is empty.
 * Example: two spans of 1.3 m become one of 2.6 m: the moment w L2 / 8 is four times as large.
 * Source: as of `checkLayout` (equations of equilibrium).
 */
export function leaveOneOut(task: LayoutTask, clamp: readonly ClampCheck[], sides: ClampSides, heights: readonly Millimetres[]): readonly LeftOut[] {
  if (heights.length < 3) return [];
  return heights.flatMap((height, index) => {
    const rest = checkLayout(task, clamp, sides, heights.filter((_, place) => place !== index));
    if (!rest.ok) return [];
    const worst = rest.value.checks.reduce((a, b) => (b.utilisation > a.utilisation ? b : a));
    return [{ height: mm(height), passes: worst.utilisation <= 1, utilisation: worst.utilisation, worst: worst.element }];
  });
}
