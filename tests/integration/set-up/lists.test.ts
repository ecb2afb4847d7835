import { beforeAll, describe, expect, it } from "vitest";
import { getSetUp } from "#lib/server/projects/get-set-up.ts";
import { changeProject } from "#lib/server/projects/projects.ts";
import { saveGridLines, saveLevels, saveMarks } from "#lib/server/projects/save-lists.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, projectAsItIs } from "#tests/support/builders/a-project.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Brook Boxing")));

/** As the pages send them back: what was read, with its id. */
type Known<T> = (T & { id: string })[];
type Lists = {
  levels: Known<Parameters<typeof saveLevels>[1]["levels"][number]>;
  gridLines: Known<Parameters<typeof saveGridLines>[1]["gridLines"][number]>;
  marks: Known<Parameters<typeof saveMarks>[1]["marks"][number]>;
};

let count = 0;
async function aSite() {
  const by = company.office;
  const project = await aProject(by, { name: `Site ${(count += 1)}` });
  const { projectId } = project;
  const now = async (): Promise<Lists> => {
    const { levels, gridLines, marks } = valueOf(await getSetUp(by, { projectId }));
    return { levels, gridLines, marks } as Lists;
  };
  return { by, project, projectId, now };
}
const swapped = <T, K extends keyof T>(rows: readonly T[], keys: readonly K[]): T[] => {
  const [first, second, ...rest] = rows;
  if (!first || !second) throw new Error("two rows are needed");
  const taken = (row: T, from: T): T => ({ ...row, ...Object.fromEntries(keys.map((key) => [key, from[key]])) });
  return [taken(first, second), taken(second, first), ...rest];
};
const byId = <T extends { id: string }>(rows: readonly T[]): T[] => [...rows].sort((a, b) => a.id.localeCompare(b.id));

describe("a list saved as a whole", () => {
  it("lets two levels change names, heights, or both, at once", async () => {
    const { by, projectId, now } = await aSite();
    for (const keys of [["name"], ["elevationMm"], ["name", "elevationMm"]] as const) {
      const wanted = swapped((await now()).levels, keys);
      valueOf(await saveLevels(by, { projectId, levels: wanted }));
      expect(byId((await now()).levels)).toEqual(byId(wanted));
    }
  });

  it("lets two grid lines and two marks change names", async () => {
    const { by, projectId, now } = await aSite();
    const gridLines = swapped((await now()).gridLines, ["name"]);
    valueOf(await saveGridLines(by, { projectId, gridLines }));
    expect(byId((await now()).gridLines)).toEqual(byId(gridLines));
    valueOf(await saveMarks(by, { projectId, marks: [...(await now()).marks, { name: "K2", shape: "circle", widthMm: 450, depthMm: 450 }] }));
    const marks = swapped((await now()).marks, ["name"]);
    valueOf(await saveMarks(by, { projectId, marks }));
    expect(byId((await now()).marks)).toEqual(byId(marks));
  });

  it("takes the name of a row removed in the same save", async () => {
    const { by, projectId, now } = await aSite();
    const levels = (await now()).levels;
    const roof = levels.find(({ name }) => name === "Roof");
    const kept = levels.filter((level) => level !== roof);
    valueOf(await saveLevels(by, { projectId, levels: [...kept, { name: "Roof", elevationMm: 9000, slabDepthMm: 200, beamDepthMm: 400 }] }));
    const after = (await now()).levels;
    expect(after.map(({ name, elevationMm }) => [name, elevationMm])).toEqual([["Ground", 0], ["First", 3600], ["Roof", 9000]]);
    expect(after.at(-1)?.id).not.toBe(roof?.id);
  });

  it("keeps what columns stand on, and then writes nothing of the rest either", async () => {
    const { by, projectId, now } = await aSite();
    const before = await now();
    const without = before.levels.filter(({ name }) => name !== "First").map((level) => ({ ...level, name: `${level.name} changed`, elevationMm: level.elevationMm + 5 }));
    expect(refusal(await saveLevels(by, { projectId, levels: [...without, { name: "New", elevationMm: 50_000, slabDepthMm: 0, beamDepthMm: 0 }] }))).toBe("still-used-by-columns");
    expect(refusal(await saveGridLines(by, { projectId, gridLines: [] }))).toBe("still-used-by-columns");
    expect(refusal(await saveMarks(by, { projectId, marks: [] }))).toBe("still-used-by-columns");
    expect(await now()).toEqual(before);
  });

  it("refuses a name or a height twice, naming the row", async () => {
    const { by, projectId, now } = await aSite();
    const levels = (await now()).levels.map((level, index) => (index < 2 ? { ...level, name: ["same", "SAME"][index] ?? "", elevationMm: 0 } : level));
    const answer = await saveLevels(by, { projectId, levels });
    expect(answer).toMatchObject({ ok: false, failure: { kind: "invalid", problems: [{ field: "levels.1.name" }, { field: "levels.1.elevationMm" }] } });
  });

  it("from a stale page is a conflict: a row gone since, or one of another project", async () => {
    const { by, projectId, now } = await aSite();
    const other = await aSite();
    const { levels, gridLines } = await now();
    valueOf(await saveLevels(by, { projectId, levels: levels.filter(({ name }) => name !== "Roof") }));
    expect(refusal(await saveLevels(by, { projectId, levels }))).toBe("conflict");
    const foreign = (await other.now()).gridLines;
    expect(refusal(await saveGridLines(by, { projectId, gridLines: foreign }))).toBe("conflict");
    expect((await now()).gridLines).toEqual(gridLines);
    expect((await other.now()).gridLines).toEqual(foreign);
  });
});

describe("a list saved by two who read the same", () => {
  it("keeps the first and tells the second, also where both save at once", async () => {
    const { by, projectId, now } = await aSite();
    const read = async () => valueOf(await getSetUp(by, { projectId }));
    const { stamps } = await read();
    const { levels, gridLines, marks } = await now();
    const higher = levels.map((level) => ({ ...level, slabDepthMm: level.slabDepthMm + 10 }));
    const both = await Promise.all([saveLevels(by, { projectId, seen: stamps.levels, levels: higher }), saveLevels(company.owner, { projectId, seen: stamps.levels, levels })]);
    // The same rows again are no change, so then both may pass; otherwise one is told.
    expect(both.map(refusal).filter((code) => code !== null)).toEqual(both[0].ok && both[1].ok ? [] : ["conflict"]);
    valueOf(await saveGridLines(by, { projectId, seen: stamps.gridLines, gridLines: swapped(gridLines, ["name"]) }));
    expect(refusal(await saveGridLines(by, { projectId, seen: stamps.gridLines, gridLines }))).toBe("conflict");
    valueOf(await saveMarks(by, { projectId, seen: stamps.marks, marks: [...marks, { name: "K9", shape: "circle", widthMm: 450, depthMm: 450 }] }));
    expect(refusal(await saveMarks(by, { projectId, seen: stamps.marks, marks }))).toBe("conflict");
    // Having looked again, it is saved.
    valueOf(await saveMarks(by, { projectId, seen: (await read()).stamps.marks, marks: (await now()).marks }));
  });
});

describe("the project", () => {
  it("changed by two from the same page keeps the first and tells the second", async () => {
    const { by, projectId } = await aSite();
    const given = await projectAsItIs(by, projectId);
    const both = await Promise.all([changeProject(by, { ...given, site: "First gate" }), changeProject(company.owner, { ...given, site: "Second gate" })]);
    expect(both.map(refusal).sort()).toEqual(["conflict", null].sort());
    expect((await projectAsItIs(by, projectId)).site).toBe(both[0].ok ? "First gate" : "Second gate");
  });

  it("has a name of its own within the company", async () => {
    const [one, other] = [await aSite(), await aSite()];
    const { name } = await projectAsItIs(one.by, one.projectId);
    expect(refusal(await changeProject(other.by, { ...(await projectAsItIs(other.by, other.projectId)), name }))).toBe("project-name-taken");
  });
});
