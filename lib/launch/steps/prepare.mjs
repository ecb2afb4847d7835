import { ensureClient } from "./generate-client.mjs";
import { ensureInstalled } from "./install.mjs";
import { projectFolder } from "./project.mjs";

/** What every command needs first: the packages and the database client. */
export async function prepare() {
  process.chdir(projectFolder);
  return ensureInstalled() && (await ensureClient());
}
