import { readFile } from "node:fs/promises";
import { ClearLine } from "./clear-line.ts";

const causes: readonly (readonly [RegExp, (folder: string) => string])[] = [
  [/No space left on device|could not extend file/i, (folder) => `The disk holding ${folder} is full: free some space and start again.`],
  [/Permission denied|has wrong ownership|invalid permissions/i, (folder) => `The database's files in ${folder} cannot be read by its account: give them back to it, or start as the user who made them.`],
  [/database files are incompatible|was initialized by PostgreSQL version/i, (folder) => `The database in ${folder} was made by another PostgreSQL version: start the release that made it, or move ${folder} aside to begin afresh.`],
  [/Address already in use/i, (folder) => `The database's port is taken by another program: remove ${folder}/database-port to have a new one chosen.`],
];

const telling = /\b(FATAL|PANIC|ERROR|error):/;

/** What the database's log says went wrong, as one line that says what to do. */
export async function explainDatabaseLog(log: string, folder: string): Promise<ClearLine> {
  const lines = (await readFile(log, "utf8").catch(() => "")).trimEnd().split("\n").slice(-25);
  const text = lines.join("\n");
  const known = causes.find(([sign]) => sign.test(text));
  if (known) return new ClearLine(known[1](folder));
  const last = lines.findLast((line) => telling.test(line)) ?? lines.at(-1) ?? "";
  const said = last.replace(/^.*?(FATAL|PANIC|ERROR|error):\s*/, "").trim();
  return new ClearLine(
    `The database in ${folder} does not start (${said || "it said nothing"}): restore that folder from a backup, or move it aside to begin afresh; details are in ${log}.`,
  );
}
