import writeWorkbook from "write-excel-file/node";
import { importSchedule } from "#lib/server/columns/import-schedule.ts";
import { previewSchedule } from "#lib/server/columns/schedule-preview.ts";
import { createProject } from "#lib/server/projects/projects.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { getColumnsSheet } from "#lib/server/columns/columns-sheet.ts";
import { readSheetRows } from "#lib/contracts/columns-sheet.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { STAGES } from "#lib/trade/progress/stages.ts";
import { PROJECT } from "#tests/support/builders/a-project.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { ask } from "#tests/support/raw-sql.ts";

export const LIFTS = 5000;
const LEVELS = ["GF", ...Array.from({ length: 20 }, (_, index) => `L${index + 1}`)];
const HEADINGS = ["Mark", "Grid", "Size (mm)", "From level", "To level", "From RL (m)", "To RL (m)", "Concrete", "Main bars", "Remarks"];

/** A tower of 250 columns over 20 storeys, as one sheet of a workbook. */
export async function aWorkbookOfLifts(): Promise<Uint8Array<ArrayBuffer>> {
  const rows = Array.from({ length: LIFTS }, (_, index) => {
    const [stack, storey] = [Math.floor(index / 20), index % 20];
    const letter = String.fromCharCode(65 + (stack % 25));
    const size = `${300 + 50 * (stack % 5)}x${450 + 50 * (storey % 4)}`;
    return [`P${stack % 40}`, `${letter}/${Math.floor(stack / 25) + 1}`, size, LEVELS[storey] ?? "", LEVELS[storey + 1] ?? "", storey * 3.3, (storey + 1) * 3.3, "C32/40", "8T25", "Fair faced"];
  });
  const cells = [HEADINGS, ...rows].map((row) => row.map((value) => ({ value })));
  return Uint8Array.from(await writeWorkbook(cells, { sheet: "Columns" }).toBuffer());
}

export type Tower = { readonly projectId: string; readonly columnIds: readonly string[] };

/** The tower as a project; `ticked` of its columns stand in stages that come round in turn. */
export async function aTower(by: Caller, name: string, ticked = 0): Promise<Tower> {
  const { id: projectId } = valueOf(await createProject(by, { ...PROJECT, name }));
  const file = { projectId, fileName: "tower.xlsx", file: await aWorkbookOfLifts() };
  valueOf(await importSchedule(by, { ...file, digest: valueOf(await previewSchedule(by, file)).digest }));
  const columnIds = readSheetRows(valueOf(await getColumnsSheet(by, { projectId }))).map(({ id }) => id);
  const events = columnIds.slice(0, ticked).map((id, index) => ({ ...aTick(id, STAGES[index % 4] ?? "cut"), reason: null }));
  for (let start = 0; start < events.length; start += 500) valueOf(await recordSiteEvents(by, { projectId, events: events.slice(start, start + 500) }));
  // PostgreSQL does so by itself within a minute of such an import; a bench does not wait that long.
  await ask(process.env["DATABASE_URL"] ?? "", "analyze");
  return { projectId, columnIds };
}
