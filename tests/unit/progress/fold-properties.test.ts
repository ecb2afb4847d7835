import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foldColumn, type ColumnState } from "#lib/trade/progress/column-state.ts";
import { judge } from "#lib/trade/progress/judge.ts";
import { next } from "#lib/trade/progress/next.ts";
import type { ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import type { Fact, ProposedEvent, Remark, SiteEvent } from "#lib/trade/progress/site-event.ts";
import { ALL_DONE, bitOf, CAUSES, GATES, hasDone, impliedBy, placeOf, STAGES, stageOf } from "#lib/trade/progress/stages.ts";
import { at, RULE } from "./site-diary.ts";

const rule: fc.Arbitrary<ProgressRule> = fc.record({
  plumbing: fc.constantFrom("before-pour", "during-pour"),
  stripAfterHours: fc.integer({ min: 0, max: 6 }),
  requiredGates: fc.constantFrom({}, RULE.requiredGates, { stood: [GATES[0], GATES[1]], stripped: [GATES[3]] }),
  backdateMinutes: fc.constant(30),
  startsAt: fc.constant(null),
});
const fact: fc.Arbitrary<Fact> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("stage-reached" as const), stage: fc.constantFrom(...STAGES) }) },
  fc.record({ kind: fc.constant("set-back" as const), to: fc.constantFrom(null, ...STAGES), cause: fc.constantFrom(...CAUSES) }),
  fc.record({ kind: fc.constantFrom("gate-released" as const, "gate-revoked" as const), gate: fc.constantFrom(...GATES) }),
  fc.record({
    kind: fc.constant("reading" as const),
    when: fc.constantFrom("before-pour" as const, "after-pour" as const),
    offsets_mm: fc.record({ x: fc.integer({ min: -30, max: 30 }), y: fc.integer({ min: -30, max: 30 }) }),
  }),
  fc.record({ kind: fc.constantFrom("held" as const, "hold-lifted" as const) }),
);
/** Few names, so that remarks hit events, themselves, each other and nothing. */
const name = fc.integer({ min: 0, max: 14 }).map((index) => `event-${index}`);
const remark: fc.Arbitrary<Remark> = fc.oneof(
  fc.record({ kind: fc.constantFrom("withdrawn" as const, "acknowledged" as const), eventId: name }),
  fc.record({ kind: fc.constant("settled" as const), eventId: name, stands: fc.boolean() }),
);
/** Whole half hours over a day, so that many things happen at the same minute. */
const moment = fc.integer({ min: 0, max: 47 }).map((half) => at(`${String(half >> 1).padStart(2, "0")}:${half % 2 === 0 ? "00" : "30"}`));
const told = (what: fc.Arbitrary<Fact | Remark>): fc.Arbitrary<ProposedEvent> =>
  fc.tuple(what, name, moment, fc.constantFrom("ana", "ben"), fc.option(fc.constant("because"))).map(
    ([content, id, happenedAt, by, reason]) => ({ ...content, id, columnId: "column-1", happenedAt, by, reason }),
  );
const diary = (what: fc.Arbitrary<Fact | Remark>, standing: readonly SiteEvent["standing"][]) =>
  fc
    .uniqueArray(fc.tuple(told(what), fc.constantFrom(...standing)), { selector: ([{ id }]) => id, maxLength: 15 })
    .map((entries) => entries.map(([event, how], seq): SiteEvent => ({ ...event, seq, arrivedAt: at("23:59"), standing: how })));
const hostile = diary(fc.oneof({ weight: 3, arbitrary: fact }, remark), ["accepted", "accepted", "queried"]);

/** All but the list of what arrived. */
const standingOf = (state: ColumnState): ColumnState => ({ ...state, known: [], lastSeq: 0 });

describe("the fold", () => {
  it("does not depend on the order of arrival", () => {
    fc.assert(
      fc.property(
        hostile.chain((events) => fc.tuple(fc.constant(events), fc.shuffledSubarray(events, { minLength: events.length }))),
        rule,
        ([events, shuffled], theRule) => {
          const arrived = shuffled.map((event, seq) => ({ ...event, seq }));
          expect(foldColumn(arrived, theRule)).toEqual(foldColumn(events, theRule));
        },
      ),
    );
  });

  it("is plain data that survives being stored", () => {
    fc.assert(
      fc.property(hostile, rule, (events, theRule) => {
        const state = foldColumn(events, theRule);
        expect(JSON.parse(JSON.stringify(state))).toEqual(state);
      }),
    );
  });

  it("withdrawing an event is never having had it", () => {
    fc.assert(
      fc.property(hostile, fc.nat(), rule, (events, pick, theRule) => {
        const gone = events[pick % Math.max(events.length, 1)];
        if (gone === undefined) return;
        const withdrawal: SiteEvent = { ...gone, kind: "withdrawn", eventId: gone.id, id: "withdrawal", seq: 99, standing: "accepted" };
        const without = events.filter(({ id }) => id !== gone.id);
        expect(standingOf(foldColumn([...events, withdrawal], theRule))).toEqual(standingOf(foldColumn(without, theRule)));
        const restored: SiteEvent = { ...withdrawal, id: "restored", eventId: "withdrawal", seq: 100 };
        expect(standingOf(foldColumn([...events, withdrawal, restored], theRule))).toEqual(standingOf(foldColumn(events, theRule)));
      }),
    );
  });

  it("the same id twice is the same event", () => {
    fc.assert(
      fc.property(hostile, rule, (events, theRule) => {
        const again = events.map((event) => ({ ...event, seq: event.seq + 50, happenedAt: at("12:34") }));
        expect({ ...foldColumn([...events, ...again], theRule), lastSeq: 0 }).toEqual({ ...foldColumn(events, theRule), lastSeq: 0 });
      }),
    );
  });

  it("never loses a stage unless the column is set back or something is withdrawn", () => {
    const onward = diary(fact.filter(({ kind }) => kind !== "set-back"), ["accepted"]);
    fc.assert(
      fc.property(onward, rule, (events, theRule) => {
        const masks = events.map((_, index) => foldColumn(events.slice(0, index + 1), theRule).done);
        masks.reduce((before, mask) => {
          expect(mask & before).toBe(before);
          return mask;
        }, 0);
      }),
    );
  });

  it("its mask, its stages and its furthest stage agree, and no implied stage is missing", () => {
    fc.assert(
      fc.property(hostile, rule, (events, theRule) => {
        const { done, reached, stage, flagged, held, queried } = foldColumn(events, theRule);
        expect(done).toBe(STAGES.filter((each) => reached[each] !== undefined).reduce((sum, each) => sum + bitOf(each), 0));
        expect(done).toBeLessThanOrEqual(ALL_DONE);
        expect(stage).toBe(stageOf(done));
        for (const each of STAGES.filter((one) => hasDone(done, one)))
          for (const before of impliedBy(each, theRule.plumbing)) expect(hasDone(done, before)).toBe(true);
        expect(flagged).toBe(held !== null || queried.length > 0);
      }),
    );
  });

  it("takes unreadable times, numbers and circles without throwing, and so do its readers", () => {
    const broken = hostile.map((events) =>
      events.map((event, index) => (index % 3 === 0 ? { ...event, happenedAt: "not a time", seq: Number.NaN } : event)),
    );
    fc.assert(
      fc.property(broken, told(fc.oneof(fact, remark)), rule, (events, proposed, theRule) => {
        const odd = { ...theRule, stripAfterHours: Number.MAX_VALUE };
        const state = foldColumn(events, odd);
        next(state, odd, at("12:00"));
        judge(state, proposed, odd, at("12:00"));
      }),
    );
  });
});

describe("an accepted event", () => {
  /** What the judge lets in, one after the other; queried ones wait. */
  const letIn = (proposals: readonly ProposedEvent[], theRule: ProgressRule): SiteEvent[] =>
    proposals.reduce<SiteEvent[]>((events, proposed, seq) => {
      const verdict = judge(foldColumn(events, theRule), { ...proposed, reason: "because" }, theRule, at("23:59"));
      if (verdict.kind !== "accept" && verdict.kind !== "query") return events;
      const standing = verdict.kind === "accept" ? "accepted" : "queried";
      return [...events, { ...proposed, reason: "because", seq, arrivedAt: at("23:59"), standing }];
    }, []);
  const proposals = fc.uniqueArray(told(fc.oneof({ weight: 4, arbitrary: fact }, remark)), { selector: ({ id }) => id, maxLength: 15 });

  it("shows: an accepted tick is reached, and an accepted set-back is where the column is", () => {
    fc.assert(
      fc.property(proposals, told(fact), rule, (earlier, last, theRule) => {
        const events = letIn(earlier, theRule);
        const proposed = { ...last, id: "last", reason: "because" };
        const verdict = judge(foldColumn(events, theRule), proposed, theRule, at("23:59"));
        if (verdict.kind !== "accept") return;
        const after = foldColumn([...events, { ...proposed, seq: 99, arrivedAt: at("23:59"), standing: "accepted" }], theRule);
        if (proposed.kind === "stage-reached") expect(after.reached[proposed.stage]).toBeDefined();
        if (proposed.kind === "set-back") expect(placeOf(after.stage)).toBe(placeOf(proposed.to));
      }),
      { numRuns: 1000 },
    );
  });

  it("never breaks a rule that the verdict did not raise, when told in the order it happened", () => {
    fc.assert(
      fc.property(proposals, rule, (unsorted, theRule) => {
        const facts = unsorted.filter(({ kind }) => kind !== "withdrawn" && kind !== "settled" && kind !== "acknowledged");
        const inOrder = facts.sort((a, b) => (a.happenedAt + a.id < b.happenedAt + b.id ? -1 : 1));
        const raised: string[] = [];
        inOrder.reduce<SiteEvent[]>((events, proposed, seq) => {
          const verdict = judge(foldColumn(events, theRule), { ...proposed, reason: "because" }, theRule, at("23:59"));
          if (verdict.kind !== "accept") return events;
          raised.push(...verdict.raises.map(({ code }) => `${proposed.id} ${code}`));
          const after = [...events, { ...proposed, reason: "because", seq, arrivedAt: at("23:59"), standing: "accepted" as const }];
          expect(foldColumn(after, theRule).exceptions.map(({ eventId, code }) => `${eventId} ${code}`)).toEqual(raised);
          return after;
        }, []);
      }),
    );
  });
});
