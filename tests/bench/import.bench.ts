import writeWorkbook from "write-excel-file/node";
import { readSheet } from "#lib/server/columns/read-sheet.ts";
import { readSchedule } from "#lib/trade/schedule/read-schedule.ts";

const LEVELS = ["GF", ...Array.from({ length: 20 }, (_, index) => `L${index + 1}`)];
const LIFTS = 5000;
const BUDGET_MS = 3000;

/** From an uploaded workbook of 5,000 rows to checked lifts; storing them is measured with the database. */
export async function run(): Promise<{ what: string; measured: string; budget: string; ok: boolean }[]> {
  const bytes = await aWorkbookOfLifts();
  const started = performance.now();
  const sheets = await readSheet(bytes, "tower.xlsx");
  const reading = readSchedule(sheets.ok ? sheets.value : [], "metric");
  const took = performance.now() - started;
  const whole = reading.counts.lifts === LIFTS && reading.counts.errors === 0;
  return [{ what: "read a 5,000-column XLSX schedule", measured: `${Math.round(took)} ms${whole ? "" : `, but only ${reading.counts.lifts} lifts`}`, budget: `< ${BUDGET_MS} ms`, ok: whole && took < BUDGET_MS }];
}

async function aWorkbookOfLifts(): Promise<Uint8Array> {
  const headings = ["Mark", "Grid", "Size (mm)", "From level", "To level", "From RL (m)", "To RL (m)", "Concrete", "Main bars", "Remarks"];
  const rows = Array.from({ length: LIFTS }, (_, index) => {
    const [stack, storey] = [Math.floor(index / 20), index % 20];
    const letter = String.fromCharCode(65 + (stack % 25));
    const size = `${300 + 50 * (stack % 5)}x${450 + 50 * (storey % 4)}`;
    return [`P${stack % 40}`, `${letter}/${Math.floor(stack / 25) + 1}`, size, LEVELS[storey] ?? "", LEVELS[storey + 1] ?? "", storey * 3.3, (storey + 1) * 3.3, "C32/40", "8T25", "Fair faced"];
  });
  const cells = [headings, ...rows].map((row) => row.map((value) => ({ value })));
  return new Uint8Array(await writeWorkbook(cells, { sheet: "Columns" }).toBuffer());
}
