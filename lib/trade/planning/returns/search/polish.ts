import { type Asking, askFor, type Question } from "#lib/kernel/linear-model.ts";
import { type DraftedModel, linearModel } from "../model/model-draft.ts";
import type { ReturnModel } from "../model/return-model.ts";
import type { Tightened } from "./tighten.ts";

const NEARLY = 1e-6;
const AGREEING_MS = 4_000;
const WINDOW_MS = 1_500;
/** A window is a quarter of the dates, and the next one begins in its middle; together they leave more than half of the time for the proof. */
const WINDOWS = 4;

/**
 * The best plan in which every column on which the plan and the solution in fractions agree stays as it is. Values, or null
 * where none was found. Source: relaxation induced neighbourhood search, Danna, Rothberg and Le Pape, Mathematical
 * Programming 102 (2005) 71-90; from memory.
 */
export function* whereTheyAgree({ drafted, answer }: Tightened, plan: Float64Array, timeShare: number): Asking<Float64Array | null> {
  if (!answer) return null;
  return yield* nearby(drafted, plan, (column) => Math.abs((answer.values[column] ?? 0) - (plan[column] ?? 0)) < NEARLY, { timeShareMs: AGREEING_MS, timeShare: timeShare / 4 });
}

/** The windows of dates, each by its first date and the one after its last. */
export function windowsOf(dates: number): { readonly from: number; readonly to: number }[] {
  const step = Math.max(2, Math.ceil(dates / (2 * WINDOWS)));
  return Array.from({ length: Math.ceil(dates / step) }, (_, index) => ({ from: index * step, to: (index + 2) * step }));
}

/** The best plan that differs from this one only in what is on site, and which trucks come, between two dates. */
export function* within(model: ReturnModel, drafted: DraftedModel, plan: Float64Array, { from, to }: { readonly from: number; readonly to: number }, timeShare: number): Asking<Float64Array | null> {
  const outside = new Set<number>();
  for (const byDate of [...model.trips, ...model.items.map(({ stock }) => stock)]) byDate.forEach((column, date) => { if (date < from || date >= to) outside.add(column); });
  return yield* nearby(drafted, plan, (column) => outside.has(column), { timeShareMs: WINDOW_MS, timeShare: timeShare / (4 * WINDOWS) });
}

function* nearby(drafted: DraftedModel, plan: Float64Array, isHeld: (column: number) => boolean, time: Pick<Question, "timeShare" | "timeShareMs">): Asking<Float64Array | null> {
  const held = (limit: number, column: number): number => (isHeld(column) ? Math.round(plan[column] ?? 0) : limit);
  const model = linearModel({ ...drafted, lower: drafted.lower.map(held), upper: drafted.upper.map(held) }, true);
  const answer = yield* askFor({ model, hint: plan, ...time });
  return answer.values.length > 0 ? answer.values : null;
}
