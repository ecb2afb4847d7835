import type { Prices, Residue } from "../../patterns/cutting-problem.ts";
import type { SheetProblem } from "../sheet-problem.ts";
import { addedCounts, type Block } from "./tight-blocks.ts";

type Valued = Block & { readonly value: number; readonly parts: number };
type Candidate = { readonly near: Valued; readonly far: Valued; readonly dir: "down" | "across"; readonly w: number; readonly h: number; readonly value: number; readonly density: number };
type Level = { readonly blocks: readonly Valued[]; readonly byWidth: ReadonlyMap<number, readonly Valued[]>; readonly byHeight: ReadonlyMap<number, readonly Valued[]> };
/** Candidates for one level; beyond a multiple of what is kept, the least dense are dropped and no others like them let in. */
type Heap = { candidates: Candidate[]; floor: number };
type Limits = { readonly mostPerLevel: number; readonly opening: number; readonly leastDensity: number };

const MOST_PARTS = 24;
const ROOM = 16;

/**
 * Blocks of one part, two parts, three… each joined from two smaller ones that match within `opening` of their side; of each
 * number of parts those worth most for their area at the prices are kept. Waste needs no limit of its own: it has area and
 * no price.
 */
export function pricedBlocks(problem: SheetProblem, residue: Residue, prices: Prices, limits: Limits): Valued[] {
  const levels: Level[] = [asLevel([])];
  levels.push(asLevel(problem.shapes.flatMap((shape): Valued[] => {
    const value = prices.ofType[shape.type] ?? 0;
    const { w, h } = shape;
    return (residue.demand[shape.type] ?? 0) > 0 && value > 0 ? [{ w, h, used: w * h, counts: [[shape.type, 1]], made: shape, value, parts: 1 }] : [];
  })));
  for (let parts = 2; parts <= MOST_PARTS; parts += 1) {
    const heap: Heap = { candidates: [], floor: limits.leastDensity };
    for (let few = 1; 2 * few <= parts; few += 1) joinLevels(problem, levels[few], levels[parts - few], limits, heap);
    levels.push(asLevel(bestOf(heap.candidates, residue, parts, limits.mostPerLevel)));
  }
  return levels.flatMap((level) => level.blocks);
}

function joinLevels(problem: SheetProblem, few: Level | undefined, many: Level | undefined, limits: Limits, heap: Heap): void {
  if (!few || !many) return;
  for (const far of few.blocks) {
    joinMatching(problem, far, far.h, many.byHeight, "down", limits, heap);
    joinMatching(problem, far, far.w, many.byWidth, "across", limits, heap);
  }
}

function joinMatching(problem: SheetProblem, far: Valued, side: number, by: Level["byWidth"], dir: "down" | "across", limits: Limits, heap: Heap): void {
  const reach = Math.ceil(side * limits.opening);
  for (let other = Math.max(1, side - reach); other <= side + reach; other += 1) {
    for (const near of by.get(other) ?? []) {
      const w = dir === "down" ? near.w + far.w : Math.max(near.w, far.w);
      const h = dir === "down" ? Math.max(near.h, far.h) : near.h + far.h;
      const value = near.value + far.value;
      const density = value / (w * h);
      if (density < heap.floor || !problem.stock.some((stock) => w <= stock.w && h <= stock.h)) continue;
      heap.candidates.push({ near, far, dir, w, h, value, density });
      if (heap.candidates.length > 2 * ROOM * limits.mostPerLevel) thin(heap, ROOM * limits.mostPerLevel);
    }
  }
}

const denserFirst = (a: Candidate, b: Candidate): number => b.density - a.density || a.w - b.w || a.h - b.h;

function thin(heap: Heap, most: number): void {
  heap.candidates.sort(denserFirst);
  heap.candidates.length = most;
  heap.floor = heap.candidates[most - 1]?.density ?? heap.floor;
}

function bestOf(candidates: Candidate[], residue: Residue, parts: number, most: number): Valued[] {
  candidates.sort(denserFirst);
  const kept: Valued[] = [];
  const seen = new Set<string>();
  for (const { near, far, dir, w, h, value } of candidates) {
    if (kept.length >= most) break;
    const counts = addedCounts(near.counts, far.counts, residue.demand);
    if (!counts) continue;
    const key = `${w}x${h}:${counts.join(";")}`;
    if (seen.has(key)) continue;
    seen.add(key);
    kept.push({ w, h, used: near.used + far.used, counts, made: { dir, near, far }, value, parts });
  }
  return kept;
}

function asLevel(blocks: readonly Valued[]): Level {
  const byWidth = new Map<number, Valued[]>();
  const byHeight = new Map<number, Valued[]>();
  for (const block of blocks) {
    byWidth.set(block.w, [...(byWidth.get(block.w) ?? []), block]);
    byHeight.set(block.h, [...(byHeight.get(block.h) ?? []), block]);
  }
  return { blocks, byWidth, byHeight };
}
