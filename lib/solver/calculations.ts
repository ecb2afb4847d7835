import type { Asking } from "#lib/kernel/linear-model.ts";
import { type ClampLayoutInput, clampLayoutWorking } from "#lib/trade/engineering/workings/clamp-layout.ts";
import { planReuse } from "#lib/trade/planning/reuse/plan-reuse.ts";
import { cutSheets } from "#lib/trade/planning/sheets/cut-sheets.ts";
import { cutTimbers } from "#lib/trade/planning/timber/cut-timbers.ts";

/** Bounded by its own effort, so it never stops to ask for the time. */
const layClamps = function* (input: ClampLayoutInput): Asking<ReturnType<typeof clampLayoutWorking>> {
  return clampLayoutWorking(input);
};

/** What a planner can be asked for; each runs from start to end in its worker. */
export const CALCULATIONS = { sheets: cutSheets, timbers: cutTimbers, reuse: planReuse, clamps: layClamps };

export type Calculation = keyof typeof CALCULATIONS;
export type OrderOf<C extends Calculation> = Parameters<(typeof CALCULATIONS)[C]>[0];
export type PlanOf<C extends Calculation> = ReturnType<(typeof CALCULATIONS)[C]> extends Asking<infer Plan> ? Plan : never;
