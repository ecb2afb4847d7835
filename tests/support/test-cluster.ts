import pg from "pg";
import type { Cluster } from "#lib/launch/database/cluster.ts";
import { startTemporaryCluster } from "#lib/launch/database/temporary-cluster.ts";
import { migrate } from "#lib/launch/migrate.ts";

/** Tells the processes of a run where its PostgreSQL is. */
export const clusterVariable = "TEST_CLUSTER_URL";
export const templateName = "template_migrated";

/** Starts a run's own PostgreSQL with one database brought up to date, from which every test's database is copied. */
export async function startTestCluster(start: () => Promise<Cluster> = startTemporaryCluster): Promise<Cluster> {
  const cluster = await start();
  try {
    const client = new pg.Client({ connectionString: cluster.urlOf("postgres") });
    await client.connect();
    await client.query(`create database ${templateName}`).finally(() => client.end());
    await migrate(cluster.urlOf(templateName));
  } catch (error) {
    await cluster.stop();
    throw error;
  }
  process.env[clusterVariable] = cluster.urlOf("postgres");
  return cluster;
}
