import { afterAll, beforeAll } from "vitest";
import { closeDb } from "#lib/server/platform/db.ts";
import { freshDatabase, type TestDatabase } from "./test-database.ts";

type OwnDatabase = { readonly url: string };

/** What the server reads of its surroundings once, and keeps. */
export function serveFrom(databaseUrl: string, env: Readonly<Record<string, string>> = {}): void {
  Object.assign(process.env, {
    DATABASE_URL: databaseUrl, NEXTAUTH_SECRET: "a secret only the tests of this product know", ALLOW_NEW_COMPANIES: "true", LOG_LEVEL: "silent", ...env,
  });
}

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
