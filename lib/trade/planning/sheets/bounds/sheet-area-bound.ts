import type { SheetProblem } from "../sheet-problem.ts";

/**
 * The cheapest mix of whole sheets whose area, kerfs counted, holds all parts. Limited sheets are taken as parts of a
 * sheet, cheapest area first, which can only be less; unlimited ones of at most three kinds are counted whole.
 * A sheet too small for every part counts for nothing.
 */
export function sheetAreaBound(problem: SheetProblem): number {
  const wanted = problem.areas.reduce((sum, area, type) => sum + area * (problem.demand[type] ?? 0), 0);
  const usable = problem.stock.filter((stock) => problem.shapes.some((shape) => shape.w <= stock.w && shape.h <= stock.h));
  const kinds = usable.map((stock) => ({ area: stock.w * stock.h, cost: stock.cost, supply: stock.supply }));
  const byPrice = [...kinds].sort((a, b) => a.cost / a.area - b.cost / b.area);
  const open = byPrice.filter((kind) => kind.supply === null);
  if (open.length !== kinds.length || open.length > 3) return inParts(byPrice, wanted);
  return cheapestWhole(open, wanted, Infinity);
}

type Kind = { readonly area: number; readonly cost: number; readonly supply: number | null };

function inParts(kinds: readonly Kind[], wanted: number): number {
  let left = wanted;
  let cost = 0;
  for (const kind of kinds) {
    const taken = Math.min(left, kind.supply === null ? left : kind.supply * kind.area);
    cost += (taken / kind.area) * kind.cost;
    left -= taken;
  }
  return cost;
}

function cheapestWhole(kinds: readonly Kind[], wanted: number, limit: number): number {
  const [kind, ...others] = kinds;
  if (wanted <= 0) return 0;
  if (!kind) return Infinity;
  const most = Math.ceil(wanted / kind.area);
  if (others.length === 0) return most * kind.cost;
  let best = limit;
  for (let count = most; count >= 0; count -= 1) {
    const left = wanted - count * kind.area;
    const least = count * kind.cost + Math.max(0, left) * Math.min(...others.map((other) => other.cost / other.area));
    if (least >= best) { if (left > 0) break; continue; }
    best = Math.min(best, count * kind.cost + cheapestWhole(others, left, best - count * kind.cost));
  }
  return best;
}
