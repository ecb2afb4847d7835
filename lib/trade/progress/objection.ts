import type { ColumnState } from "./column-state.ts";
import { finding, type Finding } from "./finding.ts";
import type { ProgressRule } from "./progress-rule.ts";
import { comesBefore, epochOf, isInstant, markOf, type Mark, type ProposedEvent, type ReadingTime } from "./site-event.ts";
import { placeOf, STAGES, type Stage } from "./stages.ts";

/** How far ahead a phone's clock may run. */
export const CLOCK_SKEW_MINUTES = 10;

/** Why a proposed event cannot be a true record at all, or null. A fact of the site is never refused for what it says. */
export function refusalOf(
  state: ColumnState,
  proposal: ProposedEvent,
  rule: ProgressRule,
  arrivedAt: string,
): Finding | null {
  return badTime(proposal.happenedAt, rule, arrivedAt) ?? badContent(state, proposal);
}

function badTime(happenedAt: string, { startsAt }: ProgressRule, arrivedAt: string): Finding | null {
  if (!isInstant(happenedAt)) return finding("time-unreadable", {});
  const ahead = (epochOf(happenedAt) - epochOf(arrivedAt)) / 60_000;
  if (ahead > CLOCK_SKEW_MINUTES)
    return finding("in-the-future", { minutes: Math.ceil(ahead), allowedMinutes: CLOCK_SKEW_MINUTES });
  return startsAt !== null && epochOf(happenedAt) < epochOf(startsAt) ? finding("before-project", { startsAt }) : null;
}

function badContent({ known, exceptions }: ColumnState, proposal: ProposedEvent): Finding | null {
  if (proposal.kind === "reading") {
    const { x, y } = proposal.offsets_mm;
    return Number.isFinite(x) && Number.isFinite(y) ? null : finding("offsets-unreadable", {});
  }
  if (proposal.kind !== "withdrawn" && proposal.kind !== "settled" && proposal.kind !== "acknowledged") return null;
  const target = known.find(({ id }) => id === proposal.eventId);
  if (target === undefined) return finding("unknown-event", {});
  if (target.fate === "withdrawn") return finding("already-withdrawn", {});
  if (proposal.kind === "settled") return target.fate === "queried" ? null : finding("not-queried", {});
  if (proposal.kind === "withdrawn") return null;
  return exceptions.some(({ eventId }) => eventId === target.id) ? null : finding("no-exception", {});
}

/**
 * What in the known state speaks against a proposed event, or null. Such an event is kept but waits to be settled.
 * Not contradictions: a stage ticked again by anyone, a stage whose later stage was ticked at an earlier site time,
 * and any news that only fills in what happened before.
 */
export function contradictionOf(state: ColumnState, proposal: ProposedEvent, rule: ProgressRule): Finding | null {
  const mark = markOf(proposal);
  switch (proposal.kind) {
    case "stage-reached":
      return wipedBySetBack(state, proposal.stage, mark) ?? outOfOrder(state, proposal.stage, mark, rule);
    case "set-back":
      return againstSetBack(state, proposal.to, mark);
    case "reading":
      return outOfTurn(state, proposal.when, mark);
    default:
      return null;
  }
}

/** A tick from before a going back would vanish unseen, though its sender did not know of it, nor the others of the tick. */
function wipedBySetBack({ setBacks }: ColumnState, stage: Stage, mark: Mark): Finding | null {
  const wiping = setBacks.find((back) => comesBefore(mark, back) && placeOf(stage) > placeOf(back.to));
  return wiping === undefined
    ? null
    : finding("before-set-back", { setBackAt: wiping.at, to: wiping.to ?? "nothing" });
}

function outOfOrder(state: ColumnState, stage: Stage, mark: Mark, rule: ProgressRule): Finding | null {
  const { poured, stripped } = state.reached;
  if (stage === "stripped") {
    if (poured === undefined) return finding("not-poured", {});
    return comesBefore(mark, poured) ? finding("before-pour", { pouredAt: poured.at }) : null;
  }
  if (stage !== "poured" || poured === undefined) return null;
  if (poured.implied)
    return stripped !== undefined && comesBefore(stripped, mark) ? laterWork("stripped", stripped.at) : null;
  // The strip time counts from the earliest pour told: nobody moves it forward alone.
  const minutes = (epochOf(poured.at) - epochOf(mark.at)) / 60_000;
  return minutes > rule.backdateMinutes
    ? finding("pour-time-differs", { pouredAt: poured.at, minutes: Math.round(minutes) })
    : null;
}

function againstSetBack(state: ColumnState, to: Stage | null, mark: Mark): Finding | null {
  if (to !== null && state.reached[to] === undefined) return finding("back-at-unreached", { to });
  for (const stage of STAGES.slice(placeOf(to) + 1)) {
    const last = state.reached[stage]?.last;
    if (last !== undefined && comesBefore(mark, last)) return laterWork(stage, last.at);
  }
  for (const back of state.setBacks)
    if (back.to !== null && placeOf(back.to) > placeOf(to) && comesBefore(mark, back)) return laterWork(back.to, back.at);
  return null;
}

const laterWork = (stage: Stage, reachedAt: string): Finding => finding("later-work-known", { stage, reachedAt });

function outOfTurn({ reached: { poured } }: ColumnState, when: ReadingTime, mark: Mark): Finding | null {
  const afterPour = poured !== undefined && !comesBefore(mark, poured);
  return afterPour === (when === "after-pour")
    ? null
    : finding("reading-out-of-turn", { when, pouredAt: poured?.at ?? "unknown" });
}
