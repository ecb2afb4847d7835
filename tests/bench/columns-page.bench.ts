import { getColumnsSheet } from "#lib/server/columns/columns-sheet.ts";
import { aCompany } from "#tests/support/builders/a-company.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { startBuiltServer } from "#tests/support/built-server.ts";
import { aTower, LIFTS } from "./parts/a-tower.ts";
import { withBenchDatabase } from "./parts/bench-database.ts";
import { below, percentile, type Row, timed } from "./parts/row.ts";
import { signInOver, weigh, type Answer } from "./parts/signed-in.ts";

const [WARM_UP, TIMES] = [10, 60];
const BUDGET_MS = 80;
const BUDGET_KB = 150;

async function repeated<T>(work: () => Promise<T>): Promise<T[]> {
  for (let count = 0; count < WARM_UP; count += 1) await work();
  const results: T[] = [];
  for (let count = 0; count < TIMES; count += 1) results.push(await work());
  return results;
}

/** The page of a project of 5,000 columns, part of them ticked: what the server needs for it, and what goes over the wire. */
export async function run(): Promise<Row[]> {
  return withBenchDatabase(async (databaseUrl) => {
    const company = await aCompany("Columns Bench");
    const { projectId } = await aTower(company.owner, "Columns", 2000);
    const sheet = await repeated(() => timed(async () => valueOf(await getColumnsSheet(company.owner, { projectId }))));

    const server = await startBuiltServer(databaseUrl);
    try {
      const who = await signInOver(server.url, company.emailOf("owner"));
      const pages = await repeated((): Promise<Answer> => weigh(who, `/projects/${projectId}/columns`));
      const wrong = pages.find(({ status, encoding }) => status !== 200 || encoding === "none");
      if (wrong) throw new Error(`The page came as ${wrong.status}, ${wrong.encoding}.`);
      const what = `columns page, ${LIFTS.toLocaleString("en")} columns`;
      return [
        below(`${what}: its use case, p95`, percentile(sheet, 0.95), BUDGET_MS, "ms"),
        below(`${what}: whole answer over HTTP, p95`, percentile(pages.map(({ ms }) => ms), 0.95), BUDGET_MS, "ms"),
        below(`${what}: compressed (${pages[0]?.encoding ?? ""})`, Math.max(...pages.map(({ bytes }) => bytes)) / 1024, BUDGET_KB, "KB"),
      ];
    } finally {
      await server.stop();
    }
  });
}
