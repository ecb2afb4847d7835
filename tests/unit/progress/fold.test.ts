import { describe, expect, it } from "vitest";
import { compact, counts } from "#lib/trade/progress/column-state.ts";
import { undoOf } from "#lib/trade/progress/site-event.ts";
import { ALL_DONE, bitOf } from "#lib/trade/progress/stages.ts";
import { at, event, fold, pouredByTheBook } from "./site-diary.ts";

// The order of the work and what may be missing: common practice, no source.
describe("stages", () => {
  it("a column nobody has touched is at nothing and asks for nothing", () => {
    expect(fold([])).toMatchObject({ stage: null, done: 0, flagged: false, asksForReading: false, pouredAt: null });
  });

  it("ticking a later stage records the skipped ones as implied, by the same person at the same time", () => {
    const clamped = event(at("08:00"), { kind: "stage-reached", stage: "clamped" }, { by: "ben" });
    const { reached, stage } = fold([clamped]);
    expect(stage).toBe("clamped");
    expect(reached.stood).toMatchObject({ implied: true, by: "ben", at: at("08:00"), eventId: clamped.id });
    expect(reached.clamped?.implied).toBe(false);
    expect(reached.plumbed).toBeUndefined();
  });

  it("an earlier stage told late takes its own time and person", () => {
    const clamped = event(at("08:00"), { kind: "stage-reached", stage: "clamped" }, { by: "ben" });
    const stood = event(at("07:00"), { kind: "stage-reached", stage: "stood" }, { by: "ana" });
    expect(fold([clamped, stood]).reached.stood).toMatchObject({ implied: false, by: "ana", at: at("07:00") });
  });

  it("the same stage ticked by two people counts once, by the first on site, and the repeat is noted", () => {
    const later = event(at("07:20"), { kind: "stage-reached", stage: "stood" }, { by: "ben" });
    const first = event(at("07:00"), { kind: "stage-reached", stage: "stood" }, { by: "ana" });
    expect(fold([later, first]).reached.stood).toMatchObject({ by: "ana", repeats: 1, last: { by: "ben" } });
  });

  it("before the pour: poured implies plumbed; during the pour: it does not, and the column is poured all the same", () => {
    const poured = [event(at("10:00"), { kind: "stage-reached", stage: "poured" })];
    expect(fold(poured).reached.plumbed).toMatchObject({ implied: true });
    const during = fold(poured, { plumbing: "during-pour" });
    expect(during.stage).toBe("poured");
    expect(during.done & bitOf("plumbed")).toBe(0);
  });

  it("during the pour: once stripped, plumbed can no longer come and is implied", () => {
    const events = [
      event(at("10:00"), { kind: "stage-reached", stage: "poured" }),
      event(at("10:00", 1), { kind: "stage-reached", stage: "stripped" }),
    ];
    expect(fold(events, { plumbing: "during-pour" }).done).toBe(ALL_DONE);
  });

  it("a poured column asks for a reading until one is taken after the pour", () => {
    const poured = pouredByTheBook();
    const offsets_mm = { x: 3, y: -2 };
    expect(fold(poured).asksForReading).toBe(true);
    expect(fold([...poured, event(at("09:10"), { kind: "reading", when: "before-pour", offsets_mm })]).asksForReading).toBe(true);
    const early = event(at("09:50"), { kind: "reading", when: "after-pour", offsets_mm });
    expect(fold([...poured, early]).asksForReading).toBe(true);
    const read = fold([...poured, event(at("10:40"), { kind: "reading", when: "after-pour", offsets_mm })]);
    expect(read.asksForReading).toBe(false);
    expect(read.readings["after-pour"]?.offsets_mm).toEqual(offsets_mm);
  });
});

describe("going back", () => {
  it("opened up for a missed cast-in: back at stood with its cause, and the pre-pour release lapses", () => {
    const events = pouredByTheBook().slice(0, 5);
    const state = fold([...events, event(at("09:30"), { kind: "set-back", to: "stood", cause: "others" })]);
    expect(state.stage).toBe("stood");
    expect(state.gates["pre-pour released"]).toBeUndefined();
    expect(state.setBacks).toMatchObject([{ to: "stood", cause: "others" }]);
  });

  it("the set-out and the cage stay released when the form comes off", () => {
    const state = fold([
      event(at("06:00"), { kind: "gate-released", gate: "set-out checked" }),
      event(at("06:10"), { kind: "gate-released", gate: "cage released" }),
      event(at("07:00"), { kind: "stage-reached", stage: "stood" }),
      event(at("08:00"), { kind: "set-back", to: "cut", cause: "weather" }),
    ]);
    expect(Object.keys(state.gates).sort()).toEqual(["cage released", "set-out checked"]);
  });

  it("closing up a stripped column for repair takes the strip release and leaves the pour and its reading", () => {
    const offsets_mm = { x: 1, y: 1 };
    const state = fold([
      ...pouredByTheBook(),
      event(at("10:40"), { kind: "reading", when: "after-pour", offsets_mm }),
      event(at("05:00", 1), { kind: "gate-released", gate: "strip released" }),
      event(at("06:00", 1), { kind: "stage-reached", stage: "stripped" }),
      event(at("07:00", 1), { kind: "set-back", to: "poured", cause: "others" }),
    ]);
    expect(state).toMatchObject({ stage: "poured", asksForReading: false, pouredAt: at("10:00") });
    expect(Object.keys(state.gates)).toEqual(["pre-pour released"]);
  });

  it("broken out and poured again, the column asks for a new reading", () => {
    const state = fold([
      ...pouredByTheBook(),
      event(at("10:40"), { kind: "reading", when: "after-pour", offsets_mm: { x: 90, y: 1 } }),
      event(at("12:00"), { kind: "set-back", to: "plumbed", cause: "ours" }, { reason: "out of plumb" }),
    ]);
    expect(state.readings["after-pour"]).toBeUndefined();
  });

  it("going back to where the column is takes nothing off, the release neither", () => {
    const events = pouredByTheBook().slice(0, 5);
    const state = fold([...events, event(at("09:30"), { kind: "set-back", to: "plumbed", cause: "ours" })]);
    expect(state.stage).toBe("plumbed");
    expect(state.gates["pre-pour released"]).toBeDefined();
  });

  it("re-plumbed after a bump: the second plumbing is the one that counts", () => {
    const state = fold([
      event(at("08:40"), { kind: "stage-reached", stage: "plumbed" }),
      event(at("09:00"), { kind: "set-back", to: "clamped", cause: "others" }),
      event(at("09:30"), { kind: "stage-reached", stage: "plumbed" }, { by: "ben" }),
    ]);
    expect(state.reached.plumbed).toMatchObject({ at: at("09:30"), by: "ben", repeats: 0 });
  });

  it("behind the pour it raises an exception, for concrete has to be broken out", () => {
    const state = fold([...pouredByTheBook(), event(at("15:00"), { kind: "set-back", to: "cut", cause: "ours" }, { reason: "honeycombed" })]);
    expect(state.exceptions).toMatchObject([{ code: "set-back-after-pour", reason: "honeycombed", values: { to: "cut" } }]);
    expect(state.pouredAt).toBeNull();
  });
});

describe("exceptions", () => {
  it("poured without the pre-pour release is recorded and shown to the owner with its reason", () => {
    const poured = event(at("10:00"), { kind: "stage-reached", stage: "poured" }, { reason: "truck was waiting" });
    expect(fold([poured]).exceptions).toEqual([
      {
        code: "gate-missing",
        values: { gate: "pre-pour released", stage: "poured" },
        eventId: poured.id,
        reason: "truck was waiting",
        acknowledged: false,
      },
    ]);
  });

  it("a release after the pour does not cure it; one from before, sent late, does", () => {
    const poured = event(at("10:00"), { kind: "stage-reached", stage: "poured" });
    expect(fold([poured, event(at("10:30"), { kind: "gate-released", gate: "pre-pour released" })]).exceptions).toHaveLength(1);
    expect(fold([poured, event(at("09:30"), { kind: "gate-released", gate: "pre-pour released" })]).exceptions).toHaveLength(0);
  });

  it("a second release after the pour leaves the first one standing", () => {
    const again = event(at("11:00"), { kind: "gate-released", gate: "pre-pour released" }, { by: "ben" });
    const state = fold([...pouredByTheBook(), again]);
    expect(state.gates["pre-pour released"]).toMatchObject({ at: at("09:00"), by: "ana" });
  });

  it("a release that was revoked before the pour does not count", () => {
    const events = pouredByTheBook();
    const revoked = event(at("09:50"), { kind: "gate-revoked", gate: "pre-pour released" });
    expect(fold([...events, revoked]).exceptions).toMatchObject([{ code: "gate-missing" }]);
    const again = event(at("09:55"), { kind: "gate-released", gate: "pre-pour released" });
    expect(fold([...events, revoked, again]).exceptions).toEqual([]);
  });

  it("stripped 16 h 30 min after the pour with 18 h to wait: one and a half hours missing", () => {
    const state = fold([...pouredByTheBook(), event(at("02:30", 1), { kind: "stage-reached", stage: "stripped" }, { reason: "set needed" })]);
    expect(state.exceptions).toMatchObject([
      { code: "strip-early", values: { hoursMissing: 1.5, stripFrom: at("04:00", 1) }, reason: "set needed" },
    ]);
  });

  it("stripped at the strip time to the minute is in order", () => {
    expect(fold([...pouredByTheBook(), event(at("04:00", 1), { kind: "stage-reached", stage: "stripped" })]).exceptions).toEqual([]);
  });

  it("stripped with nobody having said when it was poured, or without a usable strip time: the age is not known", () => {
    const stripped = event(at("10:00", 1), { kind: "stage-reached", stage: "stripped" });
    expect(fold([stripped], { requiredGates: {} }).exceptions).toMatchObject([{ code: "strip-age-unknown" }]);
    expect(fold([...pouredByTheBook(), stripped], { stripAfterHours: Number.NaN }).exceptions).toMatchObject([
      { code: "strip-age-unknown" },
    ]);
  });

  it("the owner's having seen it stays with it", () => {
    const poured = event(at("10:00"), { kind: "stage-reached", stage: "poured" });
    const seen = event(at("12:00"), { kind: "acknowledged", eventId: poured.id }, { by: "owner" });
    expect(fold([poured, seen]).exceptions).toMatchObject([{ acknowledged: true }]);
  });
});

describe("holds, queries and withdrawals", () => {
  it("a held column is flagged with its reason until the hold is lifted", () => {
    const held = event(at("08:00"), { kind: "held" }, { reason: "wrong drawing" });
    expect(fold([held])).toMatchObject({ flagged: true, held: { reason: "wrong drawing", by: "ana" } });
    const second = event(at("08:30"), { kind: "held" }, { reason: "cage", by: "ben" });
    expect(fold([held, second]).held).toMatchObject({ reason: "wrong drawing", by: "ana" });
    expect(fold([held, event(at("09:00"), { kind: "hold-lifted" })])).toMatchObject({ flagged: false, held: null });
  });

  it("a queried event changes nothing but the flag until it is settled", () => {
    const queried = event(at("08:00"), { kind: "stage-reached", stage: "clamped" }, { standing: "queried" });
    expect(fold([queried])).toMatchObject({ stage: null, flagged: true, queried: [queried.id] });
    const stands = event(at("09:00"), { kind: "settled", eventId: queried.id, stands: true });
    expect(fold([queried, stands])).toMatchObject({ stage: "clamped", flagged: false, queried: [] });
    const falls = event(at("09:00"), { kind: "settled", eventId: queried.id, stands: false });
    expect(fold([queried, falls])).toMatchObject({ stage: null, flagged: false, queried: [] });
  });

  it("an exception that came in without a reason takes the one it was settled with", () => {
    const queried = event(at("10:00"), { kind: "stage-reached", stage: "poured" }, { standing: "queried" });
    const stands = event(at("11:00"), { kind: "settled", eventId: queried.id, stands: true }, { reason: "seen by Cleo" });
    expect(fold([queried, stands]).exceptions).toMatchObject([{ code: "gate-missing", reason: "seen by Cleo" }]);
  });

  it("undoing takes the event out as if it never was, and undoing the undo restores it", () => {
    const poured = pouredByTheBook();
    const last = poured.at(-1) ?? event(at("00:00"), { kind: "held" });
    const { kind, eventId } = undoOf(last);
    const undo = event(at("10:01"), { kind, eventId });
    expect(fold([...poured, undo]).stage).toBe("plumbed");
    const redo = event(at("10:02"), { kind: "withdrawn", eventId: undo.id });
    expect(fold([...poured, undo, redo]).stage).toBe("poured");
    expect(fold([...poured, undo, redo]).known.map(({ fate }) => fate)).toEqual([
      ...poured.map(() => "stands"),
      "withdrawn",
      "stands",
    ]);
  });

  it("withdrawals that chase each other in a circle take nothing out", () => {
    const stood = event(at("07:00"), { kind: "stage-reached", stage: "stood" });
    const one = event(at("08:00"), { kind: "withdrawn", eventId: "two" }, { id: "one" });
    const two = event(at("08:01"), { kind: "withdrawn", eventId: "one" }, { id: "two" });
    expect(fold([stood, one, two]).stage).toBe("stood");
  });
});

describe("lists", () => {
  it("counts where columns are and what they have behind them", () => {
    const held = fold([event(at("08:00"), { kind: "held" })]);
    const poured = fold(pouredByTheBook());
    expect(counts([compact(held), compact(poured)])).toMatchObject({
      total: 2,
      flagged: 1,
      at: { nothing: 1, poured: 1, clamped: 0 },
      done: { clamped: 1, stripped: 0 },
    });
  });
});
