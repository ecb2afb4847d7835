import type { Residue } from "../../patterns/cutting-problem.ts";
import { join, partPiece, type Piece, type Shape, within, withinStages } from "../filling/piece.ts";
import { stoodUp } from "../filling/strip-filling.ts";
import { sheetPattern, shapesByType } from "./guillotine-fit.ts";
import type { SheetPattern, SheetProblem } from "../sheet-problem.ts";

type Strip = { readonly height: number; used: number; readonly parts: Shape[] };
type Open = { readonly stock: number; readonly strips: Strip[]; high: number };
type Size = { readonly w: number; readonly h: number };

/** Parts by falling height into strips: the first strip with room, else a new strip on the first sheet with room, else a new sheet. Once with rips first, once with cross-cuts; the cheaper. Null when the sheets run out. */
export function shelfFit(problem: SheetProblem, residue: Residue): SheetPattern[] | null {
  const costOf = (patterns: readonly SheetPattern[]) => patterns.reduce((sum, pattern) => sum + (problem.stock[pattern.stock]?.cost ?? 0), 0);
  return [false, true].map((upright) => fitOnce(problem, residue, upright)).reduce<SheetPattern[] | null>(
    (best, patterns) => (patterns && (!best || costOf(patterns) < costOf(best)) ? patterns : best), null);
}

function fitOnce(problem: SheetProblem, residue: Residue, upright: boolean): SheetPattern[] | null {
  const lying = ({ w, h }: Size): Size => (upright ? { w: h, h: w } : { w, h });
  const stock = problem.stock.map((sheet) => ({ ...lying(sheet), perArea: sheet.cost / (sheet.w * sheet.h) }));
  const supply = residue.supply.map((left) => left ?? Infinity);
  const sheets: Open[] = [];
  const ordered = shapesByType(problem)
    .map((shapes) => shapes.map((shape) => ({ ...shape, ...lying(shape) })).sort((a, b) => a.h - b.h))
    .filter((shapes) => (residue.demand[shapes[0]?.type ?? -1] ?? 0) > 0)
    .sort((a, b) => (b[0]?.h ?? 0) - (a[0]?.h ?? 0) || (b[0]?.w ?? 0) - (a[0]?.w ?? 0));
  for (const shapes of ordered) {
    for (let copy = 0; copy < (residue.demand[shapes[0]?.type ?? -1] ?? 0); copy += 1) {
      if (!intoStrip(sheets, stock, shapes) && !intoSheet(sheets, stock, shapes) && !ontoNew(sheets, stock, supply, shapes)) return null;
    }
  }
  const patterns = sheets.flatMap((sheet) => asPattern(problem, sheet, upright) ?? []);
  return patterns.length === sheets.length ? patterns : null;
}

function intoStrip(sheets: readonly Open[], stock: readonly Size[], shapes: readonly Shape[]): boolean {
  for (const sheet of sheets) {
    const room = stock[sheet.stock]?.w ?? 0;
    for (const strip of sheet.strips) {
      const shape = shapes.find((candidate) => candidate.h <= strip.height && strip.used + candidate.w <= room);
      if (!shape) continue;
      strip.parts.push(shape);
      strip.used += shape.w;
      return true;
    }
  }
  return false;
}

function intoSheet(sheets: readonly Open[], stock: readonly Size[], shapes: readonly Shape[]): boolean {
  for (const sheet of sheets) {
    const { w, h } = stock[sheet.stock] ?? { w: 0, h: 0 };
    const shape = shapes.find((candidate) => candidate.w <= w && sheet.high + candidate.h <= h);
    if (!shape) continue;
    sheet.strips.push({ height: shape.h, used: shape.w, parts: [shape] });
    sheet.high += shape.h;
    return true;
  }
  return false;
}

function ontoNew(sheets: Open[], stock: readonly (Size & { readonly perArea: number })[], supply: number[], shapes: readonly Shape[]): boolean {
  const holding = stock.flatMap((sheet, index) => ((supply[index] ?? 0) > 0 && shapes.some((shape) => shape.w <= sheet.w && shape.h <= sheet.h) ? [{ index, perArea: sheet.perArea }] : []));
  const [best] = holding.sort((a, b) => a.perArea - b.perArea || b.index - a.index);
  if (!best) return false;
  supply[best.index] = (supply[best.index] ?? 0) - 1;
  sheets.push({ stock: best.index, strips: [], high: 0 });
  return intoSheet(sheets.slice(-1), stock, shapes);
}

function asPattern(problem: SheetProblem, { stock, strips }: Open, upright: boolean): SheetPattern | null {
  const { w, h } = problem.stock[stock] ?? { w: 0, h: 0 };
  const widest = Math.max(...strips.map((strip) => strip.used));
  const lying = chained("across", strips.map((strip) => within(chained("down", strip.parts.map((shape) => within(partPiece(shape), shape.w, strip.height))), widest, strip.height)));
  const whole = withinStages(upright ? stoodUp(lying) : lying, w, h, problem.mostStages);
  return whole && sheetPattern(stock, whole);
}

const chained = (dir: "down" | "across", pieces: readonly Piece[]): Piece => pieces.reduceRight((far, near) => join(dir, near, far));
