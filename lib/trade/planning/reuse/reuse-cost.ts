import type { PanelDemand, ReuseOrder } from "./reuse-order.ts";

type Sheet = { readonly widthMm: number; readonly heightMm: number; readonly thicknessMm: number; readonly place: string };
export type Fit = { readonly cost: number; readonly turned: boolean; readonly cutDown: boolean };

const MM2_PER_M2 = 1e6;

export const newCost = (order: ReuseOrder, demand: PanelDemand): number => Math.floor((demand.widthMm * demand.heightMm * order.newPerM2) / MM2_PER_M2);

/** What serving the demand with this panel costs: nothing but the carrying when the size is the same, else the cut and the ply lost. Null when it does not cover the size. */
export function fitOf(order: ReuseOrder, panel: Sheet, demand: PanelDemand): Fit | null {
  if (panel.thicknessMm !== demand.thicknessMm) return null;
  const upright = panel.widthMm >= demand.widthMm && panel.heightMm >= demand.heightMm;
  const turned = !upright && demand.mayTurn && panel.widthMm >= demand.heightMm && panel.heightMm >= demand.widthMm;
  if (!upright && !turned) return null;
  const lost = panel.widthMm * panel.heightMm - demand.widthMm * demand.heightMm;
  const cutting = lost > 0 ? order.recutEach + Math.floor((lost * order.newPerM2) / MM2_PER_M2) : 0;
  return { cost: cutting + carryCost(order, panel.place, demand.place), turned, cutDown: lost > 0 };
}

function carryCost(order: ReuseOrder, from: string, to: string): number {
  if (from === to) return 0;
  return order.carry.find((way) => (way.from === from && way.to === to) || (way.from === to && way.to === from))?.each ?? 0;
}
