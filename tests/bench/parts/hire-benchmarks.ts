import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { ReturnOrder } from "#lib/trade/planning/returns/return-order.ts";
import { BENCHMARKS } from "#tests/bench/parts/cutting-benchmarks.ts";

export const haveHireBenchmarks = existsSync(join(BENCHMARKS, "hire/bks.json"));

type HireFile = {
  periods: number; truckKg: number; tripCents: number; handlingCents: number;
  items: { kg: number; rateCentsPerPeriod: number; minPeriods: number; demand: number[] }[];
};
export type HireKnown = { file: string; lb: number; ub: number; justInTimePolicy: number };

const read = (file: string): string => readFileSync(join(BENCHMARKS, "hire", file), "utf8");
export const hireKnown = (): [string, HireKnown][] => Object.entries(JSON.parse(read("bks.json")) as Record<string, HireKnown>);

/** A unit may not go back before its least periods, but for the end, when everything does. */
export function hireInstance(file: string): ReturnOrder {
  const { periods, truckKg, tripCents, handlingCents, items } = JSON.parse(read(file)) as HireFile;
  return {
    dates: periods, trucks: [{ truckKg, tripCost: tripCents, mostTrips: 20 }], shared: [],
    items: items.map(({ kg, rateCentsPerPeriod, minPeriods, demand }, index) => ({
      id: `i${index}`, truck: 0, unitKg: kg, handlingIn: handlingCents, handlingOut: handlingCents, demand, lots: [],
      hireCharge: demand.map((_, from) => Array.from({ length: periods + 1 }, (_, to) => (to >= Math.min(from + minPeriods, periods) ? rateCentsPerPeriod * (to - from) : null))),
    })),
  };
}
