import { fitOf, newCost } from "./reuse-cost.ts";
import type { PanelDemand, ReuseOrder, ReusePanel } from "./reuse-order.ts";

/**
 * Who can serve whom: rows are demands in order of start, columns the panels there are, then each demand as the later
 * supplier of its panel, then a new panel for each demand. A panel that served a demand comes back with that size, so a
 * chain of uses is a chain of columns. What costs the same goes by the order given, so that a plan does not flicker.
 */
export type ReuseNetwork = {
  readonly order: ReuseOrder;
  readonly panels: readonly ReusePanel[];
  readonly demands: readonly PanelDemand[];
  readonly costs: readonly Float64Array[];
  readonly columns: number;
};

export function reuseNetwork(order: ReuseOrder): ReuseNetwork {
  const { panels } = order;
  const demands = [...order.demands].sort((a, b) => a.startDay - b.startDay);
  const columns = panels.length + 2 * demands.length;
  const costs = demands.map((demand, row) => {
    const line = new Float64Array(columns).fill(Infinity);
    panels.forEach((panel, index) => {
      if (panel.readyDay <= demand.startDay && panel.usesLeft !== 0) line[index] = fitOf(order, panel, demand)?.cost ?? Infinity;
    });
    demands.forEach((earlier, index) => {
      if (earlier.backDay <= demand.startDay) line[panels.length + index] = fitOf(order, earlier, demand)?.cost ?? Infinity;
    });
    line[panels.length + demands.length + row] = newCost(order, demand);
    return line;
  });
  return { order, panels, demands, costs, columns };
}

/** The column by which a demand's panel is served again. */
export const columnAfter = (network: ReuseNetwork, row: number): number => network.panels.length + row;
export const newColumn = (network: ReuseNetwork, row: number): number => network.panels.length + network.demands.length + row;
/** The demand behind a column, or -1 for a panel there is or a new one. */
export const demandBehind = (network: ReuseNetwork, column: number): number =>
  column >= network.panels.length && column < network.panels.length + network.demands.length ? column - network.panels.length : -1;

export const costOfColumns = (network: ReuseNetwork, columnOf: readonly number[]): number =>
  columnOf.reduce((sum, column, row) => sum + (network.costs[row]?.[column] ?? Infinity), 0);
