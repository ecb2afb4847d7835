import { fitOf } from "./reuse-cost.ts";
import { costOfColumns, demandBehind, type ReuseNetwork } from "./reuse-network.ts";
import type { PanelSource, PanelUse, ReusePlan } from "./reuse-order.ts";

export function reusePlan(network: ReuseNetwork, columnOf: readonly number[], bound: number): ReusePlan {
  const uses = columnOf.map((column, row) => panelUse(network, row, column));
  const cost = costOfColumns(network, columnOf);
  const gap = cost > 0 ? (cost - bound) / cost : 0;
  return { uses, cost, bound, gap, proven: cost <= bound, newPanels: uses.filter((use) => use.source.kind === "new").length, cutDowns: uses.filter((use) => use.cutDown).length };
}

function panelUse(network: ReuseNetwork, row: number, column: number): PanelUse {
  const demand = network.demands[row];
  if (!demand) throw new RangeError(`No demand in row ${row}`);
  const panel = network.panels[column];
  const earlier = network.demands[demandBehind(network, column)];
  const from = panel ?? earlier;
  const fit = from ? fitOf(network.order, from, demand) : null;
  const source: PanelSource = panel ? { kind: "panel", panelId: panel.id } : earlier ? { kind: "after", demandId: earlier.id } : { kind: "new" };
  return { demandId: demand.id, source, turned: fit?.turned ?? false, cutDown: fit?.cutDown ?? false, cost: network.costs[row]?.[column] ?? 0 };
}
