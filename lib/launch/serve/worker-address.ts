import { hostname } from "node:os";
import { ClearLine } from "../database/clear-line.ts";

/** How this machine's worker shows up in the database's list of connections. */
export const workerName = (): string => `shutterwright worker ${hostname()}`.slice(0, 63);

export function workerAddress(): string {
  const given = process.env["DATABASE_URL"]?.trim();
  if (!given) throw new ClearLine("The worker needs DATABASE_URL.");
  const url = new URL(given);
  url.searchParams.set("application_name", workerName());
  return url.href;
}
