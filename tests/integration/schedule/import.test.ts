import { beforeAll, describe, expect, it } from "vitest";
import { importSchedule } from "#lib/server/columns/import-schedule.ts";
import { previewSchedule } from "#lib/server/columns/schedule-preview.ts";
import { getSetUp } from "#lib/server/projects/get-set-up.ts";
import { saveLevels } from "#lib/server/projects/save-lists.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aCsv, ELEVATIONS } from "#tests/support/builders/a-schedule.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask, withOwner } from "#tests/support/raw-sql.ts";
import { aFile, anEmptyProject, columnsOf, importFile, levelsOf } from "./imported.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Reed Boxing")));

const TWO_LIFTS = [
  ["K1", "A/1", "300x450", "L1", "L2", 0, 3500],
  ["K1", "A/1", "300x400", "L2", "L3", 3500, 7000],
] as const;
const withHeights = (rows: readonly (readonly (string | number)[])[]) => aCsv(rows, ELEVATIONS);

async function aTwoLiftProject() {
  const by = company.office;
  const projectId = await anEmptyProject(by);
  valueOf(await importFile(by, aFile(projectId, withHeights(TWO_LIFTS))));
  return { by, projectId };
}

describe("what the preview showed", () => {
  it("is taken in only while it is still so", async () => {
    const { by, projectId } = await aTwoLiftProject();
    const file = aFile(projectId, withHeights([["K1", "A/1", "350x450", "L1", "L2", 0, 3500], ["K2", "B/1", "300x300", "L1", "L2", 0, 3500]]));
    const { digest } = valueOf(await previewSchedule(by, file));
    const { levels } = valueOf(await getSetUp(by, { projectId }));
    valueOf(await saveLevels(by, { projectId, levels: levels.map((level) => (level.name === "L2" ? { ...level, elevationMm: 3400 } : level)) }));
    const before = await columnsOf(by, projectId);
    expect(refusal(await importSchedule(by, { ...file, digest }))).toBe("conflict");
    expect(await columnsOf(by, projectId)).toEqual(before);
  });

  it("is not another file's", async () => {
    const { by, projectId } = await aTwoLiftProject();
    const shown = aFile(projectId, withHeights([["K1", "A/1", "350x450", "L1", "L2", 0, 3500]]));
    const { digest } = valueOf(await previewSchedule(by, shown));
    expect(refusal(await importSchedule(by, { ...aFile(projectId, withHeights([["K1", "A/1", "900x900", "L1", "L2", 0, 3500]])), digest }))).toBe("conflict");
  });

  it("confirmed twice at once is taken in once", async () => {
    const { by, projectId } = await aTwoLiftProject();
    const file = aFile(projectId, withHeights([["K2", "B/1", "300x300", "L1", "L2", 0, 3500]]));
    const { digest } = valueOf(await previewSchedule(by, file));
    const both = await Promise.all([importSchedule(by, { ...file, digest }), importSchedule(company.owner, { ...file, digest })]);
    expect(both.map(refusal).sort()).toEqual(["conflict", null].sort());
    expect(await columnsOf(by, projectId)).toHaveLength(3);
  });
});

describe("levels", () => {
  it("may move up through each other's old heights", async () => {
    const { by, projectId } = await aTwoLiftProject();
    valueOf(await importFile(by, aFile(projectId, withHeights([["K1", "A/1", "300x450", "L1", "L2", 0, 7000], ["K1", "A/1", "300x400", "L2", "L3", 7000, 10_500]]))));
    expect(await levelsOf(by, projectId)).toEqual([["L1", 0], ["L2", 7000], ["L3", 10_500]]);
  });

  it("may not land where a level stands that the file does not mention", async () => {
    const { by, projectId } = await aTwoLiftProject();
    const file = aFile(projectId, withHeights([["K1", "A/1", "300x450", "L1", "L2", 0, 7000]]));
    const { preview } = valueOf(await previewSchedule(by, file));
    expect(preview.change.levels).toEqual([]);
    expect(preview.refused.map(({ message }) => message).join()).toContain("L3");
    expect(refusal(await importFile(by, file))).toBe("nothing-to-import");
    expect(await levelsOf(by, projectId)).toEqual([["L1", 0], ["L2", 3500], ["L3", 7000]]);
  });
});

describe("a column", () => {
  it("changes size before its pour, and not after", async () => {
    const { by, projectId } = await aTwoLiftProject();
    const [lower] = (await columnsOf(by, projectId)).filter(({ fromLevel }) => fromLevel === "L1");
    const bigger = aFile(projectId, withHeights([["K1", "A/1", "350x450", "L1", "L2", 0, 3500], TWO_LIFTS[1]]));
    expect(valueOf(await importFile(by, bigger))).toEqual({ created: 0, changed: 1 });
    const pour = { ...aTick(lower?.id ?? "", "poured"), reason: "Gate released by telephone" };
    valueOf(await recordSiteEvents(company.leadingHand, { projectId, events: [pour] }));

    const evenBigger = aFile(projectId, withHeights([["K1", "A/1", "400x450", "L1", "L2", 0, 3500], ["K1", "A/1", "300x350", "L2", "L3", 3500, 7000]]));
    const { preview } = valueOf(await previewSchedule(by, evenBigger));
    expect(preview.refused).toHaveLength(1);
    expect(preview.refused[0]?.message).toContain("poured already");
    expect(valueOf(await importFile(by, evenBigger))).toEqual({ created: 0, changed: 1 });
    expect((await columnsOf(by, projectId)).map(({ fromLevel, width_mm, depth_mm }) => [fromLevel, width_mm, depth_mm]).sort()).toEqual([["L1", 350, 450], ["L2", 300, 350]]);
  });

  it("poured holds its levels where they are", async () => {
    const { by, projectId } = await aTwoLiftProject();
    const [lower] = (await columnsOf(by, projectId)).filter(({ fromLevel }) => fromLevel === "L1");
    valueOf(await recordSiteEvents(by === company.office ? company.owner : by, { projectId, events: [{ ...aTick(lower?.id ?? "", "poured"), reason: "By telephone" }] }));
    const file = aFile(projectId, withHeights([["K1", "A/1", "300x450", "L1", "L2", 0, 3600]]));
    expect(refusal(await importFile(by, file))).toBe("nothing-to-import");
  });
});

const MANY = 5000;
const manyLifts = (): (string | number)[][] =>
  Array.from({ length: MANY }, (_, index) => {
    const [place, storey] = [Math.floor(index / 10), index % 10];
    return [`K${place % 30}`, `${String.fromCharCode(65 + (place % 20))}/${Math.floor(place / 20) + 1}`, `${300 + 50 * (storey % 3)}x450`, `L${storey}`, `L${storey + 1}`, storey * 3300, (storey + 1) * 3300];
  });

describe("a large schedule", () => {
  it(`of ${MANY} rows is one transaction`, async () => {
    const by = company.owner;
    const projectId = await anEmptyProject(by);
    expect(valueOf(await importFile(by, aFile(projectId, withHeights(manyLifts()))))).toEqual({ created: MANY, changed: 0 });
    const parts = ["column_lift", "level", "grid_line", "column_mark", "schedule_import", "change_line"].map((table) => `select xmin::text from ${table} where project_id = $1`);
    expect(await ask(database.url, parts.join(" union "), [projectId])).toHaveLength(1);
    expect(await columnsOf(by, projectId)).toHaveLength(MANY);
  });

  it("that fails at its last step leaves nothing of itself", async () => {
    const by = company.owner;
    const projectId = await anEmptyProject(by);
    const file = aFile(projectId, withHeights(manyLifts()));
    const { digest } = valueOf(await previewSchedule(by, file));
    await withOwner(database.url, async (client) => {
      await client.query(`create function fail_for_test() returns trigger language plpgsql as $$ begin raise exception 'the disk is full'; end $$;
        create trigger fail_for_test before insert on schedule_import for each row execute function fail_for_test()`);
      await expect(importSchedule(by, { ...file, digest })).rejects.toThrow();
      await client.query("drop trigger fail_for_test on schedule_import");
    });
    const left = ["column_lift", "level", "grid_line", "column_mark", "schedule_import", "change_line"].map((table) => `(select count(*) from ${table} where project_id = $1)`);
    expect(await ask(database.url, `select (${left.join(" + ")})::int as rows, (select last_seq::int from project where id = $1) as seq`, [projectId])).toEqual([{ rows: 0, seq: 0 }]);
    expect((await importSchedule(by, { ...file, digest })).ok).toBe(true);
  });
});
