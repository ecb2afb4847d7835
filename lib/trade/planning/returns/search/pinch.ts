import type { Answer } from "#lib/kernel/linear-model.ts";
import type { DraftedModel } from "../model/model-draft.ts";

/** Columns kept to what a plan of at most `cost` can hold: a step off its limit costs at least the reduced cost over the linear solution. */
export function pinch(drafted: DraftedModel, { duals, values, objective }: Answer, cost: number): DraftedModel {
  const reduced = [...drafted.cost];
  drafted.rows.forEach(({ terms }, row) => {
    for (const [column, factor] of terms) reduced[column] = (reduced[column] ?? 0) - factor * (duals[row] ?? 0);
  });
  const room = cost - objective + 1;
  const steps = (column: number): number => Math.floor(room / Math.abs(reduced[column] ?? 0));
  const isAt = (column: number, limit: number): boolean => Math.abs((values[column] ?? 0) - limit) < 1e-6;
  const lower = drafted.lower.map((limit, column) => {
    const top = drafted.upper[column] ?? Infinity;
    return (reduced[column] ?? 0) < -1e-6 && isAt(column, top) ? Math.max(limit, top - steps(column)) : limit;
  });
  const upper = drafted.upper.map((limit, column) => {
    const bottom = drafted.lower[column] ?? 0;
    return (reduced[column] ?? 0) > 1e-6 && isAt(column, bottom) ? Math.min(limit, bottom + steps(column)) : limit;
  });
  return { ...drafted, lower, upper };
}
