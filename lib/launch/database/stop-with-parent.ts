import { type ChildProcess, spawn } from "node:child_process";

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
