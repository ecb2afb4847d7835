import type { LinearModel } from "#lib/kernel/linear-model.ts";
import type { DemandClass, UseClasses } from "./use-classes.ts";

/** One variable: how many of a class are served from the rack of a kind with `usesLeft`; kind null is new panels. */
export type Serving = { readonly group: DemandClass; readonly kind: number | null; readonly usesLeft: number; readonly cost: number };
type Node = { readonly kind: number; readonly usesLeft: number; readonly day: number };
type Entry = { readonly row: number; readonly value: number };

/**
 * Racks by kind and uses left, carried from day to day: what lies there and what comes in is what goes out and what stays.
 * A panel that served with u uses left comes back to the rack of the demand's kind with u - 1; uses nobody can still ask
 * for are not told apart. Whole numbers, least cost.
 */
export function limitedUsesModel(classes: UseClasses, newPanelUses: number | null): { model: LinearModel; servings: readonly Serving[] } {
  const servings = classes.classes.flatMap((group) => servingsOf(classes, group, newPanelUses));
  const { nodes, nodeAt } = rackNodes(classes, servings);
  const balance = new Float64Array(classes.classes.length + nodes.length);
  classes.classes.forEach((group, row) => { balance[row] = group.rows.length; });
  for (const { kind, usesLeft, day } of classes.arrivals) {
    const row = nodeAt(kind, usesLeft, day);
    if (row !== null) balance[row] = (balance[row] ?? 0) + 1;
  }
  const rowOfGroup = new Map(classes.classes.map((group, row) => [group, row]));
  const columns = servings.map((serving) => ({ cost: serving.cost, entries: entriesOf(serving, rowOfGroup.get(serving.group) ?? 0, nodeAt) }));
  const holds = nodes.map(({ kind, usesLeft, day }, index) => {
    const next = nodeAt(kind, usesLeft, day + 1);
    return { cost: 0, entries: [{ row: classes.classes.length + index, value: 1 }, ...(next === null ? [] : [{ row: next, value: -1 }])] };
  });
  return { servings, model: asModel([...columns, ...holds], balance) };
}

function servingsOf(classes: UseClasses, group: DemandClass, newPanelUses: number | null): Serving[] {
  const most = classes.usesFrom(group.demand.startDay);
  const fresh = { group, kind: null, usesLeft: Math.min(newPanelUses ?? Infinity, most), cost: group.newCost };
  const possible = group.from.filter(({ cost }) => cost < group.newCost || newPanelUses !== null);
  return [fresh, ...possible.flatMap(({ kind, cost }) => Array.from({ length: most }, (_, index) => ({ group, kind, usesLeft: index + 1, cost })))];
}

/** A rack of a kind for each day on which it may be asked, split by uses left; `nodeAt` is where a panel that is there on a day next counts. */
function rackNodes(classes: UseClasses, servings: readonly Serving[]): { nodes: Node[]; nodeAt: (kind: number, usesLeft: number, day: number) => number | null } {
  const daysOf = classes.kinds.map((_, kind) => [...new Set(servings.flatMap((serving) => (serving.kind === kind ? [serving.group.demand.startDay] : [])))].sort((a, b) => a - b));
  const nodes: Node[] = [];
  const rows = new Map<string, number>();
  daysOf.forEach((days, kind) => {
    for (const day of days) {
      for (let usesLeft = 1; usesLeft <= classes.usesFrom(day); usesLeft += 1) rows.set(`${kind} ${usesLeft} ${day}`, classes.classes.length + nodes.push({ kind, usesLeft, day }) - 1);
    }
  });
  const nodeAt = (kind: number, usesLeft: number, day: number) => {
    const open = daysOf[kind]?.find((candidate) => candidate >= day);
    return open === undefined ? null : rows.get(`${kind} ${Math.min(usesLeft, classes.usesFrom(open))} ${open}`) ?? null;
  };
  return { nodes, nodeAt };
}

function entriesOf(serving: Serving, row: number, nodeAt: (kind: number, usesLeft: number, day: number) => number | null): Entry[] {
  const { demand, kind: back } = serving.group;
  const taken = serving.kind === null ? null : nodeAt(serving.kind, serving.usesLeft, demand.startDay);
  const returned = serving.usesLeft > 1 ? nodeAt(back, serving.usesLeft - 1, demand.backDay) : null;
  return [{ row, value: 1 }, ...(taken === null ? [] : [{ row: taken, value: 1 }]), ...(returned === null ? [] : [{ row: returned, value: -1 }])];
}

function asModel(columns: readonly { cost: number; entries: readonly Entry[] }[], balance: Float64Array): LinearModel {
  const starts = new Int32Array(columns.length + 1);
  columns.forEach((column, index) => { starts[index + 1] = (starts[index] ?? 0) + column.entries.length; });
  return {
    whole: true,
    cost: Float64Array.from(columns.map((column) => column.cost)),
    lower: new Float64Array(columns.length),
    upper: new Float64Array(columns.length).fill(Infinity),
    rowLower: balance,
    rowUpper: balance,
    starts,
    indices: Int32Array.from(columns.flatMap((column) => column.entries.map((entry) => entry.row))),
    values: Float64Array.from(columns.flatMap((column) => column.entries.map((entry) => entry.value))),
  };
}
