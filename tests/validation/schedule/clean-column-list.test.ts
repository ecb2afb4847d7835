import { existsSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { z } from "zod";
import { readSheet } from "#lib/server/columns/read-sheet.ts";
import { readSchedule } from "#lib/trade/schedule/read-schedule.ts";

// Source: the schedule sample and the hand-made reading beside it.
const FOLDER = new URL("../../../../shared/samples/schedules/", import.meta.url);
const SAMPLE = new URL("clean-column-list.csv", FOLDER);
const EXPECTED = new URL("clean-column-list.expected.json", FOLDER);

const Reading = z.object({
  levels: z.array(z.object({ name: z.string(), elevation_mm: z.number() })),
  counts: z.object({ rowsRead: z.number(), lifts: z.number(), errors: z.number(), warnings: z.number() }),
  lifts: z.array(z.looseObject({ row: z.number(), grids: z.array(z.string()) })),
});

if (existsSync(SAMPLE) && existsSync(EXPECTED)) {
  it("the clean column list is read as its hand-made reading says, without problem or warning", async () => {
    const expected = Reading.parse(JSON.parse(readFileSync(EXPECTED, "utf8")));
    const sheets = await readSheet(readFileSync(SAMPLE), "clean-column-list.csv");
    const reading = readSchedule(sheets.ok ? sheets.value : [], "metric");
    expect(reading.layout).toBe("list");
    expect(reading.levels).toEqual(expected.levels);
    expect(reading.counts).toEqual(expected.counts);
    expect(reading.problems).toEqual([]);
    expect(reading.warnings).toEqual([]);
    const lifts = reading.lifts.map(({ source, gridRef, locatedBy: _, ...lift }) => ({ row: source.row, grids: [gridRef], ...lift }));
    expect(lifts).toEqual(expected.lifts);
  });
} else {
  it("not run: the sample schedule is absent", () => {});
}
