import type { LinearModel } from "#lib/kernel/linear-model.ts";

export type Term = readonly [column: number, factor: number];
export type Row = { readonly lower: number; readonly upper: number; readonly terms: readonly Term[] };

/** A model in whole numbers while it is put together row by row; columns are known by their number. */
export type ModelDraft = {
  readonly column: (cost: number, lower: number, upper: number) => number;
  readonly charge: (column: number, more: number) => void;
  readonly forbid: (column: number) => void;
  readonly row: (lower: number, upper: number, terms: readonly Term[]) => void;
  readonly finished: () => DraftedModel;
};

export type DraftedModel = { readonly cost: readonly number[]; readonly lower: readonly number[]; readonly upper: readonly number[]; readonly rows: readonly Row[] };

export function startDraft(): ModelDraft {
  const cost: number[] = [];
  const lower: number[] = [];
  const upper: number[] = [];
  const rows: Row[] = [];
  return {
    column: (each, least, most) => {
      lower.push(least);
      upper.push(most);
      return cost.push(each) - 1;
    },
    charge: (column, more) => { cost[column] = (cost[column] ?? 0) + more; },
    forbid: (column) => { upper[column] = 0; },
    row: (least, most, terms) => void rows.push({ lower: least, upper: most, terms }),
    finished: () => ({ cost, lower, upper, rows }),
  };
}

export function linearModel({ cost, lower, upper, rows }: DraftedModel, whole: boolean): LinearModel {
  const starts = new Int32Array(cost.length + 1);
  for (const { terms } of rows) for (const [column] of terms) starts[column + 1] = (starts[column + 1] ?? 0) + 1;
  for (let column = 0; column < cost.length; column += 1) starts[column + 1] = (starts[column + 1] ?? 0) + (starts[column] ?? 0);
  const next = starts.slice();
  const indices = new Int32Array(starts[cost.length] ?? 0);
  const values = new Float64Array(indices.length);
  rows.forEach(({ terms }, row) => {
    for (const [column, factor] of terms) {
      const at = next[column] ?? 0;
      indices[at] = row;
      values[at] = factor;
      next[column] = at + 1;
    }
  });
  return {
    whole, starts, indices, values,
    cost: Float64Array.from(cost), lower: Float64Array.from(lower), upper: Float64Array.from(upper),
    rowLower: Float64Array.from(rows, (row) => row.lower), rowUpper: Float64Array.from(rows, (row) => row.upper),
  };
}
