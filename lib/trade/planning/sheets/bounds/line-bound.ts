import { type Answer, type Asking, askFor, type Basis, isTimeUp, type LinearModel } from "#lib/kernel/linear-model.ts";
import { fillings } from "../../patterns/knapsack.ts";
import { type Measure, measures } from "./length-measures.ts";
import type { SheetProblem } from "../sheet-problem.ts";

/** What one line across a sheet can meet: shapes by number, each worth `cover` of its part for a whole sheet of such lines. */
type Line = { readonly stock: number; readonly cover: ReadonlyMap<number, number> };
type Item = { readonly type: number; readonly size: number; readonly cover: number };
type Task = { readonly problem: SheetProblem; readonly itemsOf: readonly (readonly Item[])[]; readonly needed: readonly boolean[] };

const MOST_ROUNDS = 150;
const NEW_LINES = 12;
const TOLERANCE = 1e-7;

/**
 * Draws lines across the sheets: what a line meets must fit on it, one behind the other, and a part is met by as many
 * lines as it is long. The cheapest mix of lines that meets every part in full is a bound for any way of cutting. Lengths
 * may be replaced by what they stand for in whole parts (see `measures`). Both directions; stops at `enough`.
 */
export function* lineBound(problem: SheetProblem, enough: number): Asking<number> {
  let best = 0;
  for (const measure of measures(problem)) {
    for (const turned of [false, true]) {
      if (best >= enough - TOLERANCE || (yield* isTimeUp())) return best;
      best = Math.max(best, yield* boundBy(taskOf(problem, measure, turned)));
    }
  }
  return best;
}

/** A part that some sheet can hold at no measured length at all costs nothing. */
function taskOf(problem: SheetProblem, measure: Measure, turned: boolean): Task {
  const needed = problem.demand.map((count) => count > 0);
  const itemsOf = problem.stock.map(({ w, h }) => problem.shapes.flatMap((shape): Item[] => {
    if (shape.w > w || shape.h > h) return [];
    const [length, size] = turned ? [shape.h / h, shape.w] : [shape.w / w, shape.h];
    const share = measure(length);
    if (share <= 0) { needed[shape.type] = false; return []; }
    return [{ type: shape.type, size, cover: 1 / share }];
  }));
  const along = turned ? problem.stock.map(({ w }) => w) : problem.stock.map(({ h }) => h);
  return { problem: { ...problem, stock: problem.stock.map((stock, index) => ({ ...stock, h: along[index] ?? 0 })) }, itemsOf, needed };
}

function* boundBy(task: Task): Asking<number> {
  const lines: Line[] = [];
  const known = new Set<string>();
  let basis: Basis | null = null;
  let best = 0;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const answer: Answer = yield* askFor({ model: mixOf(task, lines), ...(basis ? { from: basis } : {}) });
    if (answer.status !== "optimal") return best;
    basis = answer.basis;
    const { bound, better } = priced(task, answer);
    best = Math.max(best, bound);
    const fresh = better.filter((line) => {
      const key = `${line.stock}:${[...line.cover].join(";")}`;
      return !known.has(key) && known.add(key);
    });
    if (fresh.length === 0 || (yield* isTimeUp())) return best;
    lines.push(...fresh);
  }
  return best;
}

/** Lines worth more than their sheet, and what the prices, brought down until none is, prove (Farley 1990). */
function priced({ problem, itemsOf, needed }: Task, answer: Answer): { bound: number; better: Line[] } {
  const types = problem.demand.length;
  const price = (type: number) => (needed[type] ? Math.max(0, answer.duals[type] ?? 0) : 0);
  let ratio = 1;
  const better = problem.stock.flatMap((stock, index): Line[] => {
    const items = itemsOf[index] ?? [];
    const worth = stock.cost - (answer.duals[types + index] ?? 0);
    const found = fillings(items.map(({ type, size, cover }) => ({ size, value: price(type) * cover, most: problem.demand[type] ?? 0 })), [stock.h], [worth * (1 + TOLERANCE)]);
    found.sort((a, b) => b.value - a.value);
    if (found[0]) ratio = worth > 0 ? Math.max(ratio, found[0].value / worth) : Infinity;
    return found.slice(0, NEW_LINES).map(({ counts }) => ({ stock: index, cover: coverOf(items, counts) }));
  });
  const demandWorth = problem.demand.reduce((sum, count, type) => sum + count * price(type), 0);
  return { bound: answer.objective - demandWorth * (1 - 1 / ratio), better };
}

function coverOf(items: readonly Item[], counts: ReadonlyMap<number, number>): Map<number, number> {
  const cover = new Map<number, number>();
  for (const [index, copies] of counts) {
    const item = items[index];
    if (item) cover.set(item.type, (cover.get(item.type) ?? 0) + copies * item.cover);
  }
  return cover;
}

/** Rows: parts, then sheets there are. Columns: parts left out, dearer than any sheet, then the lines. */
function mixOf({ problem, needed }: Task, lines: readonly Line[]): LinearModel {
  const types = problem.demand.length;
  const out = 10 * Math.max(1, ...problem.stock.map(({ cost }) => cost));
  const columns = [
    ...problem.demand.map((_, type) => ({ cost: needed[type] ? out : 0, entries: [[type, 1]] as (readonly [number, number])[] })),
    ...lines.map(({ stock, cover }) => ({ cost: problem.stock[stock]?.cost ?? 0, entries: [...cover, [types + stock, 1] as const] })),
  ];
  const starts = new Int32Array(columns.length + 1);
  columns.forEach(({ entries }, index) => { starts[index + 1] = (starts[index] ?? 0) + entries.length; });
  return {
    whole: false,
    cost: Float64Array.from(columns, ({ cost }) => cost),
    lower: new Float64Array(columns.length),
    upper: new Float64Array(columns.length).fill(Infinity),
    rowLower: Float64Array.from([...problem.demand, ...problem.stock.map(() => 0)]),
    rowUpper: Float64Array.from([...problem.demand.map(() => Infinity), ...problem.stock.map(({ supply }) => supply ?? Infinity)]),
    starts,
    indices: Int32Array.from(columns.flatMap(({ entries }) => entries.map(([row]) => row))),
    values: Float64Array.from(columns.flatMap(({ entries }) => entries.map(([, value]) => value))),
  };
}
