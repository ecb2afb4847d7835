import pg from "pg";
import { ClearLine } from "./database/clear-line.ts";
import { noFilters, readMigrations, readSchema, schemaFolder, withSchemaEngine } from "./database/schema-engine.ts";

/** Any number will do, so long as every start uses the same one. */
const migrationLock = 7_350_211;

async function holdingLock<T>(databaseUrl: string, work: () => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: databaseUrl });
  client.on("error", () => undefined);
  await client.connect();
  try {
    await client.query("select pg_advisory_lock($1)", [migrationLock]);
    return await work();
  } finally {
    await client.end();
  }
}

/** Brings the database to the newest migration; returns the names of those applied now. Two starts take turns. */
export async function migrate(databaseUrl: string): Promise<readonly string[]> {
  const migrationsList = await readMigrations();
  if (migrationsList.migrationDirectories.length === 0) return [];
  return holdingLock(databaseUrl, () =>
    withSchemaEngine(databaseUrl, async (engine) => {
      await settleHistory(engine, migrationsList);
      const { appliedMigrationNames } = await engine.applyMigrations({ migrationsList, filters: noFilters });
      return appliedMigrationNames;
    }),
  ).catch(explain);
}

type Engine = Parameters<Parameters<typeof withSchemaEngine>[1]>[0];
type Migrations = Awaited<ReturnType<typeof readMigrations>>;

async function settleHistory(engine: Engine, migrationsList: Migrations): Promise<void> {
  const found = await engine.diagnoseMigrationHistory({ migrationsList, optInToShadowDatabase: false, filters: noFilters });
  const history = found.history?.diagnostic;
  if (history === "migrationsDirectoryIsBehind" || history === "historiesDiverge") {
    throw new ClearLine("The database was changed by another release of Shutterwright: start that release, or restore a backup made before it.");
  }
  // Each is applied all or not at all, so one that failed left nothing behind and is simply tried again.
  for (const migrationName of found.failedMigrationNames) await engine.markMigrationRolledBack({ migrationName });
}

function explain(error: unknown): never {
  if (!(error instanceof pg.DatabaseError)) throw error;
  throw new ClearLine(`The database could not be brought up to date and was left as it was: ${error.message}.`, { cause: error });
}

/** The SQL that would bring the database to prisma/schema: empty when they agree. */
export async function drift(databaseUrl: string): Promise<string> {
  return withSchemaEngine(databaseUrl, async (engine) => {
    const files = await readSchema();
    const result = await engine.diff({
      from: { tag: "schemaDatasource", files, configDir: schemaFolder },
      to: { tag: "schemaDatamodel", files },
      script: true,
      exitCode: true,
      filters: noFilters,
    });
    return result.exitCode === 0 ? "" : (result.stdout ?? "").trim();
  });
}
