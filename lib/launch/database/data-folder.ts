import { randomBytes } from "node:crypto";
import { access, constants, mkdir, readFile, stat, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { ClearLine } from "./clear-line.ts";

const reasons: Readonly<Record<string, string>> = {
  EACCES: "this user may not write there",
  EPERM: "this user may not write there",
  EROFS: "the disk is read-only",
  ENOSPC: "the disk is full",
  ENOTDIR: "part of that path is a file",
  EEXIST: "that path is a file",
};

function cannotUse(folder: string, error: unknown): never {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const reason = reasons[code];
  if (reason === undefined) throw error;
  throw new ClearLine(`The data folder ${folder} cannot be used (${reason}): put that right, or set DATA_DIR to another folder.`);
}

/** The folder everything of value lies in, made when missing. Its files are closed to others; passing through is not. */
export async function openDataFolder(wanted = process.env["DATA_DIR"]): Promise<string> {
  const folder = resolve(wanted?.trim() || ".data");
  try {
    await mkdir(folder, { recursive: true, mode: 0o711 });
    if (!(await stat(folder)).isDirectory()) throw Object.assign(new Error(folder), { code: "ENOTDIR" });
    await access(folder, constants.R_OK | constants.W_OK | constants.X_OK);
  } catch (error) {
    cannotUse(folder, error);
  }
  return folder;
}

/** A value made once and kept in the data folder, readable by its owner only. */
export async function keptValue(folder: string, name: string, make: () => string): Promise<string> {
  const path = join(folder, name);
  try {
    await writeFile(path, `${make()}\n`, { mode: 0o600, flag: "wx" }).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== "EEXIST") throw error;
    });
    const value = (await readFile(path, "utf8")).trim();
    if (value !== "") return value;
  } catch (error) {
    cannotUse(folder, error);
  }
  throw new ClearLine(`${path} is empty: restore it from a backup of the data folder.`);
}

export const newSecret = (): string => randomBytes(32).toString("hex");
