import { type Asking, isTimeUp } from "#lib/kernel/linear-model.ts";
import { leaf, randomBranch } from "./branch.ts";
import { fits, type Opening } from "./openings.ts";
import { copiedSet, type Filled, putInto, putOnNew, type Refitting, roomsOf, type SheetSet, squareRoom, takeFrom } from "./sheet-set.ts";
import type { Shape } from "../filling/piece.ts";
import type { SheetProblem } from "../sheet-problem.ts";

const PAUSE_EVERY = 100;
const MOST_TRIES = 20;
const TAKEN_OUT = 5;
// How much worse a set may be to be gone on with, as a share of an average part, at first and in the end.
const WARM = 0.1;
const COLD = 0.01;
// What a square room of a size is worth as against a part of that size that found its place.
const ROOM_WORTH = 0.8;

/**
 * Some parts out, all that are left fitted in again wherever they fit tightest: on sheets that cost no more than the goal,
 * until every part is on one or the rounds are over (ruin and recreate, Schrimpf et al. 2000, towards a goal as with Gardeyn
 * and Wauters 2022; annealed). `seen` gets every sheet of the sets gone through.
 */
export function* refit(task: Refitting, from: SheetSet, rounds: number, seen: (sheet: Filled) => void): Asking<SheetSet> {
  const { problem, random } = task;
  const average = problem.demand.reduce((sum, count, type) => sum + count * (problem.areas[type] ?? 0), 0) / Math.max(1, problem.demand.reduce((sum, count) => sum + count, 0));
  let [now, best, burden] = [from, from, burdenOf(problem, from)];
  for (let round = 0; round < rounds && best.leftArea > 0; round += 1) {
    if (round % PAUSE_EVERY === 0 && (yield* isTimeUp())) break;
    const warmth = average * WARM * (COLD / WARM) ** (round / rounds);
    const worse = -warmth * Math.log(1 - random());
    const next = copiedSet(now);
    takeOut(task, next);
    if (!putBack(task, next, now.leftArea + worse + average * WARM)) continue;
    const its = burdenOf(problem, next);
    if (its > burden + worse && next.leftArea > 0) continue;
    for (const sheet of next.sheets) if (!now.sheets.includes(sheet)) seen(sheet);
    [now, burden] = [next, its];
    if (now.leftArea < best.leftArea) best = now;
  }
  return best;
}

/** The area left, less for rests that lie together: the largest square room of every sheet. */
const burdenOf = (problem: SheetProblem, set: SheetSet): number =>
  set.sheets.reduce((sum, sheet) => sum - ROOM_WORTH * sheet.copies * squareRoom(problem, sheet), set.leftArea);

function takeOut({ problem, random }: Refitting, set: SheetSet): void {
  const wanted = 1 + Math.floor(-Math.log(1 - random()) * TAKEN_OUT);
  let taken = 0;
  for (let tries = 0; taken < wanted && tries < MOST_TRIES && set.sheets.length > 0; tries += 1) {
    taken += takeFrom(problem, set, Math.floor(random() * set.sheets.length), (root) => randomBranch(root, random));
  }
}

/** False as soon as more than `most` of the area finds no place. */
function putBack(task: Refitting, set: SheetSet, most: number): boolean {
  const sizeOf = sizing(task);
  const tightness = TIGHTNESS[Math.floor(task.random() * TIGHTNESS.length)] ?? shortSide;
  const types = Array.from(set.left.keys()).filter((type) => (set.left[type] ?? 0) > 0).map((type) => ({ type, size: sizeOf(type) })).sort((a, b) => b.size - a.size);
  let out = 0;
  for (const { type } of types) {
    while ((set.left[type] ?? 0) > 0 && (putTightest(task, set, type, tightness) || putAnew(task, set, type)));
    out += (set.left[type] ?? 0) * (task.problem.areas[type] ?? 0);
    if (out > most) return false;
  }
  return true;
}

type Tightness = (opening: Opening, overW: number, overH: number) => number;
const shortSide: Tightness = (_, overW, overH) => Math.min(overW, overH);
const smallest: Tightness = ({ w, h }) => w * h;
const leastStrip: Tightness = ({ w, h }, overW, overH) => Math.min(overW * h, overH * w);
const TIGHTNESS = [shortSide, smallest, leastStrip];

/** Larger parts first, by their longer side, their half girth or their area, with some chance in it. */
function sizing({ problem, shapesOf, random }: Refitting): (type: number) => number {
  const kind = Math.floor(random() * 4);
  const wobble = random() * 0.6;
  return (type) => {
    const { w = 1, h = 1 } = shapesOf[type]?.[0] ?? {};
    const size = kind === 0 ? Math.max(w, h) ** 2 : kind === 1 ? (w + h) ** 2 / 4 : problem.areas[type] ?? 0;
    return size * (1 + wobble * (random() - 0.5));
  };
}

/** Parts wanted equally often go on the same sheets where they can. */
function putTightest(task: Refitting, set: SheetSet, type: number, tightness: Tightness): boolean {
  const left = set.left[type] ?? 0;
  const found = (left > 1 ? tightest(task, set, type, tightness, left) : null) ?? tightest(task, set, type, tightness, 1);
  if (!found) return false;
  putInto(task.problem, set, found.index, found.opening, found.shape);
  return true;
}

function tightest({ problem, shapesOf }: Refitting, set: SheetSet, type: number, tightness: Tightness, leastCopies: number): { index: number; opening: Opening; shape: Shape } | null {
  const shapes = shapesOf[type] ?? [];
  const [area, left] = [problem.areas[type] ?? 0, set.left[type] ?? 0];
  let least = Infinity;
  let found: { index: number; opening: Opening; shape: Shape } | null = null;
  for (let index = 0; index < set.sheets.length; index += 1) {
    const sheet = set.sheets[index];
    const stock = sheet && problem.stock[sheet.stock];
    if (!stock || sheet.copies > left || sheet.copies < leastCopies || stock.w * stock.h - sheet.used < area) continue;
    for (const opening of roomsOf(problem, sheet)) {
      for (const shape of shapes) {
        const over = fits(opening, shape) ? tightness(opening, opening.w - shape.w, opening.h - shape.h) : Infinity;
        if (over >= least) continue;
        least = over;
        found = { index, opening, shape };
      }
    }
  }
  return found;
}

/** On a new sheet the goal leaves room for, cut the same way as often as there are such parts left, or once. */
function putAnew({ problem, shapesOf, random, goal, repeats }: Refitting, set: SheetSet, type: number): boolean {
  const wanted = random() < repeats ? set.left[type] ?? 1 : 1;
  const open = problem.stock.flatMap(({ w, h, cost, supply }, stock) => {
    const there = supply === null ? Infinity : supply - set.sheets.reduce((sum, sheet) => sum + (sheet.stock === stock ? sheet.copies : 0), 0);
    const copies = Math.min(wanted, there, Math.floor((goal - set.cost) / cost + 1e-9));
    return copies < 1 ? [] : (shapesOf[type] ?? []).filter((shape) => shape.w <= w && shape.h <= h).map((shape) => ({ stock, copies, shape }));
  });
  const chosen = open[Math.floor(random() * open.length)];
  if (!chosen) return false;
  putOnNew(problem, set, chosen.stock, chosen.copies, leaf(chosen.shape), type);
  return true;
}
