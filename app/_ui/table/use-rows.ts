"use client";

import { useState } from "react";
import type { Failure } from "#lib/kernel/result.ts";

/** What the server said about one cell, by its dotted path. */
export const problemIn = (failure: Failure | undefined, field: string): string | undefined =>
  failure?.kind === "invalid" ? failure.problems.find((problem) => problem.field === field)?.message : undefined;

let made = 0;

/** The rows of a table while someone types in it; they start again from `given` once that has changed on the server. */
export function useRows<Given, Row>(given: readonly Given[], toRow: (item: Given) => Row) {
  const version = JSON.stringify(given);
  const [state, setState] = useState(() => ({ version, rows: given.map(toRow) }));
  if (state.version !== version) setState({ version, rows: given.map(toRow) });
  const setRows = (next: (rows: readonly Row[]) => Row[]) => setState((now) => ({ ...now, rows: next(now.rows) }));
  return {
    rows: state.rows,
    setRows,
    change: (index: number, part: Partial<Row>) => setRows((rows) => rows.map((row, at) => (at === index ? { ...row, ...part } : row))),
    remove: (index: number) => setRows((rows) => rows.filter((_row, at) => at !== index)),
    add: (makeRow: (key: string) => Row) => {
      made += 1;
      const key = `new-${made}`;
      setRows((rows) => [...rows, makeRow(key)]);
    },
  };
}
