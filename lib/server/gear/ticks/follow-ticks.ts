import "server-only";
import { groupBy } from "#lib/kernel/group-by.ts";
import { columnNeeds } from "#lib/trade/gear/column-needs.ts";
import { followTicks, isFollowed, type ColumnGear, type Following } from "#lib/trade/gear/follow-ticks.ts";
import { Balances, TICK_KINDS, type Line, type TickKind } from "#lib/trade/gear/ledger.ts";
import type { ColumnState } from "#lib/trade/progress/column-state.ts";
import { columnForm } from "../../columns/column-form.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import type { readRules } from "../../projects/project-head.ts";
import { addClampItems } from "../ledger/item-store.ts";
import { addMovements, listItems, type PlaceRow } from "../ledger/ledger-store.ts";
import { projectPlaces } from "../ledger/place-store.ts";
import { addShortfalls, closeGone, columnPlaces, holdForTicks, listAssignedPanels, listClampItems, listFollowed, listLifts } from "./tick-store.ts";

type Column = Omit<ColumnGear, "placeId" | "panels" | "clamping">;
type Rules = ReturnType<typeof readRules>;

/**
 * Lets the ledger follow what the ticks now say of these columns, in the transaction that keeps them. Costs one question
 * where the project keeps no gear, and nothing more where no stage that moves gear has changed.
 */
export async function letGearFollow(scope: ProjectScope, states: ReadonlyMap<string, ColumnState>, rules: Rules): Promise<void> {
  const known = await listFollowed(scope, [...states.keys()]);
  if (known === null) return;
  const followed = groupBy(known.followed, ({ columnId }) => columnId);
  const noted = groupBy(known.noted, ({ columnId }) => columnId);
  const changed = [...states].map(([columnId, state]): Column => ({
    columnId, reached: reachedOf(state), setBackAt: state.setBacks.at(-1)?.at ?? null, followed: followed.get(columnId) ?? [],
    noted: (noted.get(columnId) ?? []).flatMap(({ kind, about }) => (about === "not in the ledger" ? [kind] : [])),
    goneOn: (noted.get(columnId) ?? []).flatMap(({ kind, about }) => (about === "gone on" ? [kind] : [])),
  })).filter(hasChanged);
  if (changed.length > 0) await write(scope, await follow(scope, changed, rules));
}

function reachedOf({ reached }: ColumnState): Column["reached"] {
  return Object.fromEntries(TICK_KINDS.flatMap((kind) => {
    const tick = reached[kind];
    return tick ? [[kind, { eventId: tick.eventId, at: tick.at }]] : [];
  }));
}

const hasChanged = ({ reached, ...column }: Column): boolean => TICK_KINDS.some((kind) => (reached[kind] !== undefined) !== isFollowed(column, kind));

const newly = (kind: TickKind, columns: readonly Column[]): string[] =>
  columns.filter((column) => column.reached[kind] && !isFollowed(column, kind)).map(({ columnId }) => columnId);

async function follow(scope: ProjectScope, changed: readonly Column[], rules: Rules): Promise<Following> {
  const places = await projectPlaces(scope);
  const atColumns = new Map((await columnPlaces(scope, changed.map(({ columnId }) => columnId))).map((place) => [place.columnId, place]));
  const stood = newly("stood", changed);
  const panels = groupBy(stood.length === 0 ? [] : await listAssignedPanels(scope, stood), ({ columnId }) => columnId);
  const clamping = await clampingOf(scope, newly("clamped", changed), rules);
  const columns = changed.map((column): ColumnGear => ({
    ...column, placeId: atColumns.get(column.columnId)?.id ?? "", panels: (panels.get(column.columnId) ?? []).map(({ itemId }) => itemId), clamping: clamping.get(column.columnId) ?? [],
  }));
  // What was put on the truck was meant for a column, so it goes first.
  const takenFrom = (["truck", "rack", "cleaning bay"] as const).flatMap((kind) => places.filter((place) => place.kind === kind && place.projectId !== null));
  const placeOf = new Map<string, PlaceRow>([...places, ...atColumns.values()].map((place) => [place.id, place]));
  const balances = await held(scope, columns, takenFrom);
  const items = new Map((await listItems(scope, [...new Set([...balances.map(({ itemId }) => itemId), ...wanted(columns)])])).map((item) => [item.id, item]));
  return followTicks(columns, {
    balances: new Balances(balances), item: (id) => items.get(id), place: (id) => placeOf.get(id), takenFrom: takenFrom.map(({ id }) => id),
    bay: takenFrom.find(({ kind }) => kind === "cleaning bay")?.id ?? "",
  });
}

const wanted = (columns: readonly ColumnGear[]): string[] =>
  columns.flatMap(({ panels, clamping, followed }) => [...panels, ...clamping.map(({ itemId }) => itemId), ...followed.flatMap(({ lines }) => lines.map(({ itemId }) => itemId))]);

async function held(scope: ProjectScope, columns: readonly ColumnGear[], takenFrom: readonly PlaceRow[]): Promise<Line[]> {
  const back = columns.flatMap(({ followed }) => followed.flatMap(({ lines }) => lines.map(({ placeId }) => placeId)));
  return holdForTicks(scope, {
    columnPlaceIds: columns.map(({ placeId }) => placeId), itemIds: [...new Set(wanted(columns))], handPlaceIds: [...new Set([...takenFrom.map(({ id }) => id), ...back])],
  });
}

/** Clamps and wedges by column, from the form set as it is designed now; nothing where there is no form set. */
async function clampingOf(scope: ProjectScope, columnIds: readonly string[], rules: Rules): Promise<Map<string, ColumnGear["clamping"]>> {
  if (columnIds.length === 0) return new Map();
  const [lifts, kinds] = [await listLifts(scope, columnIds), await listClampKindRows(scope)];
  let items = await listClampItems(scope);
  if (!kinds.every(({ id }) => items.some(({ clampKindId }) => clampKindId === id)) || !items.some(({ family }) => family === "wedge")) {
    await addClampItems(scope);
    items = await listClampItems(scope);
  }
  const wedge = items.find(({ family }) => family === "wedge")?.id;
  const designed = new Map<string, { kindId: string; clamps: number } | null>();
  return new Map(lifts.map((lift) => {
    const key = [lift.shape, lift.widthMm, lift.depthMm, lift.formHeightMm, lift.headedBy, lift.fromLevelId, lift.toLevelId].join(" ");
    if (!designed.has(key)) {
      const { formSet } = columnForm(lift, rules, kinds);
      designed.set(key, formSet.ok ? { kindId: formSet.value.clamps.kind.id, clamps: formSet.value.clamps.heights.length } : null);
    }
    const form = designed.get(key);
    const set = items.find(({ clampKindId, family }) => family === "clamp set" && clampKindId === form?.kindId);
    return [lift.id, form && set ? columnNeeds({ setId: set.id, clamps: form.clamps, wedgeId: wedge ?? null, wedgesEach: set.wedgesEach ?? 0 }) : []];
  }));
}

async function write(scope: ProjectScope, { movements, shortfalls, gone }: Following): Promise<void> {
  const reasonOf = (kind: string): string | null => (kind === "reversed" ? "The tick was taken back" : null);
  if (movements.length > 0) {
    await addMovements(scope, movements.map((movement) => ({ ...movement, id: newId(), projectId: scope.projectId, reason: reasonOf(movement.kind) })));
  }
  if (shortfalls.length > 0) await addShortfalls(scope, shortfalls);
  if (gone.length > 0) await closeGone(scope, gone);
}
