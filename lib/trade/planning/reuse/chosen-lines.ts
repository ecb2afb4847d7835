import { fail, ok, type Result } from "#lib/kernel/result.ts";
import { checkUse } from "./check-reuse-plan.ts";
import { fitOf, newCost } from "./reuse-cost.ts";
import type { PanelSource, PanelUse, ReuseOrder } from "./reuse-order.ts";

export type ChosenLine = { readonly demandId: string; readonly source: PanelSource };
export type LineFault = { readonly demandId: string; readonly source: PanelSource; readonly why: "face-gone" | "panel-gone" | "earlier-not-chosen" | "too-small" | "not-back" | "worn-out" };

/** Lines chosen from a plan as they hold now, or the first that does not: the plan may have been made before others took its panels. */
export function takeLines(order: ReuseOrder, lines: readonly ChosenLine[]): Result<readonly PanelUse[], LineFault> {
  const uses: PanelUse[] = [];
  for (const { demandId, source } of lines) {
    const refused = (why: LineFault["why"]) => fail<LineFault>({ demandId, source, why });
    const demand = order.demands.find(({ id }) => id === demandId);
    if (!demand) return refused("face-gone");
    if (source.kind === "new") {
      uses.push({ demandId, source, turned: false, cutDown: false, cost: newCost(order, demand) });
      continue;
    }
    if (source.kind === "after" && !lines.some((line) => line.demandId === source.demandId)) return refused("earlier-not-chosen");
    const panel = source.kind === "panel" ? order.panels.find(({ id }) => id === source.panelId) : order.demands.find(({ id }) => id === source.demandId);
    if (!panel) return refused("panel-gone");
    const fit = fitOf(order, panel, demand);
    if (!fit) return refused("too-small");
    uses.push({ demandId, source, ...fit });
  }
  for (const use of uses) {
    const [breach] = checkUse(order, uses, use);
    if (breach) return fail({ demandId: use.demandId, source: use.source, why: breach.rule === "ready" ? "not-back" : breach.rule === "uses-left" ? "worn-out" : "too-small" });
  }
  return ok(uses);
}
