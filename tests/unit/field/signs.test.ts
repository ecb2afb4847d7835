import { describe, expect, it } from "vitest";
import { expectedSign } from "#app/_field/outbox/expected-sign.ts";
import type { KeptEvent } from "#app/_field/outbox/kept-item.ts";
import { leaveOut, needsTelling, readOutcome } from "#app/_field/ticking/outcome.ts";
import { columnsWords, nameSome, type TickColumn } from "#app/_field/ticking/tick-column.ts";
import type { Stage } from "#lib/trade/progress/stages.ts";

const told = { columnId: "a", happenedAt: "2031-04-17T06:30:00Z", reason: null };
const ticked = (stage: Stage, id: string = stage): KeptEvent => ({ ...told, id, kind: "stage-reached", stage });
const CUT = 1, STOOD = 2, CLAMPED = 4, PLUMBED = 8, POURED = 16;

describe("the sign drawn before the server has answered", () => {
  const nothing = { done: 0, flagged: false };
  it("counts in the stages a tick implies", () => {
    expect(expectedSign(nothing, "a", [ticked("clamped")], "during-pour")).toEqual({ done: CUT + STOOD + CLAMPED, flagged: false, isAhead: true });
  });
  it("leaves plumbed open where the crew plumbs as the concrete goes in", () => {
    expect(expectedSign(nothing, "a", [ticked("poured")], "during-pour").done).toBe(CUT + STOOD + CLAMPED + POURED);
    expect(expectedSign(nothing, "a", [ticked("poured")], "before-pour").done).toBe(CUT + STOOD + CLAMPED + PLUMBED + POURED);
  });
  it("leaves out what is taken back, and what concerns another column", () => {
    const undo: KeptEvent = { ...told, id: "undo", kind: "withdrawn", eventId: "cut" };
    const elsewhere: KeptEvent = { ...ticked("stood"), columnId: "b" };
    expect(expectedSign(nothing, "a", [ticked("cut"), undo, elsewhere], "during-pour")).toEqual({ ...nothing, isAhead: false });
  });
  it("goes back with a set-back and flags a hold", () => {
    const back: KeptEvent = { ...told, id: "back", kind: "set-back", to: "stood", cause: "others" };
    const hold: KeptEvent = { ...told, id: "hold", kind: "held" };
    expect(expectedSign({ done: CUT + STOOD + CLAMPED, flagged: false }, "a", [back, hold], "during-pour")).toEqual({ done: CUT + STOOD, flagged: true, isAhead: true });
  });
});

const column = (id: string, done: number, level = "Level 2"): TickColumn =>
  ({ id, gridRef: id, mark: "C2", level, shape: "rectangle", widthMm: 350, depthMm: 550, done, flagged: false });

describe("ticking many columns", () => {
  it("leaves out those that have the stage and those that would be stripped before they are poured", () => {
    const { tried, skipped } = leaveOut([column("A4", 31), column("B4", 63), column("C4", 7)], "stripped");
    expect(tried.map(({ id }) => id)).toEqual(["A4"]);
    expect(skipped.map(({ columnId, kind }) => [columnId, kind])).toEqual([["B4", "done"], ["C4", "not-poured"]]);
  });
  it("tells what was taken and what was not, each with its reason", () => {
    const gate = { code: "gate-missing", values: { gate: "pre-pour released", stage: "poured" } } as const;
    const answer = {
      seq: 5, columns: [],
      answers: [
        { id: "1", columnId: "A4", outcome: "accepted", findings: [] },
        { id: "2", columnId: "B4", outcome: "needs-reason", findings: [gate] },
        { id: "3", columnId: "C4", outcome: "refused", findings: [{ code: "unknown-column", values: {} }] },
      ],
    } as const;
    const outcome = readOutcome("poured", { where: "sent", ids: ["1", "2", "3"], answer }, ["A4", "B4", "C4"], []);
    expect(outcome.taken.map(({ columnId }) => columnId)).toEqual(["A4"]);
    expect(outcome.skipped.map(({ columnId, kind }) => [columnId, kind])).toEqual([["B4", "asks"], ["C4", "refused"]]);
    expect(needsTelling(outcome)).toBe(true);
  });
  it("is quiet when everything is saved on the phone", () => {
    const outcome = readOutcome("cut", { where: "saved-on-phone", ids: ["1"] }, ["A4"], []);
    expect(outcome).toMatchObject({ isSaved: true, taken: [{ columnId: "A4" }] });
    expect(needsTelling(outcome)).toBe(false);
  });
  it("names a few columns and counts the rest, the level once", () => {
    expect(nameSome(["A4", "B4", "C4", "D4"])).toBe("A4, B4, C4 and D4");
    expect(nameSome(["A4", "B4", "C4", "D4", "E4"])).toBe("A4, B4, C4 and 2 more");
    expect(columnsWords([column("A4", 0), column("B4", 0)])).toBe("A4 and B4, Level 2");
    expect(columnsWords([column("A4", 0), column("B4", 0, "Level 3")])).toBe("A4, Level 2 and B4, Level 3");
  });
});
