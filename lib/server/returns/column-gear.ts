import "server-only";
import { changeColumnGearInput } from "#lib/contracts/hire/column-gear.ts";
import { projectInput } from "#lib/contracts/projects.ts";
import { conflict, invalid, notFound, ok } from "#lib/kernel/result.ts";
import { clashOfRows } from "#lib/trade/planning/demand/column-gear.ts";
import { recordChange } from "../gate/change-line.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listCountedItems } from "../gear/ledger/item-store.ts";
import { projectHead } from "../projects/project-head.ts";
import { changeProjectRow, listLevels, readProject } from "../projects/store.ts";
import { readColumnGear } from "./basis/read-column-gear.ts";

/** Clamps and wedges come from each column's clamp layout; all else is counted by rows. */
const countedItems = async (scope: ProjectScope) =>
  (await listCountedItems(scope)).filter(({ family }) => family !== "clamp set" && family !== "wedge").map(({ id, name }) => ({ id, name }));

/** What every column holds beside its clamps, as the project's people entered it. */
export const getColumnGear = projectUseCase("returns.getColumnGear", "project.read", projectInput, async (scope) => {
  const project = await readProject(scope);
  const [items, levels] = [await countedItems(scope), (await listLevels(scope)).map(({ id, name }) => ({ id, name }))];
  const known = (row: { readonly itemId: string; readonly levelId: string | null }): boolean => items.some(({ id }) => id === row.itemId) && (row.levelId === null || levels.some(({ id }) => id === row.levelId));
  return ok({ project: projectHead(project), items, levels, rows: readColumnGear(project).rows.filter(known) });
});

export const changeColumnGear = projectUseCase("returns.changeColumnGear", "project.set-up", changeColumnGearInput, async (scope, { version, columnGear }) => {
  const [items, levels] = [await countedItems(scope), await listLevels(scope)];
  const strange = columnGear.rows.find(({ itemId, levelId }) => !items.some(({ id }) => id === itemId) || (levelId !== null && !levels.some(({ id }) => id === levelId)));
  if (strange) return notFound(items.some(({ id }) => id === strange.itemId) ? "level" : "gear item");
  const clash = clashOfRows(columnGear.rows);
  if (clash) return invalid({ field: `columnGear.rows.${clash[1]}.itemId`, message: `Counts the same item for the same columns as row ${clash[0] + 1}.` });
  if (!(await changeProjectRow(scope, version, { columnGear }))) return conflict("project");
  return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { changed: "gear of the columns" } }) });
});
