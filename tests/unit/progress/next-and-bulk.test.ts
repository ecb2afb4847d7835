import { describe, expect, it } from "vitest";
import { bulk } from "#lib/trade/progress/bulk.ts";
import { finding } from "#lib/trade/progress/finding.ts";
import { next } from "#lib/trade/progress/next.ts";
import type { SiteEvent } from "#lib/trade/progress/site-event.ts";
import type { ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import { at, event, fold, pouredByTheBook, RULE } from "./site-diary.ts";

const nextOf = (events: readonly SiteEvent[], now: string, rule: Partial<ProgressRule> = {}) =>
  next(fold(events, rule), { ...RULE, ...rule }, now);

describe("what is next", () => {
  it("cutting, on a column nobody has touched", () => {
    expect(nextOf([], at("06:00"))).toEqual({ stage: "cut", blockedBy: [], stripFrom: null });
  });

  it("the pour, blocked by the release until it is given", () => {
    const events = pouredByTheBook();
    expect(nextOf(events.slice(0, 4), at("08:50"))).toMatchObject({ stage: "poured", blockedBy: ["pre-pour released"] });
    expect(nextOf(events.slice(0, 5), at("09:10"))).toMatchObject({ stage: "poured", blockedBy: [] });
  });

  it("stripping, blocked until the strip time", () => {
    const events = pouredByTheBook();
    expect(nextOf(events, at("03:59", 1))).toEqual({ stage: "stripped", blockedBy: ["strip time"], stripFrom: at("04:00", 1) });
    expect(nextOf(events, at("04:00", 1)).blockedBy).toEqual([]);
  });

  it("stripping stays blocked when the strip time is not known", () => {
    expect(nextOf(pouredByTheBook(), at("04:00", 9), { stripAfterHours: Number.NaN })).toEqual({
      stage: "stripped",
      blockedBy: ["strip time"],
      stripFrom: null,
    });
  });

  it("nothing, once stripped", () => {
    const stripped = event(at("05:00", 1), { kind: "stage-reached", stage: "stripped" });
    expect(nextOf([...pouredByTheBook(), stripped], at("06:00", 1)).stage).toBeNull();
  });

  it("where the crew plumbs during the pour: pour after clamping, then plumb, then strip", () => {
    const during = { plumbing: "during-pour", requiredGates: {} } as const;
    const clamped = event(at("08:00"), { kind: "stage-reached", stage: "clamped" });
    const poured = event(at("10:00"), { kind: "stage-reached", stage: "poured" });
    const plumbed = event(at("10:20"), { kind: "stage-reached", stage: "plumbed" });
    expect(nextOf([clamped], at("09:00"), during).stage).toBe("poured");
    expect(nextOf([clamped, poured], at("10:05"), during).stage).toBe("plumbed");
    expect(nextOf([clamped, poured, plumbed], at("10:30"), during).stage).toBe("stripped");
  });

  it("held and queried both stand in the way", () => {
    const events = [
      event(at("06:00"), { kind: "held" }, { reason: "wrong drawing" }),
      event(at("06:30"), { kind: "stage-reached", stage: "poured" }, { standing: "queried" }),
    ];
    expect(nextOf(events, at("07:00"))).toMatchObject({ stage: "cut", blockedBy: ["held", "queried"] });
  });
});

describe("ticking many at once", () => {
  const plumbed = event(at("08:00"), { kind: "stage-reached", stage: "plumbed" });
  const released = event(at("08:30"), { kind: "gate-released", gate: "pre-pour released" });
  const setBack = event(at("11:00"), { kind: "set-back", to: "stood", cause: "ours" });
  const columns = [
    { columnId: "ready", state: fold([plumbed, released]), rule: RULE },
    { columnId: "no release", state: fold([plumbed]), rule: RULE },
    { columnId: "poured", state: fold(pouredByTheBook()), rule: RULE },
    { columnId: "set back since", state: fold([plumbed, released, setBack]), rule: RULE },
  ];
  const tick = { stage: "poured", happenedAt: at("10:30"), by: "ana", reason: null } as const;

  it("takes those that can, and says of each other why not", () => {
    const { taken, skipped } = bulk(columns, tick, at("10:31"));
    expect(taken).toEqual([{ columnId: "ready", implied: [], raises: [] }]);
    expect(skipped).toEqual([
      { columnId: "no release", skip: "needs-reason", because: [finding("gate-missing", { gate: "pre-pour released", stage: "poured" })] },
      { columnId: "poured", skip: "done", because: [finding("reached-already", { stage: "poured", reachedAt: at("10:00") })] },
      { columnId: "set back since", skip: "query", because: [finding("before-set-back", { setBackAt: at("11:00"), to: "stood" })] },
    ]);
  });

  it("takes those that need a reason when one is given for all, raising each", () => {
    const { taken } = bulk(columns, { ...tick, reason: "engineer on the phone" }, at("10:31"));
    expect(taken.map(({ columnId, raises }) => [columnId, raises.length])).toEqual([["ready", 0], ["no release", 1]]);
  });
});
