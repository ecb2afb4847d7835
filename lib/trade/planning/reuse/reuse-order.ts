import { invalid, ok, type Problem, type Result } from "#lib/kernel/result.ts";

/** A panel there is, or that comes off a column on `readyDay`. `usesLeft` null: no limit known; `set`: what it stands with. */
export type ReusePanel = { readonly id: string; readonly widthMm: number; readonly heightMm: number; readonly thicknessMm: number; readonly readyDay: number; readonly usesLeft: number | null; readonly place: string; readonly set?: string };

/** A panel a coming column asks for, from the day it is made up to the day it is clean and back on the rack; `set`: the column. */
export type PanelDemand = {
  readonly id: string; readonly widthMm: number; readonly heightMm: number; readonly thicknessMm: number;
  readonly startDay: number; readonly backDay: number; readonly mayTurn: boolean; readonly place: string; readonly set?: string;
};

/**
 * Money in minor units, days as whole numbers on one calendar. A larger panel may be cut down, never the other way; what
 * is cut off is lost at the price of new ply. `carry` is charged between two different places, both ways the same.
 */
export type ReuseOrder = {
  readonly panels: readonly ReusePanel[];
  readonly demands: readonly PanelDemand[];
  readonly newPerM2: number;
  readonly recutEach: number;
  readonly newPanelUses: number | null;
  readonly carry: readonly { readonly from: string; readonly to: string; readonly each: number }[];
};

export type PanelSource = { readonly kind: "panel"; readonly panelId: string } | { readonly kind: "after"; readonly demandId: string } | { readonly kind: "new" };
export type PanelUse = { readonly demandId: string; readonly source: PanelSource; readonly turned: boolean; readonly cutDown: boolean; readonly cost: number };

/** `bound`: no plan can cost less; `proven` when this one is at it. `gap` is (cost - bound) / cost. */
export type ReusePlan = { readonly uses: readonly PanelUse[]; readonly cost: number; readonly bound: number; readonly gap: number; readonly proven: boolean; readonly newPanels: number; readonly cutDowns: number };

type Size = { readonly widthMm: number; readonly heightMm: number; readonly thicknessMm: number };

export function checkReuseOrder(order: ReuseOrder): Result<ReuseOrder> {
  const problems: Problem[] = [];
  const need = (field: string, fits: boolean, message: string) => { if (!fits) problems.push({ field, message }); };
  const whole = (value: number, least: number) => Number.isSafeInteger(value) && value >= least;
  const sizes = (list: string, rows: readonly (Size & { readonly id: string })[]) =>
    rows.forEach((row, index) => {
      need(`${list}.${index}`, whole(row.widthMm, 1) && whole(row.heightMm, 1) && whole(row.thicknessMm, 1), "Width, height and thickness must be whole millimetres of at least 1.");
      need(`${list}.${index}.id`, rows.findIndex((other) => other.id === row.id) === index, `"${row.id}" is there twice.`);
    });
  sizes("panels", order.panels);
  sizes("demands", order.demands);
  order.panels.forEach((panel, index) => need(`panels.${index}.usesLeft`, whole(panel.usesLeft ?? 0, 0), "Must be a whole number of at least 0."));
  order.demands.forEach((demand, index) => need(`demands.${index}.backDay`, demand.backDay > demand.startDay, "Must be after the day it is made up."));
  need("newPerM2", whole(order.newPerM2, 0), "Must be a whole number of at least 0.");
  need("recutEach", whole(order.recutEach, 0), "Must be a whole number of at least 0.");
  need("newPanelUses", whole(order.newPanelUses ?? 1, 1), "A new panel serves at least once.");
  order.carry.forEach((way, index) => need(`carry.${index}.each`, whole(way.each, 0), "Must be a whole number of at least 0."));
  return problems.length > 0 ? invalid(...problems) : ok(order);
}
