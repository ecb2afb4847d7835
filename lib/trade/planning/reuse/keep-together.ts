import { groupBy } from "#lib/kernel/group-by.ts";
import { demandBehind, type ReuseNetwork } from "./reuse-network.ts";
import { kindOfColumn, usesLeftAfter } from "./spread-uses.ts";

/**
 * Of plans that cost the same, one that carries sets as they are: column by column in order of start, its faces change
 * panels with others of the same size and place, so that as many as can be come from one set, or off one earlier column.
 * Nothing is changed that costs more or asks a panel too often. Good rather than best: earlier columns choose first.
 */
export function keepTogether(network: ReuseNetwork, columnOf: readonly number[]): number[] {
  const groups = groupBy(network.demands.map((demand, row) => ({ row, set: demand.set })).filter(({ set }) => set !== undefined), ({ set }) => set ?? "");
  const alike = columnsByKind(network);
  let plan = [...columnOf];
  const settled = new Set<number>();
  for (const group of groups.values()) {
    const rows = group.map(({ row }) => row);
    plan = gather(network, plan, rows, settled, alike);
    for (const row of rows) settled.add(row);
  }
  return plan;
}

const setOf = (network: ReuseNetwork, column: number): string | undefined => network.panels[column]?.set ?? network.demands[demandBehind(network, column)]?.set;

/** The same plan with more faces of one column from one set, where that can be. */
function gather(network: ReuseNetwork, plan: readonly number[], rows: readonly number[], settled: ReadonlySet<number>, alike: Alike): number[] {
  let best = { plan: [...plan], faces: mostOfOneSet(network, plan, rows) };
  const offers = rows.map((row) => {
    const costs = network.costs[row];
    const now = plan[row] ?? -1;
    return alike(now).filter((column) => costs?.[column] === costs?.[now]);
  });
  const sets = new Set(offers.flatMap((columns) => columns.flatMap((column) => setOf(network, column) ?? [])));
  for (const set of sets) {
    const from = offers.map((columns) => columns.filter((column) => setOf(network, column) === set));
    if (from.filter((columns) => columns.length > 0).length <= best.faces) continue;
    const tried = changeTo(network, plan, rows, from, settled);
    const faces = mostOfOneSet(network, tried, rows);
    if (faces > best.faces) best = { plan: tried, faces };
  }
  return best.plan;
}

type Alike = (column: number) => readonly number[];

/** The columns that may stand in for a column: of its kind, and in a set. */
function columnsByKind(network: ReuseNetwork): Alike {
  const kinds = Array.from({ length: network.panels.length + network.demands.length }, (_, column) => kindOfColumn(network, column));
  const inSets = kinds.map((kind, column) => ({ kind, column })).filter(({ column }) => setOf(network, column) !== undefined);
  const byKind = groupBy(inSets, ({ kind }) => kind);
  return (column) => (byKind.get(kinds[column] ?? "") ?? []).map((each) => each.column);
}

function changeTo(network: ReuseNetwork, plan: readonly number[], rows: readonly number[], from: readonly (readonly number[])[], settled: ReadonlySet<number>): number[] {
  let changed = [...plan];
  const given = new Set<number>();
  rows.forEach((row, index) => {
    const own = from[index] ?? [];
    const has = own.find((column) => column === changed[row] && !given.has(column));
    if (has !== undefined) {
      given.add(has);
      return;
    }
    for (const column of own) {
      if (given.has(column)) continue;
      const next = exchanged(network, changed, row, column, settled);
      if (!next) continue;
      changed = next;
      given.add(column);
      return;
    }
  });
  return changed;
}

/** The row takes the column, and whoever had it takes the row's; null where that costs more, comes too late or wears a panel out. */
function exchanged(network: ReuseNetwork, plan: readonly number[], row: number, column: number, settled: ReadonlySet<number>): number[] | null {
  const holder = plan.indexOf(column);
  const own = plan[row] ?? -1;
  if (settled.has(holder) || (holder >= 0 && network.costs[holder]?.[own] !== network.costs[holder]?.[column])) return null;
  const next = [...plan];
  next[row] = column;
  if (holder >= 0) next[holder] = own;
  return usesLeftAfter(network, next).every((left) => left >= 0) ? next : null;
}

function mostOfOneSet(network: ReuseNetwork, plan: readonly number[], rows: readonly number[]): number {
  const counts = new Map<string, number>();
  for (const row of rows) {
    const set = setOf(network, plan[row] ?? -1);
    if (set !== undefined) counts.set(set, (counts.get(set) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values());
}
