import pg from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ClearLine } from "#lib/launch/database/clear-line.ts";
import { drift, migrate } from "#lib/launch/migrate.ts";
import { freshDatabase, type TestDatabase } from "#tests/support/test-database.ts";

describe("bringing a database up to date", () => {
  let database: TestDatabase;
  beforeAll(async () => void (database = await freshDatabase()));
  afterAll(() => database.drop());

  const ask = async (sql: string): Promise<pg.QueryResult> => {
    const client = new pg.Client({ connectionString: database.url });
    await client.connect();
    return client.query(sql).finally(() => client.end());
  };

  it("leaves nothing between the migrations and the schema", async () => {
    expect(await drift(database.url)).toBe("");
  });

  it("shows a change that no migration made", async () => {
    await ask("create table left_by_hand (id int primary key)");
    expect(await drift(database.url)).toContain("left_by_hand");
    await ask("drop table left_by_hand");
  });

  it("does nothing the second time", async () => {
    expect(await migrate(database.url)).toEqual([]);
  });

  it("lets two starts take turns on an empty database", async () => {
    await ask("create database taken_in_turns");
    const url = new URL(database.url);
    url.pathname = "taken_in_turns";
    const applied = await Promise.all([migrate(url.href), migrate(url.href)]);
    expect(applied.map((names) => names.length > 0).sort()).toEqual([false, true]);
    expect(await migrate(url.href)).toEqual([]);
    await ask("drop database taken_in_turns with (force)");
  });

  it("refuses a database changed by another release", async () => {
    await ask(`insert into _prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count)
      values ('later', '', '29990101000000_later', now(), 1)`);
    await expect(migrate(database.url)).rejects.toThrow(ClearLine);
    await expect(migrate(database.url)).rejects.toThrow("another release");
    await ask("delete from _prisma_migrations where id = 'later'");
  });

  it("runs the app's queries under a role that row-level security binds", async () => {
    const { rows } = await ask("select rolsuper, rolbypassrls, rolcanlogin from pg_roles where rolname = 'shutterwright_app'");
    expect(rows).toEqual([{ rolsuper: false, rolbypassrls: false, rolcanlogin: false }]);
  });
});
