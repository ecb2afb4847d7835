export type Row = { what: string; measured: string; budget: string; ok: boolean };

/** The value that the given part of all values does not exceed. */
export function percentile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(part * sorted.length) - 1)] ?? NaN;
}

export const median = (values: readonly number[]): number => percentile(values, 0.5);

export const below = (what: string, measured: number, budget: number, unit: string): Row => ({
  what, measured: `${measured < 10 ? measured.toFixed(1) : Math.round(measured).toLocaleString("en")} ${unit}`, budget: `< ${budget} ${unit}`, ok: measured < budget,
});

/** How long one piece of work takes, in ms. */
export async function timed(work: () => Promise<unknown>): Promise<number> {
  const started = performance.now();
  await work();
  return performance.now() - started;
}
