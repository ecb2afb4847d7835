import { stat, writeFile } from "node:fs/promises";
import { join } from "node:path";
import pg from "pg";
import { ClearLine } from "./clear-line.ts";
import { type Cluster, clusterFolder, startCluster } from "./cluster.ts";
import { keptValue, newSecret } from "./data-folder.ts";
import { freePort, isFree } from "./free-port.ts";
import { settleLock } from "./left-behind.ts";

const databaseName = "shutterwright";

async function choosePort(folder: string): Promise<number> {
  const kept = Number(await keptValue(folder, "database-port", () => "0"));
  if (Number.isInteger(kept) && kept > 0 && kept < 65_536 && (await isFree(kept, "127.0.0.1"))) return kept;
  const port = await freePort();
  await writeFile(join(folder, "database-port"), `${port}\n`, { mode: 0o600 });
  return port;
}

async function ensureDatabase(cluster: Cluster): Promise<void> {
  const client = new pg.Client({ connectionString: cluster.urlOf("postgres") });
  await client.connect();
  try {
    const { rowCount } = await client.query("select 1 from pg_database where datname = $1", [databaseName]);
    if (rowCount === 0) await client.query(`create database ${databaseName}`);
  } finally {
    await client.end();
  }
}

const exists = (path: string): Promise<boolean> => stat(path).then(() => true, () => false);

export type EmbeddedDatabase = { readonly url: string; readonly ended: Promise<void>; stop(): Promise<void> };

/** The built-in database of a data folder, running. The caller holds the folder alone. */
export async function startEmbedded(folder: string): Promise<EmbeddedDatabase> {
  const files = clusterFolder(folder);
  if (await exists(files)) {
    await settleLock(files);
    const password = join(folder, "database-password");
    if (!(await exists(password))) throw new ClearLine(`${password} is missing, and without it ${files} cannot be opened: restore it from a backup of the data folder.`);
    if (!(await exists(join(files, "PG_VERSION")))) throw new ClearLine(`${files} holds no whole database: restore it from a backup, or move it aside to begin afresh.`);
  }
  const password = await keptValue(folder, "database-password", newSecret);
  const cluster = await startCluster({ folder, port: await choosePort(folder), password, durable: true });
  try {
    await ensureDatabase(cluster);
  } catch (error) {
    await cluster.stop();
    throw error;
  }
  return { url: cluster.urlOf(databaseName), ended: cluster.ended, stop: cluster.stop };
}
