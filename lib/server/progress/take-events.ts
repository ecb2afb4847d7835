import "server-only";
import { can } from "#lib/access/permissions.ts";
import type { EventAnswer, RecordAnswer } from "#lib/contracts/progress.ts";
import { compact, foldColumn, type ColumnState } from "#lib/trade/progress/column-state.ts";
import { judge, unasked } from "#lib/trade/progress/judge.ts";
import type { ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import type { ProposedEvent, SiteEvent } from "#lib/trade/progress/site-event.ts";
import { letGearFollow } from "../gear/ticks/follow-ticks.ts";
import { takeNumbers, writeChange } from "../gate/change-line.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectHead, readRules } from "../projects/project-head.ts";
import { readProject } from "../projects/store.ts";
import { toProgressRule } from "./rule.ts";
import { addEvents, keepStates, listEventsOf, listLiveColumnIds } from "./store.ts";

const refused = (event: ProposedEvent, code: "unknown-column" | "id-used" | "owner-only"): EventAnswer => ({
  id: event.id, columnId: event.columnId, outcome: "refused", findings: [{ code, values: {} }],
});

/** Takes one batch through the columns it touches, one event after the other, each judged against what came before it. */
class Ledger {
  readonly added: SiteEvent[] = [];
  readonly answers: EventAnswer[] = [];
  readonly states = new Map<string, ColumnState>();
  private readonly events = new Map<string, SiteEvent[]>();

  constructor(
    private readonly rule: ProgressRule,
    private readonly arrivedAt: string,
    private readonly saved: boolean,
    known: readonly SiteEvent[],
    private seq: number,
  ) {
    for (const event of known) this.eventsOf(event.columnId).push(event);
  }

  private eventsOf(columnId: string): SiteEvent[] {
    const events = this.events.get(columnId) ?? [];
    this.events.set(columnId, events);
    return events;
  }

  take(proposal: ProposedEvent): void {
    const { id, columnId } = proposal;
    const events = this.eventsOf(columnId);
    const state = this.states.get(columnId) ?? foldColumn(events, this.rule);
    const verdict = judge(state, proposal, this.rule, this.arrivedAt);
    const final = this.saved ? unasked(verdict) : verdict;
    if (final.kind === "needs-reason") return this.answer(id, columnId, "needs-reason", final.asks);
    if (final.kind === "refuse") return this.answer(id, columnId, "refused", [final.because]);
    const standing = final.kind === "query" ? "queried" : "accepted";
    const event: SiteEvent = { ...proposal, seq: (this.seq += 1), arrivedAt: this.arrivedAt, standing };
    events.push(event);
    this.added.push(event);
    this.states.set(columnId, foldColumn(events, this.rule));
    if (final.kind === "query") return this.answer(id, columnId, "queried", [final.because]);
    this.answer(id, columnId, final.repeat ? "repeat" : "accepted", final.raises);
  }

  /** As it was answered when it came first: judged against what had come before it. */
  takeAgain(proposal: ProposedEvent, earlier: SiteEvent): void {
    const { id, columnId, kind } = proposal;
    const events = this.eventsOf(columnId);
    const first = events.find((event) => event.id === id);
    if (!first || earlier.columnId !== columnId || earlier.kind !== kind) return void this.answers.push(refused(proposal, "id-used"));
    const verdict = unasked(judge(foldColumn(events.filter(({ seq }) => seq < first.seq), this.rule), first, this.rule, first.arrivedAt));
    if (first.standing === "queried") return this.answer(id, columnId, "queried", verdict.kind === "query" ? [verdict.because] : []);
    const { repeat, raises } = verdict.kind === "accept" ? verdict : { repeat: false, raises: [] };
    this.answer(id, columnId, repeat ? "repeat" : "accepted", raises);
  }

  answer(id: string, columnId: string, outcome: EventAnswer["outcome"], findings: EventAnswer["findings"]): void {
    this.answers.push({ id, columnId, outcome, findings });
  }
}

type Given<Event = ProposedEvent> = Event extends ProposedEvent ? Omit<Event, "by"> : never;

/** Judges and keeps a batch as said by the scope's person; the same id twice gets the same answer, whoever asks again and however late. */
export async function takeEvents(scope: ProjectScope, events: readonly Given[], saved: boolean): Promise<RecordAnswer> {
  // Taking the numbers first holds every other writer of the project until this batch is judged and kept.
  const last = await takeNumbers(scope, events.length + 1);
  const project = await readProject(scope);
  const rules = readRules(project);
  const rule = toProgressRule(rules.progressRule, projectHead(project));
  const columnIds = [...new Set(events.map((event) => event.columnId))];
  const columns = await listLiveColumnIds(scope, columnIds);
  const known = await listEventsOf(scope, columnIds, events.map((event) => event.id));
  const byId = new Map(known.map((event) => [event.id, event]));
  const ledger = new Ledger(rule, scope.now, saved, known, last - events.length - 1);

  for (const input of events) {
    const event = { ...input, by: scope.member.id } as ProposedEvent;
    const earlier = byId.get(event.id) ?? ledger.added.find(({ id }) => id === event.id);
    if (earlier) ledger.takeAgain(event, earlier);
    else if (!columns.has(event.columnId)) ledger.answers.push(refused(event, "unknown-column"));
    else if (event.kind === "acknowledged" && !can(scope.member.role, "exception.acknowledge")) ledger.answers.push(refused(event, "owner-only"));
    else ledger.take(event);
  }
  return keep(scope, ledger, last, rules);
}

async function keep(scope: ProjectScope, ledger: Ledger, seq: number, rules: ReturnType<typeof readRules>): Promise<RecordAnswer> {
  const columns = [...ledger.states].map(([id, state]) => ({ id, ...compact(state) }));
  if (ledger.added.length > 0) {
    await addEvents(scope, ledger.added);
    await keepStates(scope, ledger.states);
    await letGearFollow(scope, ledger.states, rules);
    const detail = { events: ledger.added.length };
    await writeChange(scope, seq, { kind: "progress", detail, columnIds: columns.map((column) => column.id) });
  }
  return { seq, answers: ledger.answers, columns };
}
