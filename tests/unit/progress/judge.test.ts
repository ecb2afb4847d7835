import { describe, expect, it } from "vitest";
import { finding } from "#lib/trade/progress/finding.ts";
import { unasked } from "#lib/trade/progress/judge.ts";
import { at, event, idMadeAt, pouredByTheBook, proposal, verdictOn } from "./site-diary.ts";

const tick = (stage: "stood" | "clamped" | "plumbed" | "poured" | "stripped") =>
  ({ kind: "stage-reached", stage }) as const;
const accepted = { kind: "accept", repeat: false, implied: [], raises: [] };

describe("accepts", () => {
  it("the next stage, with nothing to say", () => {
    expect(verdictOn(pouredByTheBook().slice(0, 2), proposal(at("08:00"), tick("clamped")))).toEqual(accepted);
  });

  it("a skipped stage without a reason, naming what it implies", () => {
    expect(verdictOn([], proposal(at("08:00"), tick("clamped")))).toMatchObject({ kind: "accept", implied: ["cut", "stood"] });
  });

  it("the same stage ticked by a second person, as a harmless repeat", () => {
    const events = [event(at("07:00"), tick("stood"))];
    expect(verdictOn(events, proposal(at("07:20"), tick("stood"), { by: "ben" }))).toMatchObject({ kind: "accept", repeat: true });
  });

  it("a stage whose later stage somebody ticked earlier", () => {
    const events = [event(at("08:00"), tick("clamped"))];
    expect(verdictOn(events, proposal(at("08:10"), tick("stood"), { by: "ben" }))).toMatchObject({ kind: "accept", repeat: true });
  });

  it("an earlier stage that an offline phone sends after the later one", () => {
    const events = [event(at("08:00"), tick("clamped"))];
    const stood = proposal(at("07:00"), tick("stood"));
    expect(verdictOn(events, stood, { arrivedAt: at("14:00") })).toMatchObject({ kind: "accept" });
  });

  it("poured without the release when a reason is given, raising it to the owner", () => {
    expect(verdictOn([event(at("08:40"), tick("plumbed"))], proposal(at("10:00"), tick("poured"), { reason: "truck waiting" }))).toEqual({
      ...accepted,
      raises: [finding("gate-missing", { gate: "pre-pour released", stage: "poured" })],
    });
  });

  it("plumbed after poured where the crew plumbs during the pour", () => {
    const events = [event(at("10:00"), tick("poured"))];
    const rule = { plumbing: "during-pour", requiredGates: {} } as const;
    expect(verdictOn(events, proposal(at("10:20"), tick("plumbed")), { rule })).toEqual(accepted);
  });

  it("an undo within ten seconds by the same person without a reason", () => {
    const stood = event("2031-03-03T07:00:00Z", tick("stood"));
    const undo = (time: string, by: string) => proposal(time, { kind: "withdrawn", eventId: stood.id }, { by });
    expect(verdictOn([stood], undo("2031-03-03T07:00:10Z", "ana"))).toEqual(accepted);
    expect(verdictOn([stood], undo("2031-03-03T07:00:11Z", "ana"))).toMatchObject({ kind: "needs-reason", asks: [{ code: "withdrawal" }] });
    expect(verdictOn([stood], undo("2031-03-03T07:00:05Z", "ben"))).toMatchObject({ kind: "needs-reason" });
  });
});

describe("asks for a reason", () => {
  it("when poured without the pre-pour release", () => {
    expect(verdictOn([event(at("08:40"), tick("plumbed"))], proposal(at("10:00"), tick("poured")))).toMatchObject({
      kind: "needs-reason",
      asks: [finding("gate-missing", { gate: "pre-pour released", stage: "poured" })],
    });
  });

  it("when a blank is given for a reason", () => {
    expect(verdictOn([], proposal(at("10:00"), tick("poured"), { reason: "  " }))).toMatchObject({ kind: "needs-reason" });
  });

  it("when stripped before the strip time, with the hours missing", () => {
    expect(verdictOn(pouredByTheBook(), proposal(at("01:00", 1), tick("stripped")))).toMatchObject({
      kind: "needs-reason",
      asks: [finding("strip-early", { hoursMissing: 3, stripFrom: at("04:00", 1) })],
    });
  });

  it("when going back behind the pour", () => {
    expect(verdictOn(pouredByTheBook(), proposal(at("11:00"), { kind: "set-back", to: null, cause: "ours" }))).toMatchObject({
      kind: "needs-reason",
      asks: [finding("set-back-after-pour", { to: "nothing" })],
    });
  });

  it("when a stage is ticked on a held column", () => {
    const held = event(at("06:00"), { kind: "held" }, { reason: "wrong drawing" });
    expect(verdictOn([held], proposal(at("07:00"), tick("stood")))).toMatchObject({ asks: [{ code: "while-held" }] });
    expect(verdictOn([held], proposal(at("05:50"), tick("stood")))).toMatchObject({ kind: "accept" });
  });

  it("when entered more than half an hour after it happened", () => {
    const typed = (minute: string) => proposal(at("07:00"), tick("stood"), { id: idMadeAt(at(minute)) });
    expect(verdictOn([], typed("07:30"), { arrivedAt: at("07:30") })).toMatchObject({ kind: "accept" });
    expect(verdictOn([], typed("07:31"), { arrivedAt: at("07:31") })).toMatchObject({
      asks: [finding("backdated", { minutes: 31, allowedMinutes: 30 })],
    });
  });

  it("but not when a phone out of reach sends at noon what was ticked at seven", () => {
    expect(verdictOn([], proposal(at("07:00"), tick("stood")), { arrivedAt: at("12:00") })).toMatchObject({ kind: "accept" });
  });

  it("and when an id tells no time, lateness counts to the arrival", () => {
    const typed = proposal(at("07:00"), tick("stood"), { id: "no-time-in-it" });
    expect(verdictOn([], typed, { arrivedAt: at("12:00") })).toMatchObject({ asks: [{ code: "backdated" }] });
  });

  it("and an id made by a clock that runs ahead does not make it later than its arrival", () => {
    const typed = proposal(at("07:00"), tick("stood"), { id: idMadeAt(at("09:00")) });
    expect(verdictOn([], typed, { arrivedAt: at("07:05") })).toMatchObject({ kind: "accept" });
  });

  it("for a hold, a revoked gate, a gate released after its stage, and setting a queried event aside", () => {
    const poured = [event(at("10:00"), tick("poured"))];
    const queried = event(at("10:00"), tick("stood"), { standing: "queried" });
    expect(verdictOn([], proposal(at("10:00"), { kind: "held" }))).toMatchObject({ asks: [{ code: "hold" }] });
    expect(verdictOn(pouredByTheBook(), proposal(at("11:00"), { kind: "gate-revoked", gate: "pre-pour released" }))).toMatchObject({
      asks: [{ code: "gate-revoked" }],
    });
    expect(verdictOn(poured, proposal(at("11:00"), { kind: "gate-released", gate: "pre-pour released" }))).toMatchObject({
      asks: [{ code: "release-after-stage" }],
    });
    expect(verdictOn([queried], proposal(at("11:00"), { kind: "settled", eventId: queried.id, stands: false }))).toMatchObject({
      asks: [{ code: "setting-aside" }],
    });
  });

  it("and where nobody can be asked, a broken rule waits while a hold takes effect", () => {
    expect(unasked(verdictOn([], proposal(at("10:00"), tick("poured"))))).toMatchObject({ kind: "query", because: { code: "gate-missing" } });
    expect(unasked(verdictOn([], proposal(at("10:00"), { kind: "held" })))).toEqual(accepted);
  });
});

describe("queries", () => {
  it("an offline phone's clamped from before the column was set back", () => {
    const events = [event(at("07:00"), tick("stood")), event(at("09:00"), { kind: "set-back", to: "stood", cause: "others" })];
    expect(verdictOn(events, proposal(at("08:00"), tick("clamped")), { arrivedAt: at("12:00") })).toEqual({
      kind: "query",
      because: finding("before-set-back", { setBackAt: at("09:00"), to: "stood" }),
    });
  });

  it("a set-back from before work that is known since", () => {
    const events = [event(at("07:00"), tick("clamped")), event(at("09:00"), tick("plumbed"))];
    expect(verdictOn(events, proposal(at("08:00"), { kind: "set-back", to: "stood", cause: "ours" }), { arrivedAt: at("12:00") })).toEqual({
      kind: "query",
      because: finding("later-work-known", { stage: "plumbed", reachedAt: at("09:00") }),
    });
  });

  it("but a tick for what the set-back left standing is only a repeat", () => {
    const events = [event(at("07:00"), tick("stood")), event(at("09:00"), { kind: "set-back", to: "stood", cause: "others" })];
    const stood = proposal(at("08:00"), tick("stood"), { by: "ben" });
    expect(verdictOn(events, stood, { arrivedAt: at("12:00") })).toMatchObject({ kind: "accept", repeat: true });
  });

  it("a set-back from before another that says more was standing since", () => {
    const events = [
      event(at("07:00"), tick("stood")),
      event(at("09:00"), tick("clamped")),
      event(at("10:00"), { kind: "set-back", to: "stood", cause: "ours" }),
    ];
    const toCut = proposal(at("08:00"), { kind: "set-back", to: "cut", cause: "others" });
    expect(verdictOn(events, toCut, { arrivedAt: at("12:00") })).toEqual({
      kind: "query",
      because: finding("later-work-known", { stage: "stood", reachedAt: at("10:00") }),
    });
  });

  it("a pour told to be after the strip that implied one; one before it fills in the age", () => {
    const events = [event(at("10:00", 1), tick("stripped"))];
    const poured = (time: string, day: number) => proposal(at(time, day), tick("poured"), { reason: "told late" });
    expect(verdictOn(events, poured("11:00", 1))).toMatchObject({ kind: "query", because: { code: "later-work-known" } });
    expect(verdictOn(events, poured("10:00", 0), { arrivedAt: at("12:00", 1) })).toMatchObject({ kind: "accept", repeat: true });
  });

  it("a set-back to a stage the column has not reached", () => {
    expect(verdictOn([event(at("07:00"), tick("stood"))], proposal(at("08:00"), { kind: "set-back", to: "clamped", cause: "ours" }))).toMatchObject({
      because: { code: "back-at-unreached" },
    });
  });

  it("stripped on a column not poured, and stripped before its pour", () => {
    expect(verdictOn([], proposal(at("08:00"), tick("stripped")))).toMatchObject({ kind: "query", because: { code: "not-poured" } });
    expect(verdictOn(pouredByTheBook(), proposal(at("09:30"), tick("stripped")))).toMatchObject({ kind: "query", because: { code: "before-pour" } });
  });

  it("a second pour time well before the first, for the strip time hangs on it", () => {
    const events = pouredByTheBook();
    expect(verdictOn(events, proposal(at("09:10"), tick("poured"), { by: "ben" }))).toMatchObject({
      kind: "query",
      because: finding("pour-time-differs", { pouredAt: at("10:00"), minutes: 50 }),
    });
    expect(verdictOn(events, proposal(at("09:45"), tick("poured"), { by: "ben" }))).toMatchObject({ kind: "accept", repeat: true });
  });

  it("a reading said to be after a pour nobody knows of", () => {
    const reading = { kind: "reading", when: "after-pour", offsets_mm: { x: 0, y: 4 } } as const;
    expect(verdictOn([], proposal(at("08:00"), reading))).toMatchObject({ kind: "query", because: { code: "reading-out-of-turn" } });
    expect(verdictOn(pouredByTheBook(), proposal(at("10:30"), reading))).toEqual(accepted);
  });
});

describe("refuses", () => {
  it("a time more than ten minutes ahead, before the project, or not a time", () => {
    const ahead = proposal(at("07:11"), tick("stood"));
    expect(verdictOn([], ahead, { arrivedAt: at("07:00") })).toMatchObject({ kind: "refuse", because: { code: "in-the-future" } });
    expect(verdictOn([], proposal(at("07:10"), tick("stood")), { arrivedAt: at("07:00") })).toMatchObject({ kind: "accept" });
    expect(verdictOn([], proposal("2031-02-28T23:59:59Z", tick("stood")))).toMatchObject({ because: { code: "before-project" } });
    const unreadable = proposal("yesterday", tick("stood"), { id: "x" });
    expect(verdictOn([], unreadable, { arrivedAt: at("07:00") })).toMatchObject({ because: { code: "time-unreadable" } });
  });

  it("a withdrawal of something unknown or already withdrawn", () => {
    const stood = event(at("07:00"), tick("stood"));
    const out = event(at("07:05"), { kind: "withdrawn", eventId: stood.id });
    const withdraw = (eventId: string) => proposal(at("08:00"), { kind: "withdrawn", eventId }, { reason: "wrong column" });
    expect(verdictOn([stood], withdraw("nobody"))).toMatchObject({ kind: "refuse", because: { code: "unknown-event" } });
    expect(verdictOn([stood, out], withdraw(stood.id))).toMatchObject({ kind: "refuse", because: { code: "already-withdrawn" } });
    expect(verdictOn([stood, out], withdraw(out.id))).toMatchObject({ kind: "accept" });
  });

  it("settling what is not queried, acknowledging what is no exception, and offsets that are no numbers", () => {
    const stood = event(at("07:00"), tick("stood"));
    expect(verdictOn([stood], proposal(at("08:00"), { kind: "settled", eventId: stood.id, stands: true }))).toMatchObject({ because: { code: "not-queried" } });
    expect(verdictOn([stood], proposal(at("08:00"), { kind: "acknowledged", eventId: stood.id }))).toMatchObject({ because: { code: "no-exception" } });
    expect(verdictOn([], proposal(at("08:00"), { kind: "reading", when: "before-pour", offsets_mm: { x: Number.NaN, y: 0 } }))).toMatchObject({
      because: { code: "offsets-unreadable" },
    });
  });
});
