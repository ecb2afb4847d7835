import { closeDb } from "#lib/server/platform/db.ts";
import { freshDatabase, serveFrom } from "#tests/support/test-database.ts";

let address: Promise<string> | undefined;

/** One database for all benches of a run, since a process serves from one; it goes with the run's PostgreSQL. */
export async function withBenchDatabase<T>(work: (databaseUrl: string) => Promise<T>): Promise<T> {
  address ??= freshDatabase().then(({ url }) => {
    serveFrom(url);
    return url;
  });
  return work(await address).finally(closeDb);
}
