import type { PlannedReuse } from "#lib/server/cutting/reuse/plan-reuse.ts";
import type { ReuseLine } from "#lib/contracts/planning/reuse.ts";
import { lengthFigure } from "#app/_ui/value/format-quantity.ts";

/** One line of a plan, in words and figures as they are shown, and as it is accepted. */
export type ReuseRow = {
  readonly key: string; readonly column: string; readonly mark: string; readonly face: string; readonly size: string;
  readonly kind: "panel" | "after" | "new"; readonly from: string; readonly where: string; readonly work: string; readonly cost: string;
  /** The line whose panel it takes over, where that is in this plan too. */
  readonly needs: string | null; readonly line: ReuseLine;
};
export type ReuseGroup = { readonly start: string; readonly rows: readonly ReuseRow[] };

/** Every panel wanted with where it comes from, by when its column begins, in the order of the plan. */
export function reuseGroups({ task: { wanted, names, project: { units } }, plan, lines }: PlannedReuse, money: (minor: number) => string): ReuseGroup[] {
  const groups = new Map<string, ReuseRow[]>();
  for (const [index, { demandId, source, cutDown, cost }] of plan.uses.entries()) {
    const demand = wanted[demandId];
    const line = lines[index];
    if (!demand || !line) continue;
    const { column, mark, face, widthMm, heightMm, start } = demand;
    const row = {
      key: demandId, column, mark, face, size: `${lengthFigure(widthMm, units)} × ${lengthFigure(heightMm, units)}`, kind: source.kind, ...sourceWords(source),
      work: source.kind === "new" ? "make" : cutDown ? "cut down" : "as it is", cost: money(cost), needs: source.kind === "after" ? source.demandId : null, line,
    };
    groups.set(start, [...(groups.get(start) ?? []), row]);
  }
  return [...groups].map(([start, rows]) => ({ start, rows }));

  function sourceWords(source: PlannedReuse["plan"]["uses"][number]["source"]): { from: string; where: string } {
    if (source.kind === "new") return { from: "New panel", where: "" };
    if (source.kind === "panel") return { from: names[source.panelId]?.name ?? "Panel", where: names[source.panelId]?.place ?? "" };
    const before = wanted[source.demandId];
    return { from: before ? `Off ${before.column}, face ${before.face}` : "Off a column", where: before?.level ?? "" };
  }
}
