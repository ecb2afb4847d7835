import type { ReuseTask } from "#lib/server/cutting/reuse/plan-reuse.ts";
import type { ReusePlan } from "#lib/trade/planning/reuse/reuse-order.ts";

export type ReuseRow = {
  readonly key: string; readonly column: string; readonly mark: string; readonly face: string; readonly widthMm: number; readonly heightMm: number;
  readonly kind: "panel" | "after" | "new"; readonly from: string; readonly where: string; readonly cutDown: boolean; readonly cost: number;
};
export type ReuseGroup = { readonly start: string; readonly rows: readonly ReuseRow[] };

/** Every panel wanted with where it comes from, by when its column begins, in the order of the plan. */
export function reuseGroups({ wanted, names }: ReuseTask, plan: ReusePlan): ReuseGroup[] {
  const groups = new Map<string, ReuseRow[]>();
  for (const { demandId, source, cutDown, cost } of plan.uses) {
    const demand = wanted[demandId];
    if (!demand) continue;
    const { column, mark, face, widthMm, heightMm, start } = demand;
    const row = { key: demandId, column, mark, face, widthMm, heightMm, kind: source.kind, cutDown, cost, ...sourceWords(source) };
    groups.set(start, [...(groups.get(start) ?? []), row]);
  }
  return [...groups].map(([start, rows]) => ({ start, rows }));

  function sourceWords(source: ReusePlan["uses"][number]["source"]): { from: string; where: string } {
    if (source.kind === "new") return { from: "New panel", where: "" };
    if (source.kind === "panel") return { from: names[source.panelId]?.name ?? "Panel", where: names[source.panelId]?.place ?? "" };
    const before = wanted[source.demandId];
    return { from: before ? `Off ${before.column}, face ${before.face}` : "Off a column", where: before?.level ?? "" };
  }
}
