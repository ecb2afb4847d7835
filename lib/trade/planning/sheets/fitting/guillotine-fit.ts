import type { Residue } from "../../patterns/cutting-problem.ts";
import { countParts, type Piece } from "../filling/piece.ts";
import type { Shape } from "../filling/piece.ts";
import type { SheetPattern, SheetProblem } from "../sheet-problem.ts";
import { leastAreaLeft, openSlot, pieceFrom, placeTightest, shortestSideLeft, type Slot, type Tightness } from "../filling/slots.ts";

type Open = { stock: number; readonly root: Slot; slots: Slot[]; readonly parts: number[] };
type Way = { readonly types: readonly number[]; readonly tightness: Tightness };

/** Large parts first, each into the tightest opening of the sheets begun, else into a new one; the cheapest of several orders and measures. Null when the sheets run out. */
export function guillotineFit(problem: SheetProblem, residue: Residue): SheetPattern[] | null {
  const shapesOf = shapesByType(problem);
  const tried = waysOf(problem).map((way) => fitOnce(problem, residue, shapesOf, way)).filter((patterns) => patterns !== null);
  const costOf = (patterns: readonly SheetPattern[]) => patterns.reduce((sum, pattern) => sum + (problem.stock[pattern.stock]?.cost ?? 0), 0);
  return tried.reduce<SheetPattern[] | null>((best, patterns) => (!best || costOf(patterns) < costOf(best) ? patterns : best), null);
}

export function shapesByType(problem: SheetProblem): Shape[][] {
  const byType: Shape[][] = problem.demand.map(() => []);
  for (const shape of problem.shapes) byType[shape.type]?.push(shape);
  return byType;
}

function waysOf(problem: SheetProblem): Way[] {
  const byArea = problem.demand.map((_, type) => type);
  const longest = (type: number) => Math.max(0, ...problem.shapes.filter((shape) => shape.type === type).map((shape) => Math.max(shape.w, shape.h)));
  const sides = problem.demand.map((_, type) => longest(type));
  const byLength = [...byArea].sort((a, b) => (sides[b] ?? 0) - (sides[a] ?? 0) || a - b);
  return [byArea, byLength].flatMap((types) => [{ types, tightness: shortestSideLeft }, { types, tightness: leastAreaLeft }]);
}

function fitOnce(problem: SheetProblem, residue: Residue, shapesOf: readonly Shape[][], way: Way): SheetPattern[] | null {
  const supply = residue.supply.map((left) => left ?? Infinity);
  const sheets: Open[] = [];
  for (const type of way.types) {
    for (let copy = 0; copy < (residue.demand[type] ?? 0); copy += 1) {
      if (!place(problem, supply, sheets, shapesOf[type] ?? [], way.tightness)) return null;
    }
  }
  return sheets.map((sheet) => onCheapestSheet(problem, supply, sheet, shapesOf, way.tightness));
}

function place(problem: SheetProblem, supply: number[], sheets: Open[], shapes: readonly Shape[], tightness: Tightness): boolean {
  const type = shapes[0]?.type ?? -1;
  for (const sheet of sheets) {
    const slots = placeTightest(sheet.slots, shapes, tightness);
    if (!slots) continue;
    sheet.slots = slots;
    sheet.parts.push(type);
    return true;
  }
  const perArea = (index: number) => { const stock = problem.stock[index]; return stock ? stock.cost / (stock.w * stock.h) : Infinity; };
  const open = problem.stock.flatMap((stock, index) => ((supply[index] ?? 0) > 0 && shapes.some((shape) => shape.w <= stock.w && shape.h <= stock.h) ? [index] : []));
  const stock = open.sort((a, b) => perArea(a) - perArea(b) || b - a)[0];
  const chosen = stock === undefined ? undefined : problem.stock[stock];
  if (stock === undefined || !chosen) return false;
  supply[stock] = (supply[stock] ?? 0) - 1;
  const root = openSlot(chosen.w, chosen.h);
  sheets.push({ stock, root, slots: placeTightest([root], shapes, tightness) ?? [], parts: [type] });
  return true;
}

/** The parts of one sheet on a cheaper one if they go there. */
function onCheapestSheet(problem: SheetProblem, supply: number[], sheet: Open, shapesOf: readonly Shape[][], tightness: Tightness): SheetPattern {
  const now = problem.stock[sheet.stock]?.cost ?? 0;
  const cheaper = problem.stock.flatMap((stock, index) => (stock.cost < now && (supply[index] ?? 0) > 0 ? [{ stock, index }] : [])).sort((a, b) => a.stock.cost - b.stock.cost);
  for (const { stock, index } of cheaper) {
    const root = openSlot(stock.w, stock.h);
    const slots = sheet.parts.reduce<Slot[] | null>((open, type) => open && placeTightest(open, shapesOf[type] ?? [], tightness), [root]);
    if (!slots) continue;
    supply[index] = (supply[index] ?? 0) - 1;
    supply[sheet.stock] = (supply[sheet.stock] ?? 0) + 1;
    return sheetPattern(index, pieceFrom(root));
  }
  return sheetPattern(sheet.stock, pieceFrom(sheet.root));
}

export function sheetPattern(stock: number, piece: Piece): SheetPattern {
  return { stock, piece, counts: [...countParts(piece)].sort(([a], [b]) => a - b) };
}
