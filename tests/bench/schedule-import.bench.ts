import { importSchedule } from "#lib/server/columns/import-schedule.ts";
import { previewSchedule } from "#lib/server/columns/schedule-preview.ts";
import { createProject } from "#lib/server/projects/projects.ts";
import { aCompany } from "#tests/support/builders/a-company.ts";
import { PROJECT } from "#tests/support/builders/a-project.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { aWorkbookOfLifts, LIFTS } from "./parts/a-tower.ts";
import { withBenchDatabase } from "./parts/bench-database.ts";
import { below, median, type Row, timed } from "./parts/row.ts";

const ROUNDS = 3;
const BUDGET_MS = 3000;

/** From the uploaded workbook over the preview to the last row kept; the file is read twice, as it is when a person confirms. */
export async function run(): Promise<Row[]> {
  return withBenchDatabase(async () => {
    const { office } = await aCompany("Import Bench");
    const bytes = await aWorkbookOfLifts();
    const took: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const { id: projectId } = valueOf(await createProject(office, { ...PROJECT, name: `Import ${round}` }));
      took.push(await timed(async () => {
        const file = { projectId, fileName: "tower.xlsx", file: bytes };
        const { digest } = valueOf(await previewSchedule(office, file));
        const { created } = valueOf(await importSchedule(office, { ...file, digest }));
        if (created !== LIFTS) throw new Error(`Only ${created} columns were created.`);
      }));
    }
    return [below(`import of a 5,000-column XLSX, preview and confirmation, median of ${ROUNDS}`, median(took), BUDGET_MS, "ms")];
  });
}
