import { cp, mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { ClearLine } from "../database/clear-line.ts";
import { fingerprint, projectFolder } from "./project.mjs";
import { runNode } from "./run.mjs";

const output = join(projectFolder, ".next");
const stamp = join(output, "built-from");
const standalone = join(output, "standalone");

export const serverProgram = join(standalone, "server.js");

const sources = [
  "app", "lib", "prisma/schema", "public", "proxy.ts", "next.config.ts", "postcss.config.mjs", "tsconfig.json", "package.json", "package-lock.json",
];

const wanted = (): string => fingerprint(sources, { except: ["lib/launch"], also: `${process.version} ${process.platform} ${process.arch}` });

/** The standalone server is made without the files a browser fetches by name. */
async function addPublicFiles(): Promise<void> {
  await cp(join(output, "static"), join(standalone, ".next", "static"), { recursive: true });
  const open = join(projectFolder, "public");
  if (existsSync(open)) await cp(open, join(standalone, "public"), { recursive: true });
}

/** Builds the app when what it is made from has changed; tells whether it had to. */
export async function buildWhenStale(): Promise<boolean> {
  const now = wanted();
  const last = await readFile(stamp, "utf8").catch(() => "");
  if (last === now && existsSync(serverProgram)) return false;
  console.log("Building; this takes a minute or two the first time.");
  await mkdir(output, { recursive: true });
  await rm(stamp, { force: true });
  await rm(standalone, { recursive: true, force: true });
  const env = { NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" };
  const status = await runNode([join("node_modules", "next", "dist", "bin", "next"), "build"], { env, quiet: true });
  if (status !== 0) throw new ClearLine("The build failed; its messages are above.");
  await addPublicFiles();
  await writeFile(stamp, now);
  return true;
}
