import { partPiece, join, type Piece, rest, within } from "./piece.ts";
import type { Shape } from "./piece.ts";

/** Lengths that sums of parts can reach, and for every length the number of the largest such not above it. */
type Raster = { readonly points: Int32Array; readonly floor: Int32Array };
export type RasterGrid = { readonly xs: Raster; readonly ys: Raster; readonly shapes: readonly Shape[]; readonly work: number };
type Tables = { readonly value: Float64Array; readonly choice: Int32Array; readonly counts: Uint16Array; readonly types: number };

const NOTHING = -1;

/** Between cuts only places that sums of parts reach matter (Herz 1972, Christofides and Whitlock 1977). */
export function rasterGrid(shapes: readonly Shape[], demand: readonly number[], w: number, h: number): RasterGrid {
  const xs = raster(shapes.map((shape) => [shape.w, demand[shape.type] ?? 0] as const), w);
  const ys = raster(shapes.map((shape) => [shape.h, demand[shape.type] ?? 0] as const), h);
  return { xs, ys, shapes, work: xs.points.length * ys.points.length * (xs.points.length + ys.points.length) / 4 };
}

function raster(sizes: readonly (readonly [size: number, copies: number])[], room: number): Raster {
  const reached = new Uint8Array(room + 1);
  reached[0] = 1;
  for (const [size, copies] of sizes) {
    const used = new Int32Array(room + 1);
    for (let at = size; at <= room; at += 1) {
      if (reached[at] || !reached[at - size] || (used[at - size] ?? 0) >= copies) continue;
      reached[at] = 1;
      used[at] = (used[at - size] ?? 0) + 1;
    }
  }
  const points: number[] = [];
  const floor = new Int32Array(room + 1);
  for (let at = 0; at <= room; at += 1) {
    if (reached[at]) points.push(at);
    floor[at] = points.length - 1;
  }
  return { points: Int32Array.from(points), floor };
}

/** `pieces`: the best filling and, by other first cuts, some more worth more than the floor. */
export type RasterFilling = { readonly value: number; readonly pieces: (floor: number, most: number) => Piece[] };

/**
 * The most valuable filling of every raster rectangle by guillotine cuts: a part in the corner, or the two best fillings
 * on both sides of a cut. Exact without limits on copies. With `limits` one filling is kept for each rectangle and what
 * exceeds the limits counts for nothing, which is quick but may miss the best.
 */
export function rasterFilling(grid: RasterGrid, values: readonly number[], limits: readonly number[] | null): (w: number, h: number) => RasterFilling {
  const { xs, ys } = grid;
  const tables = emptyTables(xs.points.length * ys.points.length, limits ? values.length : 0);
  placeParts(grid, values, limits, tables);
  for (let i = 0; i < xs.points.length; i += 1) {
    for (let j = 0; j < ys.points.length; j += 1) bestCut(grid, i, j, values, limits, tables);
  }
  return (w, h) => {
    const at = (xs.floor[w] ?? 0) * ys.points.length + (ys.floor[h] ?? 0);
    const value = tables.value[at] ?? 0;
    return { value, pieces: (floor, most) => (value > floor ? [pieceAt(grid, tables, at), ...otherFirstCuts(grid, tables, at, floor, most)].map((piece) => within(piece, w, h)) : []) };
  };
}

function emptyTables(cells: number, types: number): Tables {
  return { value: new Float64Array(cells), choice: new Int32Array(cells).fill(NOTHING), counts: new Uint16Array(cells * types), types };
}

function placeParts(grid: RasterGrid, values: readonly number[], limits: readonly number[] | null, { value, choice, counts, types }: Tables): void {
  const rows = grid.ys.points.length;
  grid.shapes.forEach((shape, index) => {
    const worth = values[shape.type] ?? 0;
    if (worth <= 0 || (limits && (limits[shape.type] ?? 0) < 1) || shape.w >= grid.xs.floor.length || shape.h >= grid.ys.floor.length) return;
    const at = (grid.xs.floor[shape.w] ?? 0) * rows + (grid.ys.floor[shape.h] ?? 0);
    if (worth <= (value[at] ?? 0)) return;
    value[at] = worth;
    choice[at] = index;
    if (!limits) return;
    counts.fill(0, at * types, (at + 1) * types);
    counts[at * types + shape.type] = 1;
  });
}

// A cell's choice is a shape, or past the shapes: the near part of its cut, down then across; the far part follows from it.
function bestCut(grid: RasterGrid, i: number, j: number, values: readonly number[], limits: readonly number[] | null, tables: Tables): void {
  const { xs, ys, shapes } = grid;
  const rows = ys.points.length;
  const columns = xs.points.length;
  const at = i * rows + j;
  const { value } = tables;
  let best = value[at] as number;
  const x = xs.points[i] as number;
  const y = ys.points[j] as number;
  for (let a = 0; a < columns && 2 * (xs.points[a] as number) <= x; a += 1) {
    const near = a * rows + j;
    const far = (xs.floor[x - (xs.points[a] as number)] as number) * rows + j;
    if (far === at || (value[near] as number) + (value[far] as number) <= best + 1e-9) continue;
    best = take(tables, at, near, far, shapes.length + a, best, values, limits);
  }
  for (let b = 0; b < rows && 2 * (ys.points[b] as number) <= y; b += 1) {
    const near = i * rows + b;
    const far = i * rows + (ys.floor[y - (ys.points[b] as number)] as number);
    if (far === at || (value[near] as number) + (value[far] as number) <= best + 1e-9) continue;
    best = take(tables, at, near, far, shapes.length + columns + b, best, values, limits);
  }
  // A cell is worth what the next smaller ones are.
  if (i > 0 && (value[at - rows] as number) > best + 1e-9) best = take(tables, at, at - rows, 0, shapes.length + columns + rows, best, values, limits);
  if (j > 0 && (value[at - 1] as number) > best + 1e-9) take(tables, at, at - 1, 0, shapes.length + columns + rows + 1, best, values, limits);
}

function take({ value, choice, counts, types }: Tables, at: number, near: number, far: number, code: number, best: number, values: readonly number[], limits: readonly number[] | null): number {
  let worth = (value[near] as number) + (value[far] as number);
  if (limits) {
    for (let type = 0; type < types; type += 1) {
      const over = (counts[near * types + type] as number) + (counts[far * types + type] as number) - (limits[type] as number);
      if (over > 0) worth -= over * (values[type] as number);
    }
    if (worth <= best + 1e-9) return best;
    for (let type = 0; type < types; type += 1) {
      counts[at * types + type] = Math.min(limits[type] as number, (counts[near * types + type] as number) + (counts[far * types + type] as number));
    }
  }
  value[at] = worth;
  choice[at] = code;
  return worth;
}

function otherFirstCuts(grid: RasterGrid, tables: Tables, at: number, floor: number, most: number): Piece[] {
  const { xs, ys } = grid;
  const rows = ys.points.length;
  const [i, j] = [Math.floor(at / rows), at % rows];
  const [x, y] = [xs.points[i] ?? 0, ys.points[j] ?? 0];
  const downs = Array.from(xs.points.subarray(1, i)).filter((cut) => 2 * cut <= x).map((cut) => ({ dir: "down" as const, near: (xs.floor[cut] ?? 0) * rows + j, far: (xs.floor[x - cut] ?? 0) * rows + j }));
  const acrosses = Array.from(ys.points.subarray(1, j)).filter((cut) => 2 * cut <= y).map((cut) => ({ dir: "across" as const, near: i * rows + (ys.floor[cut] ?? 0), far: i * rows + (ys.floor[y - cut] ?? 0) }));
  const worth = ({ near, far }: { near: number; far: number }) => (tables.value[near] ?? 0) + (tables.value[far] ?? 0);
  return [...downs, ...acrosses]
    .filter((cut) => worth(cut) > floor)
    .sort((a, b) => worth(b) - worth(a))
    .slice(0, most)
    .map(({ dir, near, far }) => join(dir, pieceAt(grid, tables, near), pieceAt(grid, tables, far)));
}

function pieceAt(grid: RasterGrid, tables: Tables, at: number): Piece {
  const { xs, ys, shapes } = grid;
  const rows = ys.points.length;
  const columns = xs.points.length;
  const [i, j] = [Math.floor(at / rows), at % rows];
  const [x, y] = [xs.points[i] ?? 0, ys.points[j] ?? 0];
  const code = tables.choice[at] ?? NOTHING;
  const shape = shapes[code];
  if (code === NOTHING) return rest(x, y);
  if (shape) return within(partPiece(shape), x, y);
  if (code < shapes.length + columns) {
    const cut = xs.points[code - shapes.length] ?? 0;
    return within(join("down", pieceAt(grid, tables, (xs.floor[cut] ?? 0) * rows + j), pieceAt(grid, tables, (xs.floor[x - cut] ?? 0) * rows + j)), x, y);
  }
  if (code < shapes.length + columns + rows) {
    const cut = ys.points[code - shapes.length - columns] ?? 0;
    return within(join("across", pieceAt(grid, tables, i * rows + (ys.floor[cut] ?? 0)), pieceAt(grid, tables, i * rows + (ys.floor[y - cut] ?? 0))), x, y);
  }
  return within(pieceAt(grid, tables, code === shapes.length + columns + rows ? at - rows : at - 1), x, y);
}
