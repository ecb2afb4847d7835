import type { Asking } from "#lib/kernel/linear-model.ts";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool, type SolverPool } from "#lib/solver/solver-pool.ts";
import { assign } from "#lib/trade/planning/reuse/assignment.ts";
import { checkReusePlan } from "#lib/trade/planning/reuse/check-reuse-plan.ts";
import { planReuse } from "#lib/trade/planning/reuse/plan-reuse.ts";
import type { ReuseOrder } from "#lib/trade/planning/reuse/reuse-order.ts";
import { checkSheetPlan } from "#lib/trade/planning/sheets/check-sheet-plan.ts";
import { cutSheets } from "#lib/trade/planning/sheets/cut-sheets.ts";
import { fillOneSheet } from "#lib/trade/planning/sheets/fill-one-sheet.ts";
import type { SheetOrder } from "#lib/trade/planning/sheets/sheet-order.ts";
import { checkTimberPlan } from "#lib/trade/planning/timber/check-timber-plan.ts";
import { cutTimbers } from "#lib/trade/planning/timber/cut-timbers.ts";
import { BENCHMARKS, costMatrix, haveBenchmarks, knownValues, rawSheets, reuseInstance, sheetInstance, timberInstance } from "#tests/bench/parts/cutting-benchmarks.ts";

type Row = { what: string; measured: string; budget: string; ok: boolean };
type Run = <T>(asking: Asking<T>, limitMs: number) => Promise<{ value: T; ms: number }>;

export async function run(): Promise<Row[]> {
  const pool = createSolverPool(1);
  try {
    const timed = runOn(pool);
    const demo = [await demoReuse(timed), await demoSheets(timed)];
    if (!haveBenchmarks) return [...demo, { what: "published cutting instances", measured: `not run: ${BENCHMARKS} absent`, budget: "", ok: true }];
    return [...demo, await timberRow(timed), ...(await sheetRows(timed)), knapRow(), await assignRow(timed)];
  } finally {
    await pool.close();
  }
}

const runOn = (pool: SolverPool): Run => async (asking, limitMs) => {
  const started = performance.now();
  const value = await answerQuestions(asking, pool.solve, { nowMs: () => performance.now(), limitMs });
  return { value, ms: performance.now() - started };
};

const SIZES = [300, 350, 400, 450, 500, 550, 600, 350, 400, 450, 500, 600].map((width, mark) => ({ width, depth: width + 50 * (mark % 3) }));

/** A level of 60 columns in 12 marks, four panels each, five columns a day; panels of the level below at hand, some near their end. */
async function demoReuse(timed: Run): Promise<Row> {
  const panel = (index: number) => {
    const { width = 300, depth = 300 } = SIZES[Math.floor(index / 4) % SIZES.length] ?? {};
    return { widthMm: index % 4 < 2 ? width : depth + 34, heightMm: 2750, thicknessMm: 17, place: "site" };
  };
  const order: ReuseOrder = {
    newPerM2: 4200, recutEach: 600, newPanelUses: 7, carry: [],
    panels: Array.from({ length: 96 }, (_, index) => ({ ...panel(index * 5), id: `p${index}`, readyDay: index % 6, usesLeft: 1 + ((index * 7) % 5) })),
    demands: Array.from({ length: 240 }, (_, index) => ({ ...panel(index), id: `d${index}`, startDay: Math.floor(index / 20), backDay: Math.floor(index / 20) + 3, mayTurn: false })),
  };
  const { value, ms } = await timed(planReuse(order), 5_000);
  const proven = value.ok && value.value.proven && checkReusePlan(order, value.value).length === 0;
  return { what: "reuse plan, level of 60 columns, uses limited", measured: `${Math.round(ms)} ms, ${proven ? "proven optimal" : "not proven"}`, budget: "proven optimal < 5 s", ok: proven && ms < 5_000 };
}

async function demoSheets(timed: Run): Promise<Row> {
  const sheet = (id: string, widthMm: number, quantity: number | null, cost: number) => ({ id, widthMm, heightMm: 1200, trimMm: 0, quantity, cost });
  const order: SheetOrder = {
    kerfMm: 3, mostStages: 3, keepFrom: { longMm: 600, shortMm: 200 }, sheets: [sheet("long", 2400, null, 9600), sheet("rack", 1100, 4, 900)],
    parts: SIZES.flatMap(({ width, depth }, mark) => [width, depth + 34].map((across, face) => ({ id: `${mark}.${face}`, widthMm: 1180, heightMm: across, quantity: 6, mayTurn: false }))),
  };
  const { value, ms } = await timed(cutSheets(order), 2_800);
  const holds = value.ok && checkSheetPlan(order, value.value).length === 0;
  const over = value.ok ? Math.ceil((value.value.cost - value.value.areaBound) / 9600 - 1e-9) : Infinity;
  return { what: "cutting plan, panels of 12 marks", measured: `${Math.round(ms)} ms, ${over} sheets over the area bound${holds ? "" : ", breaks a rule"}`, budget: "< 3 s, at most 1 sheet over", ok: holds && ms < 3_000 && over <= 1 };
}

async function timberRow(timed: Run): Promise<Row> {
  const known = knownValues("cut1d");
  let hits = 0;
  let worst = 0;
  for (const [, { file, ub, kind }] of known) {
    const order = timberInstance(file);
    const { value } = await timed(cutTimbers(order), 9_500);
    const good = value.ok && checkTimberPlan(order, value.value).length === 0;
    if (good && value.value.cost <= ub) hits += 1;
    if (kind === "csp") worst = Math.max(worst, good ? value.value.cost - ub : Infinity);
  }
  return { what: "timber (cut1d) at best known, 10 s each", measured: `${hits} of ${known.length}, worst ${worst} over`, budget: ">= 90 %, never more than 1 over", ok: hits >= 0.9 * known.length && worst <= 1 };
}

async function sheetRows(timed: Run): Promise<Row[]> {
  const over: Record<string, number[]> = { vscsp: [], ply: [] };
  const bpp = { got: 0, known: 0 };
  for (const [, known] of knownValues("cut2d").filter(([, { kind }]) => kind !== "knap")) {
    for (const mayTurn of known.kind === "bpp" ? [true, false] : [true]) {
      const order = sheetInstance(known.file, mayTurn);
      const { value } = await timed(cutSheets(order), known.kind === "ply" ? 60_000 : 10_000);
      const cost = value.ok && checkSheetPlan(order, value.value).length === 0 ? value.value.cost : Infinity;
      if (known.kind === "bpp") { bpp.got += cost; bpp.known += (mayTurn ? known.rotation : known.noRotation).ub; }
      else over[known.kind]?.push(cost / (known.kind === "ply" ? known.optimum : known.freeGuillotineRotation.ub) - 1);
    }
  }
  const means = Object.entries(over).map(([kind, gaps]) => ({ kind, mean: gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length }));
  return [
    ...means.map(({ kind, mean }) => ({ what: `sheets (${kind}), mean over best known${kind === "ply" ? ", 60 s each" : ""}`, measured: `${(100 * mean).toFixed(2)} %`, budget: "<= 1 %", ok: mean <= 0.01 })),
    { what: "sheets (bpp, turned and not), total", measured: `${bpp.got} against ${bpp.known}`, budget: "<= 3 % over", ok: bpp.got <= 1.03 * bpp.known },
  ];
}

function knapRow(): Row {
  const known = knownValues("cut2d").filter(([, { kind }]) => kind === "knap");
  const hits = known.filter(([, { file, optimum }]) => {
    const { sheets, items, kerf } = rawSheets(file);
    return fillOneSheet(sheets[0]?.w ?? 0, sheets[0]?.h ?? 0, kerf, items.map((row) => ({ widthMm: row.w, heightMm: row.h, value: row.value, most: row.qty }))).value === optimum;
  }).length;
  return { what: "one sheet (knap) at the optimum", measured: `${hits} of ${known.length}`, budget: "all", ok: hits === known.length };
}

async function assignRow(timed: Run): Promise<Row> {
  const known = knownValues("assign");
  let hits = 0;
  for (const [, { file, kind, optimum }] of known) {
    const costs = kind === "orlib" ? costMatrix(file) : [];
    const { value } = await timed(planReuse(kind === "orlib" ? { panels: [], demands: [], newPerM2: 0, recutEach: 0, newPanelUses: null, carry: [] } : reuseInstance(file)), 5_000);
    if ((kind === "orlib" ? assign(costs, costs.length)?.cost : value.ok && value.value.cost) === optimum) hits += 1;
  }
  return { what: "reuse and assignment (assign) at the optimum", measured: `${hits} of ${known.length}`, budget: "all", ok: hits === known.length };
}
