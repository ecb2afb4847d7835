import { type ChildProcess, execFile, spawn } from "node:child_process";
import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { ClearLine } from "./clear-line.ts";

const run = promisify(execFile);
const patienceMs = 25_000;

function exists(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

/**
 * A process id is used again after a restart: only a living PostgreSQL process can be the one that wrote the lock.
 * One that has ended may stay listed, where the machine's first process does not collect it.
 */
async function isDatabase(pid: number): Promise<boolean> {
  if (!exists(pid)) return false;
  const listed = await readFile(`/proc/${pid}/stat`, "utf8").catch(() => undefined);
  if (listed !== undefined) return /^\d+ \(postgres\) [^ZX]/.test(listed);
  return run("ps", ["-p", String(pid), "-o", "comm="]).then(({ stdout }) => stdout.includes("postgres"), () => true);
}

async function gone(pid: number): Promise<boolean> {
  const giveUp = Date.now() + patienceMs;
  while (await isDatabase(pid)) {
    if (Date.now() > giveUp) return false;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return true;
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
  if (await isDatabase(pid)) {
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

/**
 * A database outlives the process that started it when that one is killed outright. This watcher waits for its
 * standard input to close, which happens then and only then, and stops the database; what was only temporary it removes.
 */
export function stopWithParent(database: ChildProcess, terms: { readonly folder: string; readonly durable: boolean }): ChildProcess | undefined {
  if (database.pid === undefined || process.platform === "win32") return undefined;
  const remove = terms.durable ? "" : 'i=0; while [ $i -lt 100 ] && kill -0 "$1" 2>/dev/null; do i=$((i+1)); sleep 0.1; done; rm -rf "$2"';
  const watcher = spawn("sh", ["-c", `read -r _; kill -INT "$1"; ${remove}`, "sh", String(database.pid), terms.folder], {
    stdio: ["pipe", "ignore", "ignore"], detached: true,
  });
  watcher.on("error", () => undefined);
  watcher.unref();
  return watcher;
}
