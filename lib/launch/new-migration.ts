import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { migrationsFolder } from "./database/schema-engine.ts";
import { startTemporaryCluster } from "./database/temporary-cluster.ts";
import { drift, migrate } from "./migrate.ts";

/**
 * Writes the step from the migrations so far to prisma/schema, for its author to read and complete (roles, policies,
 * triggers, data). `new-migration.ts <name>` writes the file; without a name the SQL is only printed.
 */
async function newMigration(name: string | undefined): Promise<void> {
  const cluster = await startTemporaryCluster();
  try {
    const url = cluster.urlOf("postgres");
    await migrate(url);
    const sql = await drift(url);
    if (sql === "") console.log("-- prisma/schema and prisma/migrations agree.");
    if (sql === "" || name === undefined) return console.log(sql);
    const stamp = new Date().toISOString().replace(/\D/g, "").slice(0, 14);
    const folder = join(migrationsFolder, `${stamp}_${name.replace(/[^a-z0-9]+/gi, "_").toLowerCase()}`);
    await mkdir(folder, { recursive: true });
    await writeFile(join(migrationsFolder, "migration_lock.toml"), 'provider = "postgresql"\n');
    await writeFile(join(folder, "migration.sql"), `${sql}\n`);
    console.log(`Written: ${join(folder, "migration.sql")}`);
  } finally {
    await cluster.stop();
  }
}

await newMigration(process.argv[2]);
