import { type Answer, type Asking, askFor } from "#lib/kernel/linear-model.ts";
import { type DraftedModel, linearModel } from "../model/model-draft.ts";
import type { ReturnModel } from "../model/return-model.ts";
import type { Tightened } from "./tighten.ts";

type Depth = { readonly drafted: DraftedModel; readonly lower: number[]; readonly upper: number[]; answer: Answer };

const NEARLY = 1e-5;
const MOST_STEPS = 30;
/** So much of what is still in fractions is rounded at a step, the clearest first. */
const SHARE = 0.3;
const CLOSE_ENOUGH = 1e-5;
const FINISH_MS = 5_000;

/**
 * Down to whole numbers, solving again after each step: the trips of a date to the nearest, then what is on site up.
 * Values with whole stock, or null where the way down is blocked.
 */
export function* dive(model: ReturnModel, { drafted, answer }: Tightened): Asking<Float64Array | null> {
  if (!answer) return null;
  const depth: Depth = { drafted, lower: [...drafted.lower], upper: [...drafted.upper], answer };
  const down = (yield* roundAll(depth, model.trips.flat(), Math.round)) && (yield* roundAll(depth, model.items.flatMap((item) => item.stock), Math.ceil));
  return down ? depth.answer.values : yield* finish(depth, model);
}

/** Where rounding is blocked, full trucks are in the way: what is settled stays, more trips are allowed, and the rest is left to the solver. */
function* finish({ drafted, lower, upper }: Depth, model: ReturnModel): Asking<Float64Array | null> {
  const trips = new Set(model.trips.flat());
  const freed = upper.map((limit, column) => (trips.has(column) ? drafted.upper[column] ?? limit : limit));
  const answer = yield* askFor({ model: linearModel({ ...drafted, lower, upper: freed }, true), stopAtGap: CLOSE_ENOUGH, timeShareMs: FINISH_MS });
  return answer.values.length > 0 ? answer.values : null;
}

function* roundAll(depth: Depth, columns: readonly number[], round: (value: number) => number): Asking<boolean> {
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const at = (column: number): number => depth.answer.values[column] ?? 0;
    const left = (column: number): number => Math.abs(at(column) - round(at(column)));
    const open = columns.filter((column) => Math.abs(at(column) - Math.round(at(column))) > NEARLY).sort((a, b) => left(a) - left(b) || a - b);
    if (open.length === 0) return true;
    const chosen = open.slice(0, Math.ceil(open.length * SHARE));
    const settled = columns.filter((column) => !open.includes(column));
    const moved = (yield* solveHeld(depth, [...settled, ...chosen], round)) || (yield* solveHeld(depth, chosen, Math.ceil));
    if (!moved) return false;
  }
  return false;
}

function* solveHeld(depth: Depth, columns: readonly number[], round: (value: number) => number): Asking<boolean> {
  const [lower, upper] = [[...depth.lower], [...depth.upper]];
  for (const column of columns) {
    const value = depth.answer.values[column] ?? 0;
    const to = Math.abs(value - Math.round(value)) <= NEARLY ? Math.round(value) : round(value);
    lower[column] = to;
    upper[column] = to;
  }
  const answer = yield* askFor({ model: linearModel({ ...depth.drafted, lower, upper }, false), ...(depth.answer.basis ? { from: depth.answer.basis } : {}) });
  if (answer.status !== "optimal") return false;
  Object.assign(depth, { lower, upper, answer });
  return true;
}
