import "server-only";
import { saveGridLinesInput, saveLevelsInput, saveMarksInput } from "#lib/contracts/projects.ts";
import { brokenRule, conflict, invalid, ok, type Problem, type Result } from "#lib/kernel/result.ts";
import { recordChange, takeNumbers } from "../gate/change-line.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { clashOf } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { listStamp, replaceList, type ListRow } from "./list-store.ts";
import { listGridLines, listLevels, listMarks } from "./store.ts";

type Item = { id?: string | undefined };

/** Rows whose key repeats an earlier one, each named with its place in the list. */
function repeats<T>(items: readonly T[], list: string, field: string, key: (item: T) => string): Problem[] {
  const seen = new Map<string, number>();
  return items.flatMap((item, index) => {
    const earlier = seen.get(key(item));
    if (earlier === undefined) seen.set(key(item), index);
    return earlier === undefined ? [] : [{ field: `${list}.${index}.${field}`, message: `The same as row ${earlier + 1}.` }];
  });
}

/** Ids the project does not know are a stale page, not a wish for new rows; so is a list that somebody else has saved since. The project is held until this save is through. */
async function isStale(scope: ProjectScope, items: readonly Item[], seen: string | undefined, list: (scope: ProjectScope) => Promise<readonly { id: string }[]>): Promise<boolean> {
  await takeNumbers(scope, 0);
  const known = await list(scope);
  return (seen !== undefined && seen !== listStamp(known)) || items.some((item) => item.id !== undefined && !known.some((row) => row.id === item.id));
}

async function save(
  scope: ProjectScope, list: "level" | "gridLine" | "mark", rows: readonly ListRow[],
): Promise<Result<{ seq: number }>> {
  try {
    await replaceList(scope, list, rows);
  } catch (error) {
    if (clashOf(error) === "still-used") return brokenRule("still-used-by-columns", { what: list });
    throw error;
  }
  return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { list, rows: rows.length } }) });
}

const identity = (item: Item) => ({ id: item.id ?? newId(), isNew: item.id === undefined });

export const saveLevels = projectUseCase("projects.saveLevels", "project.set-up", saveLevelsInput, async (scope, { levels, seen }) => {
  const problems = [
    ...repeats(levels, "levels", "name", (level) => level.name.toUpperCase()),
    ...repeats(levels, "levels", "elevationMm", (level) => String(level.elevationMm)),
  ];
  if (problems.length > 0) return invalid(...problems);
  if (await isStale(scope, levels, seen, listLevels)) return conflict("list of levels");
  const rows = levels.map((level) => ({
    ...identity(level), name: level.name, elevation_mm: level.elevationMm,
    slab_depth_mm: level.slabDepthMm, beam_depth_mm: level.beamDepthMm,
  }));
  return save(scope, "level", rows);
});

export const saveGridLines = projectUseCase(
  "projects.saveGridLines", "project.set-up", saveGridLinesInput, async (scope, { gridLines, seen }) => {
    const problems = [
      ...repeats(gridLines, "gridLines", "name", (grid) => `${grid.axis} ${grid.name.toUpperCase()}`),
      ...repeats(gridLines, "gridLines", "offsetMm", (grid) => `${grid.axis} ${grid.offsetMm}`),
    ];
    if (problems.length > 0) return invalid(...problems);
    if (await isStale(scope, gridLines, seen, listGridLines)) return conflict("list of grid lines");
    const rows = gridLines.map((grid) => ({ ...identity(grid), axis: grid.axis, name: grid.name, offset_mm: grid.offsetMm }));
    return save(scope, "gridLine", rows);
  },
);

export const saveMarks = projectUseCase("projects.saveMarks", "project.set-up", saveMarksInput, async (scope, { marks, seen }) => {
  const problems = repeats(marks, "marks", "name", (mark) => mark.name.toUpperCase());
  if (problems.length > 0) return invalid(...problems);
  if (await isStale(scope, marks, seen, listMarks)) return conflict("list of marks");
  const rows = marks.map((mark) => ({
    ...identity(mark), name: mark.name, shape: mark.shape, width_mm: mark.widthMm,
    depth_mm: mark.shape === "circle" ? mark.widthMm : mark.depthMm,
  }));
  return save(scope, "mark", rows);
});
