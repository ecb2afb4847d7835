import "server-only";
import { gatherInput } from "#lib/contracts/gear.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { ok } from "#lib/kernel/result.ts";
import { columnNeeds } from "#lib/trade/gear/column-needs.ts";
import { gatherList, type GatherFor } from "#lib/trade/gear/gather.ts";
import { panelLife } from "#lib/trade/gear/panel-life.ts";
import type { FormSet } from "#lib/trade/shutter/form-set.ts";
import { columnForm } from "../../columns/column-form.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { projectHead, readRules } from "../../projects/project-head.ts";
import { readProject, type ProjectRow } from "../../projects/store.ts";
import { listCountedItems } from "../ledger/item-store.ts";
import { listStandings, type Standing } from "../ledger/ledger-store.ts";
import { listOpenPlaces } from "../ledger/place-store.ts";
import { listPanels } from "../panels/panel-store.ts";
import { listReservedLines, type ReservedLine } from "../reserved/reserved-lines.ts";
import { listHolders } from "../reserved/reserved-store.ts";
import { listAssignedPanels, listClampItems } from "../ticks/tick-store.ts";
import { listColumnsToStand, listMovements, type ColumnToStand } from "./gear-store.ts";

/** Where a crew takes gear from, the first first: what is on the truck was put there for a column. */
const AT_HAND = ["truck", "rack", "cleaning bay", "yard"] as const;
const reach = (kind: string): number => (AT_HAND as readonly string[]).indexOf(kind);

/** What to take, cut and order for the columns chosen, or for those planned to be stood on a day. */
export const gather = projectUseCase("gear.gather", "gear.read", gatherInput, async (scope, { columnIds, on }) => {
  const project = await readProject(scope);
  const open = (await listColumnsToStand(scope)).sort((a, b) => a.elevationMm - b.elevationMm || naturalOrder(a.gridRef, b.gridRef));
  const chosen = open.filter((column) => (columnIds ? columnIds.includes(column.id) : on !== undefined && column.stoodOn === on));
  const standings = await listStandings(scope, scope.projectId);
  const panels = await listPanels(scope, { projectId: scope.projectId });
  const stocked = standings.filter(({ kind, family }) => family !== "panel" && reach(kind) >= 0).sort((a, b) => reach(a.kind) - reach(b.kind));
  const reserved = await listReservedLines(scope, chosen.map(({ id }) => id));
  const held = new Set((await listHolders(scope, null)).map(({ itemId }) => itemId));
  const list = gatherList(await needsOf(scope, chosen, project, { standings, reserved }), stocked, panels.map((panel) => {
    const { ended, demoted, damaged } = panelLife(panel, panel.events, panel.strippedAt);
    return { ...panel, isAtHand: panel.placeKind !== null && reach(panel.placeKind) >= 0, isFree: panel.setId === null && !ended && !demoted && !damaged && !held.has(panel.itemId) };
  }));
  const names = {
    items: Object.fromEntries([...(await listCountedItems(scope)).map(({ id, name }) => [id, name]), ...panels.map(({ itemId, name }) => [itemId, name])]) as Record<string, string>,
    places: Object.fromEntries([...standings.map(({ placeId, place }) => [placeId, place]), ...panels.flatMap(({ placeId, place }) => (placeId ? [[placeId, place]] : []))]) as Record<string, string>,
  };
  const waiting = { comesOff: reserved.filter(({ standing, itemId }) => standing === "comes-off" && itemId === null), cutDown: reserved.filter(({ standing }) => standing === "cut-down") };
  const places = await listOpenPlaces(scope, scope.projectId);
  return ok({
    project: projectHead(project), open, chosen, list, waiting, names, readAt: scope.now, on: on ?? null, trucks: places.filter(({ kind }) => kind === "truck").map(({ id, name }) => ({ id, name })),
    kinds: Object.fromEntries(places.map(({ id, kind }) => [id, kind])) as Record<string, string>, gathered: chosen.length === 0 ? [] : await listMovements(scope, { gathered: true, most: 20 }), role: scope.member.role,
  });
});
export type GatherPage = Extract<Awaited<ReturnType<typeof gather>>, { ok: true }>["value"];

type Known = { readonly standings: readonly Standing[]; readonly reserved: readonly ReservedLine[] };

async function needsOf(scope: ProjectScope, columns: readonly ColumnToStand[], project: ProjectRow, { standings, reserved }: Known): Promise<GatherFor[]> {
  const [kinds, items] = [await listClampKindRows(scope), await listClampItems(scope)];
  const assigned = groupBy(await listAssignedPanels(scope, columns.map(({ id }) => id)), ({ columnId }) => columnId);
  const wedgeId = items.find(({ family }) => family === "wedge")?.id ?? null;
  const rules = readRules(project);
  const designs = new Map<string, FormSet | null>();
  return columns.map((column) => {
    const key = [column.shape, column.widthMm, column.depthMm, column.formHeightMm, column.headedBy, column.fromLevelId, column.toLevelId].join(" ");
    let form = designs.get(key);
    if (form === undefined) {
      const { formSet } = columnForm(column, rules, kinds);
      designs.set(key, (form = formSet.ok ? formSet.value : null));
    }
    const ofSet = (assigned.get(column.id) ?? []).map(({ itemId }) => itemId);
    const spoken = ofSet.length > 0 ? [] : reserved.filter(({ columnId }) => columnId === column.id);
    const panels = [...ofSet, ...spoken.flatMap(({ itemId, standing }) => (standing === "cut-down" ? [] : itemId ?? []))];
    const own = standings.filter(({ columnId, quantity }) => columnId === column.id && quantity > 0);
    const known = { columnId: column.id, placeId: own[0]?.placeId ?? null, there: own.map(({ itemId, quantity }) => ({ itemId, quantity })), panels };
    if (form === null) return { ...known, faces: [], clamping: [], fillets: null };
    const toFind = ofSet.length > 0 ? [] : form.panels.filter(({ face }) => !spoken.some((line) => line.face === face && line.standing !== "make"));
    const set = items.find(({ family, clampKindId }) => family === "clamp set" && clampKindId === form.clamps.kind.id);
    const fillet = toFind.length === 0 ? undefined : form.cutting.find(({ part }) => part === "fillet");
    return {
      ...known, faces: toFind.map(({ face, width, height }) => ({ face, widthMm: width, heightMm: height })),
      clamping: set ? columnNeeds({ setId: set.id, clamps: form.clamps.heights.length, wedgeId, wedgesEach: set.wedgesEach ?? 0 }) : [],
      fillets: fillet ? { lengthMm: fillet.length, count: fillet.count } : null,
    };
  });
}
