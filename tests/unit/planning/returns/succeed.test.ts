import { describe, expect, it } from "vitest";
import { addDays, type Day, toDay } from "#lib/kernel/days.ts";
import { type ProposedReturn, type StandingTask, succeed } from "#lib/trade/planning/returns/tasks/succeed.ts";

// What has to come of each case is reasoned out by hand beside it.
const monday = toDay("2026-03-02");
const on = (days: number): Day => addDays(monday, days);
const line = (itemId: string, quantity: number) => ({ itemId, item: itemId, quantity });
const proposed = (collect: Day, ...lines: ProposedReturn["lines"]): ProposedReturn => ({ supplierId: "yard", days: { call: addDays(collect, -3), load: addDays(collect, -1), collect }, lines });
const standing = (planId: string, { days, lines }: ProposedReturn, called = false): StandingTask[] => (["call", "load", "collect"] as const).map((kind) => ({
  id: `${planId} ${kind} ${days.collect}`, planId, supplierId: "yard", kind, state: called && kind === "call" ? "done" : "open", on: days[kind], collectOn: days.collect, lines,
}));
const all = () => true;
const none = () => false;
const friday = proposed(on(4), line("wedge", 100));
const tuesday = proposed(on(8), line("wedge", 40));

describe("the tasks of an accepted plan", () => {
  it("are three for each return where nothing stands", () => {
    const { added, ...rest } = succeed([], { id: "new", proposed: [friday, tuesday] }, all);
    expect(added.map(({ kind, on: day, collectOn }) => [kind, day, collectOn])).toEqual([
      ["call", on(1), on(4)], ["load", on(3), on(4)], ["collect", on(4), on(4)], ["call", on(5), on(8)], ["load", on(7), on(8)], ["collect", on(8), on(8)],
    ]);
    expect(rest).toEqual({ kept: [], changed: [], withdrawn: [] });
  });

  it("stay as they are where the new plan proposes the same, chosen or not", () => {
    const old = [...standing("old", friday), ...standing("old", tuesday)];
    const { kept, ...rest } = succeed(old, { id: "new", proposed: [friday, tuesday] }, (_, day) => day === on(4));
    expect(kept).toEqual(old.map(({ id }) => id));
    expect(rest).toEqual({ changed: [], added: [], withdrawn: [] });
  });

  // 100 on Friday became 90: accepted, the same three tasks say so. Tuesday is no longer proposed: its three are withdrawn.
  it("are changed where other pieces go that day and withdrawn where nothing goes any more", () => {
    const next = succeed([...standing("old", friday), ...standing("old", tuesday)], { id: "new", proposed: [proposed(on(4), line("wedge", 90))] }, all);
    expect(next.changed.map(({ id, lines }) => [id, lines[0]?.quantity])).toEqual([["old call 2026-03-06", 90], ["old load 2026-03-06", 90], ["old collect 2026-03-06", 90]]);
    expect(next.withdrawn).toEqual(standing("old", tuesday).map(({ id }) => id));
    expect(next).toMatchObject({ kept: [], added: [] });
  });

  it("do not outlive their plan because nobody accepted what replaced them", () => {
    const next = succeed(standing("old", friday), { id: "new", proposed: [proposed(on(4), line("wedge", 90)), tuesday] }, (_, day) => day === on(8));
    expect(next.withdrawn).toHaveLength(3);
    expect(next.added).toHaveLength(3);
  });

  it("take up a further item of the same day", () => {
    const both = proposed(on(4), line("wedge", 100), line("clamp", 20));
    const next = succeed(standing("new", friday), { id: "new", proposed: [both] }, (_, __, itemId) => itemId === "clamp");
    expect(next.changed.map(({ lines }) => lines)).toEqual([both.lines, both.lines, both.lines]);
  });

  it("are of one supplier each: what another takes that day is a return of its own", () => {
    const other = { ...friday, supplierId: "other yard" };
    const next = succeed(standing("old", friday), { id: "new", proposed: [friday, other] }, all);
    expect(next.kept).toHaveLength(3);
    expect(next.added.map(({ supplierId }) => supplierId)).toEqual(["other yard", "other yard", "other yard"]);
  });

  // The hirer has been told of 100 wedges for Friday. Nothing changes that but another call.
  it("leave a called return alone, and give what comes on top of it a call of its own", () => {
    const called = standing("new", friday, true);
    expect(succeed(called, { id: "new", proposed: [friday] }, all)).toEqual({ kept: [], changed: [], added: [], withdrawn: [] });
    expect(succeed(standing("old", friday, true), { id: "new", proposed: [tuesday] }, none)).toEqual({ kept: [], changed: [], added: [], withdrawn: [] });
    const more = succeed(called, { id: "new", proposed: [proposed(on(4), line("wedge", 100), line("clamp", 20))] }, all);
    expect(more.added.map(({ kind, lines }) => [kind, lines])).toEqual([["call", [line("clamp", 20)]], ["load", [line("clamp", 20)]], ["collect", [line("clamp", 20)]]]);
    expect(more).toMatchObject({ kept: [], changed: [], withdrawn: [] });
  });
});
