import { afterAll, beforeAll } from "vitest";
import { closeDb } from "#lib/server/platform/db.ts";
import { freshDatabase, serveFrom, type TestDatabase } from "./test-database.ts";

type OwnDatabase = { readonly url: string };

/** Gives a test file a database of its own, and the use cases that database. */
export function ownDatabase(env: Readonly<Record<string, string>> = {}): OwnDatabase {
  let database: TestDatabase | undefined;
  beforeAll(async () => {
    database = await freshDatabase();
    serveFrom(database.url, env);
  });
  afterAll(async () => {
    await closeDb();
    await database?.drop();
  });
  return {
    get url() {
      if (!database) throw new Error("The database is there once the tests run.");
      return database.url;
    },
  };
}
