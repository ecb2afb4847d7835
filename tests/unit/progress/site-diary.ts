import { uuidv7From } from "#lib/kernel/ids.ts";
import { foldColumn, type ColumnState } from "#lib/trade/progress/column-state.ts";
import { judge, type Verdict } from "#lib/trade/progress/judge.ts";
import { USUAL_GATES, type ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import type { Fact, ProposedEvent, Remark, SiteEvent } from "#lib/trade/progress/site-event.ts";

export const RULE: ProgressRule = {
  plumbing: "before-pour",
  stripAfterHours: 18,
  requiredGates: USUAL_GATES,
  backdateMinutes: 30,
  startsAt: "2031-03-01T00:00:00Z",
};

/** Monday 3 March 2031 at a time of day, or days later: `at("07:30")`, `at("06:10", 1)`. */
export const at = (time: string, daysLater = 0): string =>
  new Date(Date.parse(`2031-03-03T${time}:00Z`) + daysLater * 86_400_000).toISOString();

type Told = Partial<Pick<SiteEvent, "id" | "by" | "reason" | "arrivedAt" | "standing">>;
let made = 0;

/** An id made by a device at this instant; ids made later sort later even within one millisecond. */
export function idMadeAt(instant: string): string {
  made += 1;
  return uuidv7From(Date.parse(instant), Uint8Array.of(made >> 16, made >> 8, made, 0, 0, 0, 0, 0, 0, made));
}

export function proposal(happenedAt: string, what: Fact | Remark, told: Told = {}): ProposedEvent {
  return {
    id: told.id ?? idMadeAt(happenedAt),
    columnId: "column-1",
    happenedAt,
    by: told.by ?? "ana",
    reason: told.reason ?? null,
    ...what,
  };
}

export function event(happenedAt: string, what: Fact | Remark, told: Told = {}): SiteEvent {
  const seq = (made += 1);
  return {
    ...proposal(happenedAt, what, told),
    seq,
    arrivedAt: told.arrivedAt ?? happenedAt,
    standing: told.standing ?? "accepted",
  };
}

export const fold = (events: readonly SiteEvent[], rule: Partial<ProgressRule> = {}): ColumnState =>
  foldColumn(events, { ...RULE, ...rule });

/** The verdict on something told at once, as it happens, unless `arrivedAt` says otherwise. */
export const verdictOn = (
  events: readonly SiteEvent[],
  proposed: ProposedEvent,
  { rule = {}, arrivedAt = proposed.happenedAt }: { rule?: Partial<ProgressRule>; arrivedAt?: string } = {},
): Verdict => judge(fold(events, rule), proposed, { ...RULE, ...rule }, arrivedAt);

/** A column poured by the book at 10:00 on the Monday. */
export const pouredByTheBook = (): SiteEvent[] => [
  event(at("06:30"), { kind: "stage-reached", stage: "cut" }),
  event(at("07:00"), { kind: "stage-reached", stage: "stood" }),
  event(at("08:00"), { kind: "stage-reached", stage: "clamped" }),
  event(at("08:40"), { kind: "stage-reached", stage: "plumbed" }),
  event(at("09:00"), { kind: "gate-released", gate: "pre-pour released" }),
  event(at("10:00"), { kind: "stage-reached", stage: "poured" }),
];
