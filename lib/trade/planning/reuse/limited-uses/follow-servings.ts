import type { Serving } from "./limited-uses-model.ts";
import { columnAfter, newColumn, type ReuseNetwork } from "../reuse-network.ts";
import type { UseClasses } from "./use-classes.ts";

type OnRack = { readonly kind: number; readonly usesLeft: number; readonly day: number; readonly column: number };

/** From numbers of servings to named panels: in order of start, each takes a panel that is back with the uses the serving counts on, first come first. */
export function followServings(network: ReuseNetwork, classes: UseClasses, servings: readonly Serving[], counts: Float64Array): number[] {
  const rack: OnRack[] = [...classes.arrivals];
  const columnOf = network.demands.map((_, row) => newColumn(network, row));
  const due = servings.flatMap((serving, index) => ({ serving, count: Math.round(counts[index] ?? 0) })).filter(({ count }) => count > 0);
  due.sort((a, b) => a.serving.group.demand.startDay - b.serving.group.demand.startDay);
  const waiting = new Map(classes.classes.map((group) => [group, [...group.rows]]));
  for (const { serving, count } of due) {
    const { demand, kind } = serving.group;
    const asked = classes.usesFrom(demand.startDay);
    for (let copy = 0; copy < count; copy += 1) {
      const row = waiting.get(serving.group)?.shift();
      if (row === undefined) break;
      if (serving.kind !== null) {
        const at = rack.findIndex((panel) => panel.kind === serving.kind && Math.min(panel.usesLeft, asked) === serving.usesLeft && panel.day <= demand.startDay);
        const [panel] = at >= 0 ? rack.splice(at, 1) : [];
        if (panel) columnOf[row] = panel.column;
      }
      rack.push({ kind, usesLeft: serving.usesLeft - 1, day: demand.backDay, column: columnAfter(network, row) });
    }
  }
  return columnOf;
}
