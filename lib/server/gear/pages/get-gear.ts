import "server-only";
import { gearColumnInput, gearInput, gearItemInput, movementsInput, projectInput } from "#lib/contracts/gear.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import { findColumn } from "../../columns/store.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { projectHead } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { listCountedItems } from "../ledger/item-store.ts";
import { listItems, listStandings, listStandingsAt } from "../ledger/ledger-store.ts";
import { listOpenPlaces } from "../ledger/place-store.ts";
import { listMovements, listShortfalls } from "./gear-store.ts";

/** What is where, now or as of a moment; what is to be settled comes with it. */
export const getGear = projectUseCase("gear.getGear", "gear.read", gearInput, async (scope, { at }) => {
  const standings = at === undefined ? await listStandings(scope, scope.projectId) : await listStandingsAt(scope, scope.projectId, at);
  return ok({
    project: projectHead(await readProject(scope)), standings, shortfalls: await listShortfalls(scope), items: await listCountedItems(scope),
    places: await listOpenPlaces(scope, scope.projectId), at: at ?? null, readAt: scope.now, role: scope.member.role,
  });
});
export type GearPage = Extract<Awaited<ReturnType<typeof getGear>>, { ok: true }>["value"];

const MOST = 50;

export const getMovements = projectUseCase("gear.getMovements", "gear.read", movementsInput, async (scope, { before }) => {
  const rows = await listMovements(scope, { before, most: MOST + 1 });
  return ok({ project: projectHead(await readProject(scope)), movements: rows.slice(0, MOST), older: rows.length > MOST ? (rows[MOST - 1]?.seq ?? null) : null, role: scope.member.role });
});

/** One item: where it is, and every movement it was in. */
export const getGearItem = projectUseCase("gear.getItem", "gear.read", gearItemInput, async (scope, { itemId }) => {
  const [item] = await listItems(scope, [itemId]);
  if (!item) return notFound("gear item");
  const standings = (await listStandings(scope, scope.projectId)).filter((standing) => standing.itemId === itemId);
  const kept = (await listCountedItems(scope)).find(({ id }) => id === itemId) ?? null;
  return ok({ project: projectHead(await readProject(scope)), item, kept, standings, movements: await listMovements(scope, { itemId, most: 200 }), role: scope.member.role });
});

/** Everything that can be counted, the places it can be at, and the clamp kinds no item stands for yet. */
export const getItems = projectUseCase("gear.getItems", "gear.read", projectInput, async (scope) => {
  const items = await listCountedItems(scope);
  const kinds = (await listClampKindRows(scope)).map(({ id, name }) => ({ id, name, hasSet: items.some(({ family, clampKindId }) => family === "clamp set" && clampKindId === id) }));
  return ok({ project: projectHead(await readProject(scope)), items, places: (await listOpenPlaces(scope, scope.projectId)).filter(({ kind }) => kind !== "supplier"), kinds, role: scope.member.role });
});

/** What lies at one column, and whether its clamped tick brings clamps: a round column has none of this tool's forms. */
export const getColumnGear = projectUseCase("gear.getColumnGear", "gear.read", gearColumnInput, async (scope, { columnId }) => {
  const column = await findColumn(scope, columnId);
  if (!column) return notFound("column");
  const here = (await listStandings(scope, scope.projectId)).filter((standing) => standing.columnId === columnId);
  return ok({ here: here.map(({ itemId, item, family, quantity }) => ({ itemId, item, family, quantity })), isRound: column.shape === "circle", mayGather: !hasDone(column.done, "stood") });
});
