import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { ReuseOrder } from "#lib/trade/planning/reuse/reuse-order.ts";
import type { SheetOrder } from "#lib/trade/planning/sheets/sheet-order.ts";
import type { TimberOrder } from "#lib/trade/planning/timber/timber-order.ts";

export const BENCHMARKS = "../shared/benchmarks";
export const haveBenchmarks = existsSync(join(BENCHMARKS, "cut1d/bks.json"));

type Known = { file: string; kind: string; ub: number; optimum: number; rotation: { ub: number }; noRotation: { ub: number }; freeGuillotineRotation: { ub: number } };
type Row = { w: number; h: number; qty: number | null; len: number; cost: number; value: number };

export const knownValues = (family: string): [string, Known][] => Object.entries(JSON.parse(read(`${family}/bks.json`)) as Record<string, Known>);
const read = (file: string): string => readFileSync(join(BENCHMARKS, file), "utf8");

export function timberInstance(file: string): TimberOrder {
  if (file.endsWith(".json")) {
    const { kerf, stock, items } = JSON.parse(read(`cut1d/${file}`)) as { kerf: number; stock: Row[]; items: Row[] };
    return {
      kerfMm: kerf, endTrimMm: 0, keepFromMm: 300,
      stock: stock.map((row, index) => ({ id: `s${index}`, lengthMm: row.len, quantity: row.qty, cost: row.cost })),
      parts: items.map((row, index) => ({ id: `p${index}`, lengthMm: row.len, quantity: row.qty ?? 0 })),
    };
  }
  const [types = 0, lengthMm = 0, ...rows] = numbers(`cut1d/${file}`);
  const parts = Array.from({ length: types }, (_, index) => ({ id: `p${index}`, lengthMm: rows[2 * index] ?? 0, quantity: rows[2 * index + 1] ?? 0 }));
  return { kerfMm: 0, endTrimMm: 0, keepFromMm: 300, stock: [{ id: "s", lengthMm, quantity: null, cost: 1 }], parts };
}

export function sheetInstance(file: string, mayTurn: boolean): SheetOrder {
  const { kerf, sheets, items } = rawSheets(file);
  return {
    kerfMm: kerf, mostStages: null, keepFrom: { longMm: 600, shortMm: 200 },
    sheets: sheets.map((row, index) => ({ id: `s${index}`, widthMm: row.w, heightMm: row.h, trimMm: 0, quantity: null, cost: row.cost })),
    parts: items.map((row, index) => ({ id: `p${index}`, widthMm: row.w, heightMm: row.h, quantity: row.qty ?? 0, mayTurn })),
  };
}

export const rawSheets = (file: string) => JSON.parse(read(`cut2d/${file}`)) as { kerf: number; sheets: Row[]; items: Row[] };

export function costMatrix(file: string): Float64Array[] {
  const [n = 0, ...costs] = numbers(`assign/${file}`);
  return Array.from({ length: n }, (_, row) => Float64Array.from(costs.slice(row * n, row * n + n)));
}

type ReuseFile = { panels: (Row & { ready: number })[]; demands: (Row & { start: number; strip: number })[]; newCentsPerM2: number; recutCents: number; turnaroundDays: number };

export function reuseInstance(file: string): ReuseOrder {
  const { panels, demands, newCentsPerM2, recutCents, turnaroundDays } = JSON.parse(read(`assign/${file}`)) as ReuseFile;
  const common = { thicknessMm: 17, place: "yard" };
  return {
    newPerM2: newCentsPerM2, recutEach: recutCents, newPanelUses: null, carry: [],
    panels: panels.map((row, index) => ({ ...common, id: `p${index}`, widthMm: row.w, heightMm: row.h, readyDay: row.ready, usesLeft: null })),
    demands: demands.map((row, index) => ({ ...common, id: `d${index}`, widthMm: row.w, heightMm: row.h, startDay: row.start, backDay: row.strip + turnaroundDays, mayTurn: true })),
  };
}

const numbers = (file: string): number[] => read(file).trim().split(/\s+/).map(Number);
