import { groupBy } from "#lib/kernel/group-by.ts";
import { addDays, dayIn } from "#lib/kernel/days.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { addColumns, changeMarkOnLevel } from "#lib/server/columns/change-columns.ts";
import { getSetUp } from "#lib/server/projects/get-set-up.ts";
import { createProject } from "#lib/server/projects/projects.ts";
import { saveGridLines, saveLevels, saveMarks } from "#lib/server/projects/save-lists.ts";
import { must } from "./must.ts";
import type { Site } from "./scenario.ts";

export type LaidColumn = { readonly id: string; readonly level: string; readonly place: number };

/** Creates one site with its levels, grid, marks and columns. */
export async function layOutSite(caller: Caller, site: Site, startedDaysAgo: number): Promise<{ projectId: string; columns: LaidColumn[] }> {
  const startsOn = addDays(dayIn(new Date().toISOString(), site.project.timeZone), -startedDaysAgo);
  const { id: projectId } = must("create a project", await createProject(caller, { ...site.project, startsOn }));
  must("set levels", await saveLevels(caller, { projectId, levels: [...site.levels] }));
  const gridLines = [
    ...site.alongX.map(([name, offsetMm]) => ({ axis: "along-x" as const, name, offsetMm })),
    ...site.alongY.map(([name, offsetMm]) => ({ axis: "along-y" as const, name, offsetMm })),
  ];
  must("set the grid", await saveGridLines(caller, { projectId, gridLines }));
  const marks = Object.entries(site.marks).map(([name, [shape, widthMm, depthMm]]) => ({ name, shape, widthMm, depthMm }));
  must("set marks", await saveMarks(caller, { projectId, marks }));
  const setUp = must("read the set-up", await getSetUp(caller, { projectId }));
  const markId = (name: string): string => setUp.marks.find((mark) => mark.name === name)?.id ?? "";
  const positions = site.alongY.flatMap(([y], row) => site.alongX.map(([x], column) => ({ ref: `${x}/${y}`, mark: site.markAt(column, row) })));

  const columns: LaidColumn[] = [];
  for (const [index, level] of setUp.levels.slice(0, -1).entries()) {
    for (const [mark, group] of groupBy(positions, (position) => position.mark)) {
      const lift = { projectId, markId: markId(mark), fromLevelId: level.id, toLevelId: setUp.levels[index + 1]?.id ?? "", headedBy: mark === "C1" ? ("beam" as const) : ("slab" as const) };
      const { columnIds } = must("add columns", await addColumns(caller, { ...lift, gridRefs: group.map(({ ref }) => ref) }));
      for (const [which, id] of columnIds.entries()) {
        columns.push({ id, level: level.name, place: positions.findIndex(({ ref }) => ref === group[which]?.ref) });
      }
      const smaller = site.shrinks.find((shrink) => shrink.mark === mark && shrink.fromLevel === level.name)?.size;
      if (!smaller) continue;
      const [shape, widthMm, depthMm] = smaller;
      must("change sizes", await changeMarkOnLevel(caller, { projectId, markId: lift.markId, fromLevelId: level.id, shape, widthMm, depthMm, headedBy: lift.headedBy }));
    }
  }
  return { projectId, columns };
}
