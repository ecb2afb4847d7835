import { finding, type Finding } from "./finding.ts";
import { comesBefore, epochOf, type Mark } from "./site-event.ts";
import { GATES, placeOf, type Gate, type Plumbing, type Stage } from "./stages.ts";
import type { Standing } from "./standing.ts";

/** A project's rules for one column. The strip time comes from its formwork design, never from here. */
export type ProgressRule = {
  readonly plumbing: Plumbing;
  readonly stripAfterHours: number;
  readonly requiredGates: Readonly<Partial<Record<Stage, readonly Gate[]>>>;
  /** How long after it happened something may be entered without a reason. */
  readonly backdateMinutes: number;
  /** Nothing happens on site before this instant; null when not known. */
  readonly startsAt: string | null;
};

/** Common practice, no source: the pre-pour inspection is a hold point, and half an hour passes before a tick counts as late. */
export const USUAL_GATES: ProgressRule["requiredGates"] = { poured: ["pre-pour released"] };
export const USUAL_BACKDATE_MINUTES = 30;

const MS_PER_HOUR = 3_600_000;
const LATEST_EPOCH = 8.64e15;

/** The instant from which a column may be stripped, or null when its pour or its strip time is not known. */
export function stripFromOf(pouredAt: string | null, rule: Pick<ProgressRule, "stripAfterHours">): string | null {
  if (pouredAt === null || !(rule.stripAfterHours >= 0)) return null;
  const from = epochOf(pouredAt) + rule.stripAfterHours * MS_PER_HOUR;
  return Math.abs(from) <= LATEST_EPOCH ? new Date(from).toISOString() : null;
}

/** The pour somebody stated: one that is only implied by the strip has no time to count from. */
export function pouredAtOf(standing: Pick<Standing, "reached">): string | null {
  const pour = standing.reached.poured;
  return pour === undefined || pour.implied ? null : pour.at;
}

/** Gates the stage needs that nobody had released by then. */
export function missingGates(
  standing: Pick<Standing, "gates">,
  stage: Stage,
  mark: Pick<Mark, "eventId" | "at"> | null,
  rule: Pick<ProgressRule, "requiredGates">,
): readonly Gate[] {
  return GATES.filter((gate) => {
    if (!rule.requiredGates[stage]?.includes(gate)) return false;
    const release = standing.gates[gate];
    return release === undefined || (mark !== null && comesBefore(mark, release));
  });
}

function stripBreaches(standing: Pick<Standing, "reached">, mark: Mark, rule: ProgressRule): readonly Finding[] {
  const stripFrom = stripFromOf(pouredAtOf(standing), rule);
  if (stripFrom === null) return [finding("strip-age-unknown", {})];
  const missing = (epochOf(stripFrom) - epochOf(mark.at)) / MS_PER_HOUR;
  return missing > 0 ? [finding("strip-early", { hoursMissing: Math.ceil(missing * 100) / 100, stripFrom })] : [];
}

/** The rules broken by reaching these stages at this moment. */
export function stageBreaches(
  standing: Pick<Standing, "reached" | "gates" | "held">,
  stages: readonly Stage[],
  mark: Mark,
  rule: ProgressRule,
): readonly Finding[] {
  if (stages.length === 0) return [];
  const gates = stages.flatMap((stage) =>
    missingGates(standing, stage, mark, rule).map((gate) => finding("gate-missing", { gate, stage })),
  );
  const strip = stages.includes("stripped") ? stripBreaches(standing, mark, rule) : [];
  const { held } = standing;
  const hold = held !== null && comesBefore(held, mark) ? [finding("while-held", { heldAt: held.at })] : [];
  return [...gates, ...strip, ...hold];
}

/** Going back behind the pour means breaking out concrete. */
export function setBackBreaches(standing: Pick<Standing, "reached">, to: Stage | null): readonly Finding[] {
  const undoesPour = standing.reached.poured !== undefined && placeOf(to) < placeOf("poured");
  return undoesPour ? [finding("set-back-after-pour", { to: to ?? "nothing" })] : [];
}
