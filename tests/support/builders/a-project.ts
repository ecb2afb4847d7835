import type { z } from "zod";
import type { createProjectInput, progressRule } from "#lib/contracts/projects.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { addColumns } from "#lib/server/columns/change-columns.ts";
import { getSetUp } from "#lib/server/projects/get-set-up.ts";
import { changeProject, createProject } from "#lib/server/projects/projects.ts";
import { saveGridLines, saveLevels, saveMarks } from "#lib/server/projects/save-lists.ts";
import { valueOf } from "./value-of.ts";

export const PROJECT: z.input<typeof createProjectInput> = {
  name: "Tern Street", site: "3 Tern Street", timeZone: "Australia/Brisbane", units: "metric", currency: "AUD", workingDays: [1, 2, 3, 4, 5],
};
const RISE_MM = 3600;

export type Project = {
  readonly projectId: string;
  /** By name. */
  readonly levels: Readonly<Record<string, string>>; readonly marks: Readonly<Record<string, string>>;
  /** Ids of the columns on the lowest lift, in the order of the grid references. */
  readonly columnIds: readonly string[]; readonly gridRefs: readonly string[];
};
type Wishes = { name?: string; levels?: readonly string[]; gridX?: readonly string[]; gridY?: readonly string[] };

const idsByName = (rows: readonly { id: string; name: string }[]): Record<string, string> =>
  Object.fromEntries(rows.map((row) => [row.name, row.id]));

/** A project with levels every 3.6 m, a grid of 6 m bays, one mark, and a column at every crossing of the lowest lift. */
export async function aProject(by: Caller, wishes: Wishes = {}): Promise<Project> {
  const { levels = ["Ground", "First", "Roof"], gridX = ["A", "B", "C"], gridY = ["1", "2"] } = wishes;
  const { id: projectId } = valueOf(await createProject(by, { ...PROJECT, name: wishes.name ?? PROJECT.name }));
  const rows = levels.map((name, index) => ({ name, elevationMm: index * RISE_MM, slabDepthMm: index === 0 ? 0 : 220, beamDepthMm: 450 }));
  valueOf(await saveLevels(by, { projectId, levels: rows }));
  const line = (axis: "along-x" | "along-y") => (name: string, index: number) => ({ axis, name, offsetMm: index * 6000 });
  valueOf(await saveGridLines(by, { projectId, gridLines: [...gridX.map(line("along-x")), ...gridY.map(line("along-y"))] }));
  valueOf(await saveMarks(by, { projectId, marks: [{ name: "K1", shape: "rectangle", widthMm: 350, depthMm: 500 }] }));
  const setUp = valueOf(await getSetUp(by, { projectId }));
  const [levelIds, marks] = [idsByName(setUp.levels), idsByName(setUp.marks)];
  const gridRefs = gridX.flatMap((x) => gridY.map((y) => `${x}/${y}`));
  const lift = { projectId, markId: marks["K1"] ?? "", fromLevelId: setUp.levels[0]?.id ?? "", toLevelId: setUp.levels[1]?.id ?? "", headedBy: "slab" as const };
  const { columnIds } = valueOf(await addColumns(by, { ...lift, gridRefs }));
  return { projectId, levels: levelIds, marks, columnIds, gridRefs };
}

/** The input that would change nothing about a project. */
export async function projectAsItIs(by: Caller, projectId: string) {
  const { project, progressRule: rule } = valueOf(await getSetUp(by, { projectId }));
  const { name, site, timeZone, units, currency, workingDays, startsOn, version } = project;
  return { projectId, version, name, site, timeZone, units, currency, workingDays: [...workingDays], startsOn, progressRule: rule };
}

/** Changes the project's stage rule, leaving all else as it is. */
export async function ruleFor(by: Caller, projectId: string, change: Partial<z.input<typeof progressRule>>): Promise<void> {
  const given = await projectAsItIs(by, projectId);
  valueOf(await changeProject(by, { ...given, progressRule: { ...given.progressRule, ...change } }));
}
