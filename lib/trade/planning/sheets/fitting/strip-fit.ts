import type { Residue } from "../../patterns/cutting-problem.ts";
import { keepOnly, withinStages } from "../filling/piece.ts";
import { stripFilling, uprightFilling } from "../filling/strip-filling.ts";
import { sheetPattern } from "./guillotine-fit.ts";
import type { SheetPattern, SheetProblem } from "../sheet-problem.ts";

type Candidate = { readonly pattern: SheetPattern; readonly perArea: number };

/** Sheet after sheet ripped into strips, each time the sheet and the filling that cost least for the area they yield. Null when the sheets run out. */
export function stripFit(problem: SheetProblem, residue: Residue): SheetPattern[] | null {
  const left = [...residue.demand];
  const supply = residue.supply.map((sheets) => sheets ?? Infinity);
  const chosen: SheetPattern[] = [];
  while (left.some((count) => count > 0)) {
    const best = problem.stock
      .flatMap((_, stock) => ((supply[stock] ?? 0) > 0 ? candidates(problem, stock, left) : []))
      .reduce<Candidate | null>((least, candidate) => (!least || candidate.perArea < least.perArea ? candidate : least), null);
    if (!best) return null;
    const { stock, counts } = best.pattern;
    const copies = Math.min(supply[stock] ?? 0, ...counts.map(([type, each]) => Math.floor((left[type] ?? 0) / each)));
    for (const [type, each] of counts) left[type] = (left[type] ?? 0) - each * copies;
    supply[stock] = (supply[stock] ?? 0) - copies;
    for (let copy = 0; copy < copies; copy += 1) chosen.push(best.pattern);
  }
  return chosen;
}

function candidates(problem: SheetProblem, stock: number, left: readonly number[]): Candidate[] {
  const { w, h, cost } = problem.stock[stock] ?? { w: 0, h: 0, cost: 0 };
  return [stripFilling, uprightFilling].flatMap((fill) => {
    const filling = fill(problem.shapes, problem.areas, left, w, h);
    const whole = filling && withinStages(filling.piece, w, h, problem.mostStages);
    if (!whole) return [];
    const pattern = sheetPattern(stock, keepOnly(whole, [...left]));
    const area = pattern.counts.reduce((sum, [type, copies]) => sum + copies * (problem.areas[type] ?? 0), 0);
    return area > 0 ? [{ pattern, perArea: cost / area }] : [];
  });
}
