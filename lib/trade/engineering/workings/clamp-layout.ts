import { kPa, mm } from "#lib/kernel/units.ts";
import type { DegreesCelsius, Metres, Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { BackingTimberInput } from "../backing/timber-choice.ts";
import type { ClampCapacity, ClampSides } from "../clamps/clamp-capacity.ts";
import { clampDemands } from "../clamps/clamp-demands.ts";
import { clampLayout, THOROUGH_EFFORT } from "../clamps/clamp-layout.ts";
import type { ClampSpacing } from "../clamps/clamp-spacing.ts";
import { CLAMP_SOURCE, clampChecks, reactionAllowed } from "../clamps/clamp-strength.ts";
import { checkLayout, leaveOneOut } from "../clamps/layout-check.ts";
import type { CheckedLayout, ClampForce, LayoutCheck, LeftOut } from "../clamps/layout-check.ts";
import { layoutUse, limitsOf } from "../clamps/layout-task.ts";
import type { LayoutTask } from "../clamps/layout-task.ts";
import { highestLimit, highestRiseRate } from "../clamps/rise-rate.ts";
import type { RiseRateLine } from "../clamps/rise-rate.ts";
import type { PressureEnvelope } from "../pour-conditions.ts";
import { pressureEnvelope } from "../pressure-envelope.ts";
import { loadFactor } from "../safety-format.ts";
import type { SafetyFormat } from "../safety-format.ts";
import { refusal, term } from "../working.ts";
import type { Refusal, Working } from "../working.ts";
import { timberInFormat } from "./backing.ts";
import type { PressureInput } from "./pressure.ts";

export type ClampLayoutInput = {
  readonly pressure: PressureInput;
  readonly format: SafetyFormat;
  readonly timber: BackingTimberInput;
  /** Of the face that the hardest-worked backing timber carries. */
  readonly share: Metres;
  readonly sides: ClampSides;
  readonly clamp: ClampCapacity;
  /** 270 stands for span / 270. */
  readonly deflectionRatio: number;
  /** fewest: heights are found. measured: heights as they stand on site are checked. */
  readonly layout: { readonly kind: "fewest"; readonly spacing: ClampSpacing } | { readonly kind: "measured"; readonly heights: readonly Millimetres[] };
  /** Concrete temperatures for which the highest rise rate is wanted; empty for none. */
  readonly riseRateTemperatures: readonly DegreesCelsius[];
};

export type ClampLayoutAnswer = {
  readonly heights: readonly Millimetres[];
  readonly passes: boolean;
  /** Only for layouts that were found: no layout can have fewer than `lowerBound`. */
  readonly fewest: { readonly proven: boolean; readonly lowerBound: number } | null;
  readonly checks: readonly LayoutCheck[];
  readonly forces: readonly ClampForce[];
  readonly leftOut: readonly LeftOut[];
  readonly riseRates: readonly RiseRateLine[];
  readonly envelope: PressureEnvelope;
  readonly working: readonly Working[];
};

export type ClampLayoutWorking = (input: ClampLayoutInput) => Result<ClampLayoutAnswer, Refusal>;

type Bound = readonly [string, number, number, number];
const spacingBounds = (spacing: ClampSpacing): readonly Bound[] => [
  ["clamp module (mm)", spacing.module, 1, 300],
  ["first clamp, lowest (mm)", spacing.firstMin, 0, spacing.firstMax],
  ["first clamp, highest (mm)", spacing.firstMax, spacing.module, 1000],
  ["top clamp from the top (mm)", spacing.topMax, 1, 2000],
  ["smallest clamp gap (mm)", spacing.smallestGap, Math.max(50, spacing.module), spacing.largestGap],
  ["largest clamp gap (mm)", spacing.largestGap, spacing.module, 3000],
];

function invalid(input: ClampLayoutInput): Refusal | null {
  const { layout, pressure } = input;
  const heights = layout.kind === "measured" ? layout.heights : [];
  const bounds: readonly Bound[] = [
    ["form height (mm)", pressure.form.height, 300, 12_000],
    ["share of the face (m)", input.share, 0.01, 3],
    ["deflection ratio", input.deflectionRatio, 50, 2000],
    ["temperatures for the rise rate", input.riseRateTemperatures.length, 0, 20],
    ...(layout.kind === "fewest" ? spacingBounds(layout.spacing) : ([["clamps", heights.length, 2, 60]] as const)),
    ...heights.map((height, index): Bound => [`height of clamp ${index + 1} (mm)`, height, index === 0 ? 0 : (heights[index - 1] ?? 0) + 1, pressure.form.height]),
  ];
  const broken = bounds.find(([, given, least, most]) => !(given >= least && given <= most));
  if (broken === undefined) return null;
  const [limit, given, least, most] = broken;
  return refusal({ limit, given, allowed: `${least} to ${most}`, source: "input", message: "Correct the layout." });
}

function riseRatesOf(input: ClampLayoutInput, task: LayoutTask, heights: readonly Millimetres[]): readonly RiseRateLine[] {
  if (input.riseRateTemperatures.length === 0) return [];
  const limits = limitsOf(task);
  const { pour, form } = input.pressure;
  const use = (envelope: PressureEnvelope) => {
    const demands = clampDemands(envelope, task.formHeight, heights, task.backing.depth);
    return demands.ok ? layoutUse(limits, demands.value) : Infinity;
  };
  const head = kPa(pour.concreteDensity * task.envelope.pourHeight);
  // The full head, and the pump's share on it, come at any rate: the layout stands or falls by that one line.
  const limit = pour.method === "full-head" ? kPa(use(task.envelope) <= 1 ? head : 0) : highestLimit(task.envelope, pour.concreteDensity, use);
  return input.riseRateTemperatures.map((temperature) => highestRiseRate(pour, form, temperature, limit, head));
}

function workingOf(input: ClampLayoutInput, task: LayoutTask, heights: readonly Millimetres[], { checks }: CheckedLayout): Working {
  return {
    title: `Clamps and backing, ${input.format.kind} format`,
    inputs: [
      term("clamp heights", heights.join(", "), "mm"), term("timber's share of the face", input.share, "m"), term("load factor on strength", task.loadFactor, ""),
      term("sides", `${input.sides.across.side} × ${input.sides.along.side}`, "mm"), term("wedge spans", `${input.sides.across.wedgeSpan} and ${input.sides.along.wedgeSpan}`, "mm"), term("deflection limit L /", input.deflectionRatio, ""),
    ],
    formula: "continuous beam over the clamps under p(z); arm F (2 x - s) / 8; wedge F / 2",
    steps: checks.map((check) => term(`${check.element} ${check.what}${check.side === null ? "" : `, ${check.side}`}, ${Math.round(check.at)} mm up, of ${check.capacity.toPrecision(4)}`, check.demand, check.unit)),
    result: term("largest use", Math.max(...checks.map((check) => check.utilisation)), ""),
    source: `Elastic beam theory; shear at one depth: Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 153. ${CLAMP_SOURCE}; capacities as the hirer states them`,
  };
}

type Prepared = { readonly task: LayoutTask; readonly clamp: Parameters<typeof checkLayout>[1]; readonly working: readonly Working[] };

function prepare(input: ClampLayoutInput): Result<Prepared, Refusal> {
  const wrong = invalid(input);
  if (wrong !== null) return fail(wrong);
  const envelope = pressureEnvelope(input.pressure.pour, input.pressure.form);
  if (!envelope.ok) return envelope;
  if (envelope.value.withdrawn) return fail(refusal({ limit: "pressure method", given: envelope.value.edition, allowed: "a current edition", source: "Withdrawn editions are kept for comparison only", message: "Choose another method for a layout." }));
  const timber = timberInFormat(input.timber, input.format);
  if (!timber.ok) return timber;
  const factor = loadFactor(input.format, envelope.value.valueKind);
  if (!factor.ok) return factor;
  const clamp = clampChecks(input.clamp, input.sides);
  if (!clamp.ok) return clamp;
  const task = { envelope: envelope.value, formHeight: mm(input.pressure.form.height), share: input.share, backing: timber.value.capacity, clampLimit: reactionAllowed(clamp.value), loadFactor: factor.value, deflectionRatio: input.deflectionRatio };
  return ok({ task, clamp: clamp.value, working: [...envelope.value.working, timber.value.working] });
}

/**
 * Clamp heights found or checked, with every use, every force, what one clamp less would do, and how fast the pour may rise.
 *
 * Formula: `clampLayout` or the heights as measured, then `checkLayout`, `leaveOneOut`, `highestLimit` and `highestRiseRate`.
 * Parameters: input with form 300 to 12 000 [mm] high, share 0.01 to 3 [m], sides and wedge spans [mm], clamp data [kN], spacing or heights [mm],
 *   temperatures [degC], deflection ratio 50 to 2000 [-].
 * Result: heights [mm], checks with their use [-], forces [kN], rates [m/h] by temperature [degC], and the pressure line [m], [kPa].
 * Limits: refused outside those ranges, by the pressure method, by a withdrawn edition, by the safety format, and where no layout passes. Measured heights
 *   are taken as they are: a layout that fails is answered with its uses over 1.
 * Example: three clamps 1.3 m apart under 40 kPa all over, a side of 0.4 m: the middle one holds 1.25 x 40 x 1.3 x 0.4 = 26 kN.
 * Source: elastic beam theory; shear at one depth: Peurifoy and Oberlender, 4th ed. (2010), p. 153; pressure as of the method.
 */
export const clampLayoutWorking: ClampLayoutWorking = (input) => {
  const prepared = prepare(input);
  if (!prepared.ok) return prepared;
  const { task, clamp, working } = prepared.value;
  const found = input.layout.kind === "fewest" ? clampLayout({ ...task, spacing: input.layout.spacing }, THOROUGH_EFFORT) : null;
  if (found !== null && !found.ok) return found;
  const heights = input.layout.kind === "measured" ? input.layout.heights : (found?.value.heights ?? []);
  const checked = checkLayout(task, clamp, input.sides, heights);
  if (!checked.ok) return checked;
  const { checks, forces } = checked.value;
  return ok({
    heights,
    passes: checks.every((check) => check.utilisation <= 1 + 1e-9),
    fewest: found === null ? null : { proven: found.value.lowerBound === heights.length, lowerBound: found.value.lowerBound },
    checks,
    forces,
    leftOut: leaveOneOut(task, clamp, input.sides, heights),
    riseRates: riseRatesOf(input, task, heights),
    envelope: task.envelope,
    working: [...working, workingOf(input, task, heights, checked.value)],
  });
};
