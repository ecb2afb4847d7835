import type { ColumnState } from "./column-state.ts";
import { finding, isBreach, type Finding } from "./finding.ts";
import { contradictionOf, refusalOf } from "./objection.ts";
import { setBackBreaches, stageBreaches, type ProgressRule } from "./progress-rule.ts";
import { comesBefore, epochOf, isRemark, madeAt, markOf, UNDO_SECONDS, type ProposedEvent } from "./site-event.ts";
import { placeOf, STAGES, type Gate, type Stage } from "./stages.ts";
import { newlyReached } from "./standing.ts";

/**
 * What becomes of a proposed event. `repeat` tells what was known already and does no harm; `raises` lists the rules it
 * breaks with a reason given, which the owner sees as exceptions. The same id again is answered before this is asked.
 */
export type Verdict =
  | {
      readonly kind: "accept";
      readonly repeat: boolean;
      readonly implied: readonly Stage[];
      readonly raises: readonly Finding[];
    }
  | { readonly kind: "needs-reason"; readonly asks: readonly Finding[]; readonly implied: readonly Stage[] }
  | { readonly kind: "query"; readonly because: Finding }
  | { readonly kind: "refuse"; readonly because: Finding };

export function judge(state: ColumnState, proposal: ProposedEvent, rule: ProgressRule, arrivedAt: string): Verdict {
  const malformed = refusalOf(state, proposal, rule, arrivedAt);
  if (malformed !== null) return { kind: "refuse", because: malformed };
  const contradiction = contradictionOf(state, proposal, rule);
  if (contradiction !== null) return { kind: "query", because: contradiction };

  const repeat = isRepeat(state, proposal);
  const added = addedStages(state, proposal, rule);
  const told = proposal.kind === "stage-reached" ? proposal.stage : null;
  const implied = added.filter((stage) => stage !== told && state.reached[stage] === undefined);
  const breaches = breachesOf(state, proposal, rule, added);
  const asks = [...breaches, ...backdating(proposal, rule, arrivedAt), ...(repeat ? [] : askedOf(state, proposal, rule))];
  const reasonGiven = proposal.reason !== null && proposal.reason.trim() !== "";
  if (asks.length > 0 && !reasonGiven) return { kind: "needs-reason", asks, implied };
  return { kind: "accept", repeat, implied, raises: breaches };
}

/**
 * The verdict when nobody can be asked any more, as when a phone sends what it saved hours ago: what breaks a rule
 * waits to be settled, and the settling brings the reason; a hold, a revoked gate or a withdrawal takes effect at once.
 */
export function unasked(verdict: Verdict): Verdict {
  if (verdict.kind !== "needs-reason") return verdict;
  const because = verdict.asks.find(
    (ask) => isBreach(ask) || ask.code === "backdated" || ask.code === "release-after-stage",
  );
  return because === undefined
    ? { kind: "accept", repeat: false, implied: verdict.implied, raises: [] }
    : { kind: "query", because };
}

function isRepeat(state: ColumnState, proposal: ProposedEvent): boolean {
  switch (proposal.kind) {
    case "stage-reached":
      return state.reached[proposal.stage] !== undefined;
    case "set-back":
      return placeOf(state.stage) <= placeOf(proposal.to);
    case "gate-released":
      return state.gates[proposal.gate] !== undefined;
    case "gate-revoked":
      return state.gates[proposal.gate] === undefined;
    case "held":
      return state.held !== null;
    case "hold-lifted":
      return state.held === null;
    case "acknowledged":
      return state.exceptions.every(({ eventId, acknowledged }) => acknowledged || eventId !== proposal.eventId);
    default:
      return false;
  }
}

const addedStages = (state: ColumnState, proposal: ProposedEvent, { plumbing }: ProgressRule): readonly Stage[] =>
  proposal.kind === "stage-reached" ? newlyReached(state, proposal.stage, markOf(proposal), plumbing) : [];

function breachesOf(
  state: ColumnState,
  proposal: ProposedEvent,
  rule: ProgressRule,
  added: readonly Stage[],
): readonly Finding[] {
  if (proposal.kind === "set-back") return setBackBreaches(state, proposal.to);
  return stageBreaches(state, added, markOf(proposal), rule);
}

/** Late is counted to when the device made the record, not to its arrival: a phone out of reach is not backdating. */
function backdating(proposal: ProposedEvent, rule: ProgressRule, arrivedAt: string): readonly Finding[] {
  if (isRemark(proposal.kind)) return [];
  const entered = Math.min(madeAt(proposal.id) ?? Infinity, epochOf(arrivedAt));
  const minutes = (entered - epochOf(proposal.happenedAt)) / 60_000;
  return minutes > rule.backdateMinutes
    ? [finding("backdated", { minutes: Math.floor(minutes), allowedMinutes: rule.backdateMinutes })]
    : [];
}

function askedOf(state: ColumnState, proposal: ProposedEvent, rule: ProgressRule): readonly Finding[] {
  switch (proposal.kind) {
    case "gate-released":
      return releasedTooLate(state, proposal, proposal.gate, rule);
    case "gate-revoked":
      return [finding("gate-revoked", { gate: proposal.gate })];
    case "held":
      return [finding("hold", {})];
    case "withdrawn":
      return isQuickUndo(state, proposal, proposal.eventId) ? [] : [finding("withdrawal", {})];
    case "settled":
      return proposal.stands ? [] : [finding("setting-aside", {})];
    default:
      return [];
  }
}

function releasedTooLate(
  { reached }: ColumnState,
  proposal: ProposedEvent,
  gate: Gate,
  { requiredGates }: ProgressRule,
): readonly Finding[] {
  const mark = markOf(proposal);
  return STAGES.flatMap((stage) => {
    const passed = requiredGates[stage]?.includes(gate) ? reached[stage] : undefined;
    return passed !== undefined && comesBefore(passed, mark)
      ? [finding("release-after-stage", { gate, stage, reachedAt: passed.at })]
      : [];
  });
}

/** Taken back at once by whoever did it: a wet screen or a gloved thumb needs no explaining. */
function isQuickUndo({ known }: ColumnState, proposal: ProposedEvent, eventId: string): boolean {
  const target = known.find(({ id }) => id === eventId);
  if (target === undefined || target.by !== proposal.by) return false;
  const since =
    (madeAt(proposal.id) ?? epochOf(proposal.happenedAt)) - (madeAt(target.id) ?? epochOf(target.happenedAt));
  return since >= 0 && since <= UNDO_SECONDS * 1000;
}
