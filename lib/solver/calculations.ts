import type { Asking } from "#lib/kernel/linear-model.ts";
import { planReuse } from "#lib/trade/planning/reuse/plan-reuse.ts";
import { cutSheets } from "#lib/trade/planning/sheets/cut-sheets.ts";
import { cutTimbers } from "#lib/trade/planning/timber/cut-timbers.ts";

/** What the planner can be asked for; each runs from start to end in its worker. */
export const CALCULATIONS = { sheets: cutSheets, timbers: cutTimbers, reuse: planReuse };

export type Calculation = keyof typeof CALCULATIONS;
export type OrderOf<C extends Calculation> = Parameters<(typeof CALCULATIONS)[C]>[0];
export type PlanOf<C extends Calculation> = ReturnType<(typeof CALCULATIONS)[C]> extends Asking<infer Plan> ? Plan : never;
