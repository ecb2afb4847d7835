import type { RandomNumbers } from "#lib/kernel/random-numbers.ts";
import type { Shape } from "../filling/piece.ts";
import type { SheetProblem } from "../sheet-problem.ts";
import { type Branch, copied, parts, without } from "./branch.ts";
import { fill, type Opening, openings } from "./openings.ts";

/** `copies` sheets of one stock cut the same way; `used` is the area of the parts on one. Never changed: a change makes a new one. */
export type Filled = { readonly stock: number; readonly copies: number; readonly root: Branch; readonly used: number; rooms: readonly Opening[] | null; square: number | null };

/** Sheets, what they cost, and how many of each type are on none. */
export type SheetSet = { readonly sheets: Filled[]; readonly left: Int32Array; cost: number; leftArea: number };

/** What a search at random works with. `repeats`: how often a new sheet is to be cut more than once the same way, 0 to 1. */
export type Refitting = { readonly problem: SheetProblem; readonly shapesOf: readonly (readonly Shape[])[]; readonly random: RandomNumbers; readonly goal: number; readonly repeats: number };

export function emptySet({ demand, areas }: SheetProblem): SheetSet {
  return { sheets: [], left: Int32Array.from(demand), cost: 0, leftArea: demand.reduce((sum, count, type) => sum + count * (areas[type] ?? 0), 0) };
}

export const copiedSet = ({ sheets, left, cost, leftArea }: SheetSet): SheetSet => ({ sheets: [...sheets], left: left.slice(), cost, leftArea });

export const roomsOf = (problem: SheetProblem, sheet: Filled): readonly Opening[] => {
  const { w = 0, h = 0 } = problem.stock[sheet.stock] ?? {};
  return (sheet.rooms ??= openings(sheet.root, w, h, problem.mostStages));
};

/** The area of the largest square for which there is room. */
export const squareRoom = (problem: SheetProblem, sheet: Filled): number =>
  (sheet.square ??= roomsOf(problem, sheet).reduce((most, { w, h }) => Math.max(most, Math.min(w, h) ** 2), 0));

/** One part from each of the copies into the opening. */
export function putInto(problem: SheetProblem, set: SheetSet, index: number, opening: Opening, shape: Shape): void {
  const sheet = set.sheets[index];
  if (!sheet) return;
  const { root, at, way } = copiedAlong(sheet.root, opening);
  set.sheets[index] = { ...sheet, root: fill(root, { ...opening, at, way }, shape), used: sheet.used + shape.w * shape.h, rooms: null, square: null };
  count(problem, set, shape.type, -sheet.copies);
}

export function putOnNew(problem: SheetProblem, set: SheetSet, stock: number, copies: number, root: Branch, type: number): void {
  set.sheets.push({ stock, copies, root, used: root.w * root.h, rooms: null, square: null });
  set.cost += copies * (problem.stock[stock]?.cost ?? 0);
  count(problem, set, type, -copies);
}

/** Takes out what `pick` names on a copy of the sheet; a sheet that is empty then goes too. */
export function takeFrom(problem: SheetProblem, set: SheetSet, index: number, pick: (root: Branch) => Branch): number {
  const sheet = set.sheets[index];
  if (!sheet) return 0;
  const root = copied(sheet.root);
  const gone = pick(root);
  const goneParts = parts(gone);
  for (const { shape } of goneParts) if (shape) count(problem, set, shape.type, sheet.copies);
  const kept = without(root, gone);
  if (kept) set.sheets[index] = { ...sheet, root: kept, used: sheet.used - goneParts.reduce((sum, part) => sum + part.w * part.h, 0), rooms: null, square: null };
  else {
    set.sheets.splice(index, 1);
    set.cost -= sheet.copies * (problem.stock[sheet.stock]?.cost ?? 0);
  }
  return goneParts.length;
}

function count({ areas }: SheetProblem, set: SheetSet, type: number, change: number): void {
  set.left[type] = (set.left[type] ?? 0) + change;
  set.leftArea += change * (areas[type] ?? 0);
}

/** A copy of the tree, and in it the branches the opening names. */
function copiedAlong(root: Branch, { at, way }: Opening): { root: Branch; at: Branch; way: Branch[] } {
  const copy = copied(root);
  const copiedWay: Branch[] = [];
  let [from, to] = [root, copy];
  for (const step of [...way, at]) {
    if (step === from) continue;
    copiedWay.push(to);
    to = to.members[from.members.indexOf(step)] ?? to;
    from = step;
  }
  return { root: copy, at: to, way: copiedWay };
}
