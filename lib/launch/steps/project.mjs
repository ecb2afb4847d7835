import { createHash } from "node:crypto";
import { existsSync, readFileSync, readdirSync, statSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's own folder; every step runs from there, wherever it was called. */
export const projectFolder = join(dirname(fileURLToPath(import.meta.url)), "../../..");

/**
 * @param {string} path
 * @returns {Generator<string>}
 */
function* filesBelow(path) {
  if (!existsSync(path)) return;
  if (statSync(path).isFile()) yield path;
  else for (const name of readdirSync(path).sort()) yield* filesBelow(join(path, name));
}

/**
 * One fingerprint of the named files and folders, leaving out those below `except`.
 * @param {readonly string[]} paths
 * @param {{ except?: readonly string[], also?: string }} [options]
 */
export function fingerprint(paths, { except = [], also = "" } = {}) {
  const hash = createHash("sha256").update(`${also}\n`);
  const left = except.map((path) => join(projectFolder, path));
  for (const path of paths) {
    for (const file of filesBelow(join(projectFolder, path))) {
      if (left.some((start) => file.startsWith(start))) continue;
      hash.update(`${relative(projectFolder, file)}\n`).update(readFileSync(file)).update("\n");
    }
  }
  return hash.digest("hex");
}

/**
 * The text of a file of the project, or an empty one.
 * @param {string} path
 */
export function textOf(path) {
  const file = join(projectFolder, path);
  return existsSync(file) ? readFileSync(file, "utf8") : "";
}
