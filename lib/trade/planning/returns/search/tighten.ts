import { type Answer, type Asking, askFor, isTimeUp } from "#lib/kernel/linear-model.ts";
import { type DraftedModel, linearModel, type Row } from "../model/model-draft.ts";
import type { ReturnModel } from "../model/return-model.ts";
import type { ReturnOrder } from "../return-order.ts";
import { truckCuts } from "./truck-cuts.ts";

/** A model with rows added that every plan keeps; `bound` is what its linear solution costs, `answer` that solution (null if none was reached). */
export type Tightened = { readonly drafted: DraftedModel; readonly bound: number; readonly answer: Answer | null };

const MOST_ROUNDS = 40;
const ROWS_A_ROUND = 150;
const LONGEST = 14;
const SLACK = 1e-5;
const LEAST_GAIN = 2e-5;

/** Solves with fractions, adds the rows of whole trucks that the solution breaks, and again, until none is broken or little is gained. */
export function* tighten(order: ReturnOrder, model: ReturnModel): Asking<Tightened> {
  const own = model.drafted.rows.length;
  let rows = model.drafted.rows;
  let last: Answer | null = null;
  for (let [round, stalls] = [0, 0]; round < MOST_ROUNDS && stalls < 4; round += 1) {
    const answer: Answer = yield* askFor({ model: linearModel({ ...model.drafted, rows }, false), ...(last?.basis ? { from: last.basis } : {}) });
    if (answer.status !== "optimal") break;
    stalls = !last || answer.objective > last.objective + LEAST_GAIN * Math.abs(last.objective) ? 0 : stalls + 1;
    last = answer;
    const cuts = truckCuts(order, model, answer.values, LONGEST).slice(0, ROWS_A_ROUND);
    if (cuts.length === 0 || (yield* isTimeUp())) break;
    rows = [...rows, ...cuts.map(({ row }) => row)];
  }
  return withTightRows(model.drafted, own, rows, last);
}

/** Only the rows that hold the solution up stay, and its basis with them. */
function withTightRows(drafted: DraftedModel, own: number, rows: readonly Row[], answer: Answer | null): Tightened {
  if (!answer) return { drafted, bound: -Infinity, answer: null };
  const kept = rows.flatMap((row, index) => (index < own || (index < (answer.basis?.rows.length ?? 0) && slackOf(row, answer.values) < SLACK) ? [index] : []));
  const basis = answer.basis ? { columns: answer.basis.columns, rows: Int32Array.from(kept, (index) => answer.basis?.rows[index] ?? 0) } : null;
  return { drafted: { ...drafted, rows: kept.flatMap((index) => rows[index] ?? []) }, bound: answer.objective, answer: { ...answer, basis, duals: Float64Array.from(kept, (index) => answer.duals[index] ?? 0) } };
}

const slackOf = ({ lower, terms }: Row, values: Float64Array): number => terms.reduce((sum, [column, factor]) => sum + factor * (values[column] ?? 0), -lower);
