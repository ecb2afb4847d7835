"use client";

import type { Failure } from "#lib/kernel/result.ts";
import { useEntries } from "./use-entries.ts";

/** What the server said about one cell, by its dotted path. */
export const problemIn = (failure: Failure | undefined, field: string): string | undefined =>
  failure?.kind === "invalid" ? failure.problems.find((problem) => problem.field === field)?.message : undefined;

let made = 0;

/** The rows of a table while someone types in it; see `useEntries`. */
export function useRows<Given, Row, Stamp extends string | number = string>(given: readonly Given[], toRow: (item: Given) => Row, stamp: Stamp = JSON.stringify(given) as Stamp) {
  const { value: rows, set, ...entries } = useEntries(stamp, (): readonly Row[] => given.map(toRow));
  return {
    ...entries,
    rows,
    setRows: (next: (rows: readonly Row[]) => Row[]) => set(next),
    change: (index: number, part: Partial<Row>) => set((now) => now.map((row, at) => (at === index ? { ...row, ...part } : row))),
    remove: (index: number) => set((now) => now.filter((_row, at) => at !== index)),
    add: (makeRow: (key: string) => Row) => {
      made += 1;
      const key = `new-${made}`;
      set((now) => [...now, makeRow(key)]);
    },
  };
}
