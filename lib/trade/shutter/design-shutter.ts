import { kN, kg, m, mm } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { timberCapacity } from "#lib/trade/engineering/backing/timber-capacity.ts";
import type { TimberCapacity } from "#lib/trade/engineering/backing/timber-capacity.ts";
import { clampLayout, DESIGN_EFFORT } from "#lib/trade/engineering/clamps/clamp-layout.ts";
import type { ClampAnswer } from "#lib/trade/engineering/clamps/clamp-layout.ts";
import type { ClampSides } from "#lib/trade/engineering/clamps/clamp-capacity.ts";
import { clampChecks, reactionAllowed } from "#lib/trade/engineering/clamps/clamp-strength.ts";
import type { ClampCheck } from "#lib/trade/engineering/clamps/clamp-strength.ts";
import { beamBound, countBound, latticeSums } from "#lib/trade/engineering/clamps/count-bound.ts";
import type { LoadSums } from "#lib/trade/engineering/clamps/load-sums.ts";
import type { PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import { pressureEnvelope } from "#lib/trade/engineering/pressure-envelope.ts";
import { refusal } from "#lib/trade/engineering/working.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { boxPlan } from "./box-plan.ts";
import { cuttingList } from "./cutting-list.ts";
import { clampBarsUp, faceElevation } from "./elevations.ts";
import { isAcross, laid, outsideBacking } from "./face-geometry.ts";
import type { Side } from "./face-geometry.ts";
import { pairChecks, sizePair } from "./face-strength.ts";
import type { PairStrength } from "./face-strength.ts";
import { CAUTIONS, quantities } from "./form-set.ts";
import type { ClampLayout, FormSet, ShutterInput, ShutterRefusal, ShutterRefusalKind } from "./form-set.ts";
import { layOutPanel, plyRows } from "./panels.ts";
import { FACES, faultIn, outOfBounds } from "./shutter-rule.ts";
import type { ClampKind } from "./shutter-rule.ts";
import { boxWarnings, boxWorking } from "./box-notes.ts";

const SMALLEST_SIDE = 100;
const LARGEST_SIDE = 3000;
const TALLEST_FORM = 12_000;
/** Timbers that may be added to a pair of faces over what its ply needs, to bring the clamps within their rule. */
const EXTRA_TIMBERS = 4;

type Answer<T> = Result<T, ShutterRefusal>;
/** What stays the same while timbers and clamps are chosen. */
type Job = { readonly section: Side; readonly input: ShutterInput; readonly envelope: PressureEnvelope; readonly timber: TimberCapacity; readonly kinds: readonly ClampKind[]; readonly sums: LoadSums };
type Strengths = { readonly across: PairStrength; readonly along: PairStrength };
export type Clamped = { readonly kind: ClampKind; readonly clamp: readonly ClampCheck[]; readonly answer: ClampAnswer };

const refuse = (kind: ShutterRefusalKind, input: ShutterInput, why: Refusal): { ok: false; failure: ShutterRefusal } =>
  fail({ kind, ...why, quantities: input.formHeight > 0 ? quantities(input.section, input.formHeight) : null });

function invalid(section: Side, input: ShutterInput): Refusal | null {
  const size = outOfBounds([
    ["column width (mm)", section.width, SMALLEST_SIDE, LARGEST_SIDE],
    ["column depth (mm)", section.depth, SMALLEST_SIDE, LARGEST_SIDE],
    ["form height (mm)", input.formHeight, 300, TALLEST_FORM],
  ]);
  const fault = size ?? faultIn(input.rule);
  return fault === null ? null : refusal({ ...fault, source: "input", message: "Correct the column or the shutter rule." });
}

/**
 * The form set of one column: panels, backing, clamps, their drawing and their proof, from explicit inputs only.
 * Either every check passes or there is no form set but a refusal that names the limit.
 */
export function designShutter(input: ShutterInput): Answer<FormSet> {
  const { section, rule } = input;
  if (section.shape === "round")
    return refuse("round-section", input, refusal({ limit: "section", given: `round, ${section.diameter} mm`, allowed: "rectangular or square", source: "common practice, no source", message: "A box of timber panels and clamps does not serve a round column: it needs a round form. Area and volume are given." }));
  const wrong = invalid(section, input);
  if (wrong !== null) return refuse("invalid-input", input, wrong);
  const largestSide = mm(Math.max(section.width, section.depth));
  const envelope = pressureEnvelope(input.pour, { height: input.formHeight, largestSide });
  if (!envelope.ok) return refuse("pressure-limit", input, envelope.failure);
  const { breadth, depth } = laid(rule.backing);
  const timber = timberCapacity({ ...rule.backing, breadth, depth });
  if (!timber.ok) return refuse("invalid-input", input, timber.failure);
  const kinds = fittingKinds(section, input);
  if (!kinds.ok) return refuse("no-clamp-fits", input, kinds.failure);
  const sums = latticeSums({ envelope: envelope.value, formHeight: input.formHeight, spacing: rule.clampSpacing });
  return settle({ section, input, envelope: envelope.value, timber: timber.value, kinds: kinds.value, sums });
}

/** The lighter first, then by name, so that the same input always gives the same answer. */
function fittingKinds(section: Side, input: ShutterInput): Result<readonly ClampKind[], Refusal> {
  const { width, depth } = outsideBacking(section, input.rule);
  const fits = (kind: ClampKind) => Math.min(width, depth) >= kind.minSize && Math.max(width, depth) <= kind.maxSize && kind.sideCapacity > 0;
  const kinds = input.clampKinds.filter(fits).sort((a, b) => a.weight - b.weight || naturalOrder(a.id, b.id));
  if (kinds.length > 0) return ok(kinds);
  const ranges = input.clampKinds.map((kind) => `${kind.name} ${kind.minSize} to ${kind.maxSize} mm`).join(", ");
  return fail(refusal({ limit: "size over the backing timbers (mm)", given: `${width} × ${depth}`, allowed: ranges === "" ? "no clamp kinds are kept" : ranges, source: "Sizes as the hirer states them", message: "No clamp reaches over both directions. Add a clamp kind, or lay the timbers the other way." }));
}

/** Adds a timber to the pair whose timbers work hardest until some clamp kind gives a layout. */
function settle(job: Job): Answer<FormSet> {
  const { section, input, envelope } = job;
  let least = { across: 2, along: 2 };
  let lastFailure: Refusal | null = null;
  for (let extra = 0; extra <= EXTRA_TIMBERS; extra += 1) {
    const across = sizePair(section, input.rule, envelope, "A-C", least.across);
    const along = sizePair(section, input.rule, envelope, "B-D", least.along);
    const tooLittle = !across.ok ? across : !along.ok ? along : null;
    if (tooLittle !== null) return lastFailure === null ? refuse("ply-span", input, tooLittle.failure) : refuse("no-clamp-layout", input, lastFailure);
    if (!across.ok || !along.ok) break;
    const strengths = { across: across.value, along: along.value };
    const clamped = bestKind(job, strengths);
    if (clamped.ok) return ok(assemble(job, strengths, clamped.value));
    lastFailure = clamped.failure;
    const more = across.value.share >= along.value.share ? "across" : "along";
    least = { across: across.value.timberCount, along: along.value.timberCount };
    least[more] += 1;
  }
  return refuse("no-clamp-layout", input, lastFailure ?? refusal({ limit: "clamp kinds", given: 0, allowed: "at least one", source: "input", message: "No clamp kind was tried." }));
}

/** Fewest clamps, then the first kind that does with them. */
function bestKind({ section, input, envelope, timber, kinds, sums }: Job, strengths: Strengths): Result<Clamped, Refusal> {
  let best: Clamped | null = null;
  let failure: Refusal | null = null;
  const sides = clampSides(section, input.rule);
  const given = { envelope, formHeight: input.formHeight, share: m(Math.max(strengths.across.share, strengths.along.share)), backing: timber, loadFactor: 1, deflectionRatio: input.rule.deflectionRatio, spacing: input.rule.clampSpacing };
  const bearing = beamBound(given, sums);
  for (const kind of kinds) {
    const clamp = clampChecks(kind, sides);
    if (!clamp.ok) {
      failure = clamp.failure;
      continue;
    }
    const task = { ...given, clampLimit: reactionAllowed(clamp.value) };
    const bound = countBound(task, bearing);
    if (best !== null && bound.least >= best.answer.heights.length) continue;
    const answer = clampLayout(task, DESIGN_EFFORT, bound);
    if (!answer.ok) failure = answer.failure;
    else if (best === null || answer.value.heights.length < best.answer.heights.length) best = { kind, clamp: clamp.value, answer: answer.value };
  }
  if (best !== null) return ok(best);
  return fail(failure ?? refusal({ limit: "clamp kinds", given: 0, allowed: "at least one", source: "input", message: "No clamp kind fits." }));
}

/** The wedges stand at the outside of the backing timbers round the corner. */
function clampSides(section: Side, rule: ShutterInput["rule"]): ClampSides {
  const outside = outsideBacking(section, rule);
  return { across: { side: section.width, wedgeSpan: outside.width }, along: { side: section.depth, wedgeSpan: outside.depth } };
}

function clampsOf(clamped: Clamped, strengths: Strengths): ClampLayout {
  const { heights, demands, lowerBound } = clamped.answer;
  const provenFewest = heights.length === lowerBound;
  const allowed = reactionAllowed(clamped.clamp);
  return {
    kind: clamped.kind,
    heights,
    forces: heights.map((height, index) => {
      const reaction = demands.reactions[index] ?? 0;
      return { height, facesAC: kN(reaction * strengths.across.side), facesBD: kN(reaction * strengths.along.side), utilisation: reaction / allowed };
    }),
    lowerBound,
    provenFewest,
    reason: provenFewest
      ? `${heights.length} clamps: no layout within the rule can do with fewer.`
      : `${heights.length} clamps: the fewest found; fewer than ${lowerBound} is impossible, between the two is not ruled out.`,
  };
}

function assemble({ section, input, envelope, timber }: Job, strengths: Strengths, clamped: Clamped): FormSet {
  const { rule, formHeight } = input;
  const { kind, answer } = clamped;
  const rows = plyRows(formHeight, rule.ply.sheetLength);
  const layouts = FACES.map((face) => {
    const pair = isAcross(face) ? "across" : "along";
    return layOutPanel(section, rule, formHeight, face, strengths[pair].timberCount, rows[pair]);
  });
  const pourHeight = input.pour.pourHeight ?? formHeight;
  const panels = layouts.map((layout) => layout.panel);
  const bars = clampBarsUp(kind, answer.heights);
  const checks = [strengths.across, strengths.along].flatMap((pair) => pairChecks(pair, rule, timber, answer.demands, clamped));
  return {
    section: { shape: "rectangular", width: section.width, depth: section.depth },
    formHeight,
    pourHeight,
    joint: rule.joint,
    overPair: rule.joint === "two-over" ? rule.overPair : null,
    panels,
    cutting: cuttingList(layouts, rule, formHeight),
    clamps: clampsOf(clamped, strengths),
    pressure: envelope,
    checks,
    quantities: quantities(input.section, formHeight),
    weight: kg(panels.reduce((sum, panel) => sum + panel.weight, 0)),
    plan: boxPlan(section, rule, layouts, kind),
    elevations: layouts.map((layout) => faceElevation(layout, rule, bars, pourHeight)),
    warnings: boxWarnings(input, layouts, kind, checks, pourHeight),
    cautions: CAUTIONS,
    working: boxWorking(rule, envelope, timber, strengths, clamped, panels),
  };
}
