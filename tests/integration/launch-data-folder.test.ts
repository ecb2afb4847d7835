import { spawn, spawnSync } from "node:child_process";
import { chmod, mkdir, mkdtemp, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openDataFolder } from "#lib/launch/database/data-folder.ts";
import { type EmbeddedDatabase, startEmbedded } from "#lib/launch/database/embedded.ts";
import { AlreadyRunning, holdFolder } from "#lib/launch/serve/instance-lock.ts";

let folder: string;
const running: EmbeddedDatabase[] = [];

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "shutterwright-folder-"));
  await chmod(folder, 0o711);
});

afterEach(async () => {
  await Promise.all(running.splice(0).map((database) => database.stop()));
  await rm(folder, { recursive: true, force: true });
});

async function start(): Promise<EmbeddedDatabase> {
  const database = await startEmbedded(folder);
  running.push(database);
  return database;
}

async function answer(url: string, sql: string): Promise<unknown> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  const { rows } = await client.query<{ answer: unknown }>(sql).finally(() => client.end());
  return rows[0]?.answer;
}

/** The id of a process that has just ended. */
const endedProcess = (): number => spawnSync(process.execPath, ["-e", ""]).pid;

describe("the built-in database", () => {
  it("keeps its data, port and password over a restart, and its secrets to its owner", async () => {
    const first = await start();
    await answer(first.url, "create table kept as select 7 as answer");
    await first.stop();
    running.length = 0;
    const second = await start();
    expect(second.url).toBe(first.url);
    expect(await answer(second.url, "select answer from kept")).toBe(7);
    expect((await stat(join(folder, "database-password"))).mode & 0o077).toBe(0);
    expect(await answer(second.url, "select pg_encoding_to_char(encoding) as answer from pg_database where datname = current_database()")).toBe("UTF8");
  });

  it("starts over a lock left by a process that is gone, or that is another program by now", async () => {
    const first = await start();
    await first.stop();
    running.length = 0;
    for (const pid of [endedProcess(), process.pid]) {
      await writeFile(join(folder, "postgres", "postmaster.pid"), `${pid}\n${join(folder, "postgres")}\n1\n1\n\n127.0.0.1\n`);
      const again = await start();
      expect(await answer(again.url, "select 1 as answer")).toBe(1);
      await again.stop();
      running.length = 0;
    }
  });

  it("takes over from a database whose starter was killed", async () => {
    const orphan = await start();
    const heir = await start();
    await orphan.ended;
    expect(await answer(heir.url, "select 1 as answer")).toBe(1);
  });

  it("chooses another port when its own is taken meanwhile", async () => {
    const first = await start();
    const { port } = new URL(first.url);
    await first.stop();
    running.length = 0;
    const squatter = spawn(process.execPath, ["-e", `require("net").createServer().listen(${port}, "127.0.0.1", () => console.log("there"))`]);
    await new Promise((resolve) => squatter.stdout.once("data", resolve));
    const second = await start().finally(() => squatter.kill());
    expect(new URL(second.url).port).not.toBe(port);
  });
});

describe("a data folder that is no good", () => {
  it("is refused when it is a file", async () => {
    const path = join(folder, "file");
    await writeFile(path, "");
    await expect(openDataFolder(path)).rejects.toThrow(/^The data folder .* cannot be used \(that path is a file\): .*DATA_DIR/);
  });

  it("is refused when it holds half a database", async () => {
    await mkdir(join(folder, "postgres"));
    await writeFile(join(folder, "database-password"), "secret\n");
    await expect(startEmbedded(folder)).rejects.toThrow(/holds no whole database: restore it from a backup/);
  });

  it("is refused when the password is gone, and the database is left alone", async () => {
    await (await start()).stop();
    running.length = 0;
    await rm(join(folder, "database-password"));
    await expect(startEmbedded(folder)).rejects.toThrow(/database-password is missing/);
    expect((await readFile(join(folder, "postgres", "PG_VERSION"), "utf8")).trim()).toBe("18");
  });

  it("is refused when a database file is damaged", async () => {
    await (await start()).stop();
    running.length = 0;
    await writeFile(join(folder, "postgres", "global", "pg_control"), "damaged");
    await expect(startEmbedded(folder)).rejects.toThrow(/^The database in .* does not start \(.+\): restore that folder from a backup/);
  });
});

describe("two starts on one data folder", () => {
  it("tells the second where the first is, and frees the folder with the first", async () => {
    const first = await holdFolder(folder);
    await expect(holdFolder(folder)).rejects.toThrow(/^Another start is already at work on /);
    first.announce("http://localhost:3210");
    await expect(holdFolder(folder)).rejects.toThrow(AlreadyRunning);
    await expect(holdFolder(folder)).rejects.toThrow("http://localhost:3210");
    await first.release();
    await (await holdFolder(folder)).release();
  });

  it("ignores a note whose writer is gone", async () => {
    await writeFile(join(folder, "running.json"), JSON.stringify({ pid: process.pid, port: 1, word: "old" }));
    await (await holdFolder(folder)).release();
  });
});
