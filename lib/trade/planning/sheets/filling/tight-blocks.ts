import { type Asking, isTimeUp } from "#lib/kernel/linear-model.ts";
import { join, partPiece, type Piece } from "./piece.ts";
import type { Shape } from "./piece.ts";
import type { SheetProblem } from "../sheet-problem.ts";

/** Parts joined to a rectangle with hardly any waste. */
export type Block = { readonly w: number; readonly h: number; readonly used: number; readonly counts: readonly (readonly [type: number, copies: number])[]; readonly made: Shape | { readonly dir: "down" | "across"; readonly near: Block; readonly far: Block } };

type Heap = { readonly blocks: Block[]; readonly seen: Set<string>; readonly byWidth: Map<number, Block[]>; readonly byHeight: Map<number, Block[]> };

const WASTE_STEPS = [0.0005, 0.001, 0.0015, 0.002, 0.003, 0.004, 0.005, 0.006, 0.008, 0.011, 0.015, 0.022, 0.03, 0.045, 0.06, 0.1];
const PAUSE_EVERY = 500;
const WINDOW_PER_SHARE = 2;

/**
 * Joins what matches (Wang 1983): two blocks side by side or one over the other as long as the waste stays within a share
 * of the area and the demand is not exceeded. The share grows until there would be more than `most` blocks.
 */
export function* tightBlocks(problem: SheetProblem, most: number): Asking<Block[]> {
  let complete: Block[] = [];
  for (const share of WASTE_STEPS) {
    const blocks = yield* blocksWithin(problem, share, most);
    if (blocks.length >= most) return complete.length > 0 ? complete : blocks;
    complete = blocks;
    if (yield* isTimeUp()) break;
  }
  return complete;
}

function* blocksWithin(problem: SheetProblem, share: number, most: number): Asking<Block[]> {
  const heap: Heap = { blocks: [], seen: new Set(), byWidth: new Map(), byHeight: new Map() };
  for (const shape of problem.shapes) keep(heap, { w: shape.w, h: shape.h, used: shape.w * shape.h, counts: [[shape.type, 1]], made: shape });
  for (let next = 0; next < heap.blocks.length && heap.blocks.length < most; next += 1) {
    const block = heap.blocks[next];
    if (!block) break;
    add(heap.byHeight, block.h, block);
    add(heap.byWidth, block.w, block);
    joinAll(problem, heap, block, "down", share, most);
    joinAll(problem, heap, block, "across", share, most);
    if (next % PAUSE_EVERY === 0 && (yield* isTimeUp())) break;
  }
  return heap.blocks;
}

function joinAll(problem: SheetProblem, heap: Heap, block: Block, dir: "down" | "across", share: number, most: number): void {
  const [side, by] = dir === "down" ? [block.h, heap.byHeight] : [block.w, heap.byWidth];
  const opening = Math.ceil(side * WINDOW_PER_SHARE * share);
  for (let other = Math.max(1, side - opening); other <= side + opening; other += 1) {
    for (const partner of by.get(other) ?? []) {
      if (heap.blocks.length >= most) return;
      const joined = joinedBlock(problem, block, partner, dir, share);
      if (joined) keep(heap, joined);
    }
  }
}

function joinedBlock(problem: SheetProblem, near: Block, far: Block, dir: "down" | "across", share: number): Block | null {
  const w = dir === "down" ? near.w + far.w : Math.max(near.w, far.w);
  const h = dir === "down" ? Math.max(near.h, far.h) : near.h + far.h;
  const used = near.used + far.used;
  if (w * h - used > share * w * h || !problem.stock.some((stock) => w <= stock.w && h <= stock.h)) return null;
  const counts = addedCounts(near.counts, far.counts, problem.demand);
  return counts && { w, h, used, counts, made: { dir, near, far } };
}

export function addedCounts(a: Block["counts"], b: Block["counts"], demand: readonly number[]): Block["counts"] | null {
  const sum: (readonly [number, number])[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    const [typeA, copiesA] = a[i] ?? [Infinity, 0];
    const [typeB, copiesB] = b[j] ?? [Infinity, 0];
    const type = Math.min(typeA, typeB);
    const copies = (typeA === type ? copiesA : 0) + (typeB === type ? copiesB : 0);
    if (copies > (demand[type] ?? 0)) return null;
    sum.push([type, copies]);
    if (typeA === type) i += 1;
    if (typeB === type) j += 1;
  }
  return sum;
}

function keep(heap: Heap, block: Block): void {
  const key = `${block.w}x${block.h}:${block.counts.join(";")}`;
  if (heap.seen.has(key)) return;
  heap.seen.add(key);
  heap.blocks.push(block);
}

function add(by: Map<number, Block[]>, key: number, block: Block): void {
  const list = by.get(key);
  if (list) list.push(block);
  else by.set(key, [block]);
}

export function blockPiece(block: Block): Piece {
  return "type" in block.made ? partPiece(block.made) : join(block.made.dir, blockPiece(block.made.near), blockPiece(block.made.far));
}
