import type { Pattern } from "../patterns/cutting-problem.ts";
import type { Search } from "../patterns/dive.ts";
import { usableMm, type TimberCut, type TimberLayout, type TimberOrder, type TimberPlan } from "./timber-order.ts";
import type { TimberProblem } from "./timber-problem.ts";

type Waiting = { id: string; quantity: number }[][];

/** From counts of lengths to named parts, longest first on each piece; parts beyond the demand are not cut. Equal pieces are listed once. */
export function timberPlan(order: TimberOrder, problem: TimberProblem, search: Search<Pattern>): TimberPlan {
  const waiting: Waiting = problem.partsOf.map((parts) => parts.map((part) => ({ ...part })));
  const layouts = new Map<string, TimberLayout>();
  let wasteMm = 0;
  for (const { pattern, copies } of [...search.chosen].sort((a, b) => a.pattern.stock - b.pattern.stock)) {
    for (let copy = 0; copy < copies; copy += 1) {
      const layout = cutOnePiece(order, problem, pattern, waiting);
      wasteMm += layout.kept ? 0 : layout.offcutMm;
      const key = `${layout.stockId}:${layout.cuts.map((cut) => cut.partId).join(",")}`;
      layouts.set(key, { ...layout, count: (layouts.get(key)?.count ?? 0) + 1 });
    }
  }
  const gap = search.cost > 0 ? Math.max(0, search.cost - search.bound) / search.cost : 0;
  return { layouts: [...layouts.values()], cost: search.cost, bound: Math.min(search.bound, search.cost), gap, proven: gap < 1e-9, wasteMm };
}

function cutOnePiece(order: TimberOrder, problem: TimberProblem, pattern: Pattern, waiting: Waiting): TimberLayout {
  const stock = order.stock.find((candidate) => candidate.id === problem.stock[pattern.stock]?.id);
  const cuts: TimberCut[] = [];
  for (const [length, copies] of [...pattern.counts].sort(([a], [b]) => a - b)) {
    const lengthMm = (problem.lengths[length] ?? 0) * problem.step - order.kerfMm;
    for (let copy = 0; copy < copies; copy += 1) {
      const part = waiting[length]?.find((candidate) => candidate.quantity > 0);
      if (!part) break;
      part.quantity -= 1;
      cuts.push({ partId: part.id, lengthMm });
    }
  }
  const used = cuts.reduce((sum, cut) => sum + cut.lengthMm + order.kerfMm, 0);
  const offcutMm = Math.max(0, (stock ? usableMm(order, stock) : 0) - used);
  return { stockId: stock?.id ?? "", count: 1, cuts, offcutMm, kept: offcutMm >= order.keepFromMm };
}
