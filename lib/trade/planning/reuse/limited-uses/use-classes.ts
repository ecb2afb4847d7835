import { groupBy } from "#lib/kernel/group-by.ts";
import { fitOf, newCost } from "../reuse-cost.ts";
import type { PanelDemand } from "../reuse-order.ts";
import type { ReuseNetwork } from "../reuse-network.ts";

/** Panels of one size at one place: whichever of them is ready and has as many uses left will do. */
export type Kind = { readonly widthMm: number; readonly heightMm: number; readonly thicknessMm: number; readonly place: string };
/** Demands that differ only by name. */
export type DemandClass = { readonly rows: readonly number[]; readonly demand: PanelDemand; readonly kind: number; readonly newCost: number; readonly from: readonly { readonly kind: number; readonly cost: number }[] };
export type Arrival = { readonly kind: number; readonly usesLeft: number; readonly day: number; readonly column: number };
export type UseClasses = { readonly kinds: readonly Kind[]; readonly classes: readonly DemandClass[]; readonly arrivals: readonly Arrival[]; readonly usesFrom: (day: number) => number };

export function useClasses(network: ReuseNetwork): UseClasses {
  const { order, panels, demands } = network;
  const kinds: Kind[] = [];
  const numberOf = new Map<string, number>();
  const kindOf = (kind: Kind) => {
    const key = `${kind.widthMm}x${kind.heightMm}x${kind.thicknessMm}@${kind.place}`;
    const known = numberOf.get(key) ?? kinds.push(kind) - 1;
    numberOf.set(key, known);
    return known;
  };
  const mostUses = Math.max(order.newPanelUses ?? Infinity, ...panels.map((panel) => panel.usesLeft ?? Infinity));
  const usesFrom = longestChains(demands, mostUses);
  const arrivals = panels.map((panel, column) => ({ kind: kindOf(panel), usesLeft: panel.usesLeft ?? Infinity, day: panel.readyDay, column }));
  const alike = groupBy(demands.map((demand, row) => ({ demand, row })), ({ demand }) => `${kindOf(demand)} ${demand.startDay} ${demand.backDay} ${demand.mayTurn}`);
  const classes = [...alike.values()].flatMap((group) => {
    const demand = group[0]?.demand;
    return demand ? [{ rows: group.map(({ row }) => row), demand, kind: kindOf(demand), newCost: newCost(order, demand), from: [] }] : [];
  });
  const offers = (demand: PanelDemand) => kinds.flatMap((kind, index) => {
    const fit = fitOf(order, kind, demand);
    return fit ? [{ kind: index, cost: fit.cost }] : [];
  });
  return { kinds, arrivals, usesFrom, classes: classes.map((each) => ({ ...each, from: offers(each.demand) })) };
}

/** How often one panel can at most be asked from a day on: the longest row of demands that fit one after another. */
function longestChains(demands: readonly PanelDemand[], mostUses: number): (day: number) => number {
  const byStart = [...demands].sort((a, b) => b.startDay - a.startDay);
  const chains: { day: number; uses: number }[] = [];
  const usesFrom = (day: number) => chains.reduce((most, chain) => (chain.day >= day ? Math.max(most, chain.uses) : most), 0);
  for (const demand of byStart) {
    const uses = 1 + usesFrom(demand.backDay);
    if (uses > usesFrom(demand.startDay)) chains.push({ day: demand.startDay, uses });
  }
  return (day) => Math.min(mostUses, usesFrom(day));
}
