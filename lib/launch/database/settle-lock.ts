import { execFile } from "node:child_process";
import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { ClearLine } from "./clear-line.ts";

const run = promisify(execFile);
const patienceMs = 25_000;

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

/** A process id is used again after a restart: only a PostgreSQL process can be the one that wrote the lock. */
async function isPostgres(pid: number): Promise<boolean> {
  try {
    const { stdout } = await run("ps", ["-p", String(pid), "-o", "comm="]);
    return stdout.includes("postgres");
  } catch {
    const name = await readFile(`/proc/${pid}/comm`, "utf8").catch(() => "");
    return name.includes("postgres");
  }
}

async function gone(pid: number): Promise<boolean> {
  const giveUp = Date.now() + patienceMs;
  while (isAlive(pid) && Date.now() < giveUp) await new Promise((resolve) => setTimeout(resolve, 50));
  return !isAlive(pid);
}

/**
 * The caller already holds the data folder, so a database still running on it was left behind by a start that was
 * killed: it is asked to stop. A lock whose process is gone, or is no database, is removed.
 */
export async function settleLock(folder: string): Promise<void> {
  const lock = join(folder, "postmaster.pid");
  const first = (await readFile(lock, "utf8").catch(() => "")).split("\n")[0] ?? "";
  const pid = Number(first);
  if (!Number.isInteger(pid) || pid <= 0) return rm(lock, { force: true });
  if (isAlive(pid) && (await isPostgres(pid))) {
    try {
      process.kill(pid, "SIGINT");
    } catch {
      throw heldBy(folder, pid);
    }
    if (!(await gone(pid))) throw heldBy(folder, pid);
  }
  await rm(lock, { force: true });
}

function heldBy(folder: string, pid: number): ClearLine {
  return new ClearLine(`The database in ${folder} is still held by process ${pid}: stop it (kill ${pid}) and start again.`);
}
