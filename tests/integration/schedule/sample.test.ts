import { existsSync, readFileSync } from "node:fs";
import { beforeAll, expect, it } from "vitest";
import { z } from "zod";
import { previewSchedule } from "#lib/server/columns/schedule-preview.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { aFile, anEmptyProject, columnsOf, importFile, levelsOf } from "./imported.ts";

// Source: the schedule sample and the hand-made reading beside it.
const FOLDER = new URL("../../../../shared/samples/schedules/", import.meta.url);
const [SAMPLE, EXPECTED] = [new URL("clean-column-list.csv", FOLDER), new URL("clean-column-list.expected.json", FOLDER)];
const isThere = existsSync(SAMPLE) && existsSync(EXPECTED);
const Reading = z.object({
  levels: z.array(z.object({ name: z.string(), elevation_mm: z.number() })),
  lifts: z.array(z.object({
    mark: z.string(), grids: z.array(z.string()), shape: z.string(), width_mm: z.number(), depth_mm: z.number(), fromLevel: z.string(), toLevel: z.string(),
    fromElevation_mm: z.number(), toElevation_mm: z.number(),
  })),
});

ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Marsh Boxing")));

if (isThere) {
  const sample = () => Uint8Array.from(readFileSync(SAMPLE));
  const expected = () => Reading.parse(JSON.parse(readFileSync(EXPECTED, "utf8")));

  it("the clean column list goes into a new project: 14 lifts, no error, sizes and levels as read by hand", async () => {
    const by = company.office;
    const projectId = await anEmptyProject(by);
    const file = aFile(projectId, sample(), "clean-column-list.csv");
    const { reading, preview } = valueOf(await previewSchedule(by, file));
    expect(reading.counts).toMatchObject({ lifts: 14, errors: 0 });
    expect(preview.refused).toEqual([]);
    expect(await columnsOf(by, projectId)).toEqual([]);
    expect(valueOf(await importFile(by, file))).toEqual({ created: 14, changed: 0 });
    expect(await levelsOf(by, projectId)).toEqual(expected().levels.map(({ name, elevation_mm }) => [name, elevation_mm]));
    const key = (lift: { gridRef: string; fromElevation_mm?: number | undefined }): string => `${lift.gridRef} ${lift.fromElevation_mm}`;
    const columns = (await columnsOf(by, projectId)).map(({ id: _, ...column }) => column).sort((a, b) => key(a).localeCompare(key(b)));
    const lifts = expected().lifts.map(({ grids, ...lift }) => ({ ...lift, gridRef: grids[0] ?? "" })).sort((a, b) => key(a).localeCompare(key(b)));
    expect(columns).toEqual(lifts);
  });

  it("the same list a second time has nothing to import", async () => {
    const by = company.owner;
    const projectId = await anEmptyProject(by);
    valueOf(await importFile(by, aFile(projectId, sample())));
    const { preview } = valueOf(await previewSchedule(by, aFile(projectId, sample())));
    expect(preview.same).toHaveLength(14);
    expect(refusal(await importFile(by, aFile(projectId, sample())))).toBe("nothing-to-import");
  });
} else {
  it("not run: ../shared/samples/schedules/clean-column-list.csv or its reading is absent", () => {});
}
