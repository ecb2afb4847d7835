import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fingerprint, projectFolder, textOf } from "./project.mjs";

const stamp = "node_modules/.shutterwright-installed";

const wanted = () => fingerprint(["package-lock.json"], { also: `${process.platform} ${process.arch}` });

/** Someone may have installed by hand: npm keeps its own list of what it put there. */
function alreadyThere() {
  const listed = textOf("node_modules/.package-lock.json");
  if (listed === "") return false;
  const present = JSON.parse(listed).packages ?? {};
  const required = JSON.parse(textOf("package-lock.json")).packages ?? {};
  return Object.entries(required).every(
    ([path, entry]) => path === "" || entry.optional || present[path]?.version === entry.version,
  );
}

function install() {
  console.log("Installing packages; this takes a minute or two the first time.");
  // No package's own script is run: none is needed, and some would download programs from elsewhere.
  const args = ["ci", "--ignore-scripts", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"];
  const npm = process.env.npm_execpath;
  const options = { cwd: projectFolder, stdio: ["ignore", "inherit", "inherit"] };
  const result = npm?.endsWith(".js")
    ? spawnSync(process.execPath, [npm, ...args], options)
    : spawnSync("npm", args, { ...options, shell: process.platform === "win32" });
  if (result.status === 0) return true;
  console.error("The packages could not be installed: see npm's message above, check the connection to its registry, and start again.");
  return false;
}

/** Makes node_modules agree with the lock file; false when it could not. */
export function ensureInstalled() {
  if (textOf(stamp) === wanted()) return true;
  if (!alreadyThere() && !install()) return false;
  writeFileSync(join(projectFolder, stamp), wanted());
  return true;
}
