import { ClearLine } from "../database/clear-line.ts";
import { checkExternal } from "../database/external.ts";
import { migrate } from "../migrate.ts";

try {
  const url = process.env["DATABASE_URL"]?.trim() ?? "";
  await checkExternal(url);
  const applied = await migrate(url);
  console.log(applied.length === 0 ? "The database is up to date." : `Applied: ${applied.join(", ")}.`);
} catch (error) {
  console.error(error instanceof ClearLine ? error.message : error);
  process.exitCode = 1;
}
