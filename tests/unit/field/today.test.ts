import { describe, expect, it } from "vitest";
import type { TodayColumn } from "#lib/contracts/progress.ts";
import type { Next } from "#lib/trade/progress/next.ts";
import { blockWords } from "#app/(work)/projects/[projectId]/today/block-words.ts";
import { blocksNow, eveningGroups, workGroups, withNews, type TodayRow } from "#app/(work)/projects/[projectId]/today/group-columns.ts";

const NOW = "2031-04-17T06:30:00.000Z";
const LATER = "2031-04-17T08:20:00.000Z";

function aRow(id: string, done: number, next: Partial<Next>, given: Partial<TodayColumn> = {}): TodayRow {
  return {
    id, gridRef: id, mark: "C2", levelId: "l2", level: "Level 2", shape: "rectangle", widthMm: 350, depthMm: 550, done, flagged: false,
    next: { stage: "cut", blockedBy: [], stripFrom: null, ...next }, asksForReading: false, queried: [], held: null, exceptions: [], isAhead: false, ...given,
  };
}
const keys = (rows: readonly TodayRow[], now = NOW) => workGroups(rows, now).map(({ key, rows: within }) => [key, ...within.map(({ id }) => id)]);

describe("what is next on site", () => {
  it("puts stripping and pouring before the earlier stages, and what waits last", () => {
    const rows = [
      aRow("A1", 0, { stage: "cut" }),
      aRow("A2", 7, { stage: "poured", blockedBy: ["pre-pour released"] }),
      aRow("A3", 7, { stage: "poured" }),
      aRow("A4", 31, { stage: "stripped", stripFrom: NOW }),
      aRow("A5", 31, { stage: "stripped", blockedBy: ["strip time"], stripFrom: LATER }),
    ];
    expect(keys(rows)).toEqual([["stripped", "A4"], ["poured", "A3"], ["cut", "A1"], ["strip-later", "A5"], ["release", "A2"]]);
  });

  it("moves a column to the ready ones when its strip time runs out before the eyes of the crew", () => {
    const row = aRow("A5", 31, { stage: "stripped", blockedBy: ["strip time"], stripFrom: LATER });
    expect(blocksNow(row, NOW)).toEqual(["strip time"]);
    expect(keys([row], LATER)).toEqual([["stripped", "A5"]]);
  });

  it("never takes a column whose pour time is not known for old enough", () => {
    const row = aRow("A5", 31, { stage: "stripped", blockedBy: ["strip time"], stripFrom: null });
    expect(keys([row], LATER)).toEqual([["strip-later", "A5"]]);
  });

  it("follows a tick before the page is read again, and then still waits for the strip time", () => {
    const before = aRow("A3", 7, { stage: "poured" });
    expect(withNews(before, { done: 31, flagged: false }, true, "before-pour")).toMatchObject({ isAhead: true, next: { stage: "stripped", blockedBy: ["strip time"] } });
  });

  it("names the time on the site's clock, with the day when it is another", () => {
    const next = (stripFrom: string | null): Next => ({ stage: "stripped", blockedBy: ["strip time"], stripFrom });
    expect(blockWords(next(LATER), ["strip time"], NOW, "Australia/Brisbane")).toEqual(["strip from 18:20"]);
    expect(blockWords(next("2031-04-17T21:20:00Z"), ["strip time", "held"], NOW, "Australia/Brisbane")).toEqual(["strip from Fri 18 Apr, 07:20", "on hold"]);
    expect(blockWords(next(null), ["strip time"], NOW, "Australia/Brisbane")).toEqual(["pour time not known"]);
  });
});

describe("the end of the day", () => {
  it("names what stands unclamped, what is ready to pour, and what lacks its reading", () => {
    const rows = [aRow("A1", 3, {}), aRow("A2", 7, {}), aRow("A3", 31, {}, { asksForReading: true }), aRow("A4", 63, {}, { asksForReading: true })];
    expect(eveningGroups(rows).map(({ key, rows: within }) => [key, ...within.map(({ id }) => id)]))
      .toEqual([["loose", "A1"], ["unpoured", "A2"], ["unread", "A3"], ["in-form", "A3"]]);
  });
});
