import { execFileSync, spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { chromium } from "@playwright/test";

const usualPlaces = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/usr/bin/google-chrome-stable"];

const isRoot = (): boolean => process.getuid?.() === 0;

/** Root has no sandbox to run in, and nothing here needs the browser's own errands on the network. */
export const chromiumFlags: readonly string[] = isRoot()
  ? ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"]
  : ["--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

function runs(path: string): boolean {
  if (!existsSync(path)) return false;
  return spawnSync(path, [...chromiumFlags, "--version"], { timeout: 30_000, stdio: "ignore" }).status === 0;
}

/** A Chromium that is there and runs. */
export function findChromium(): string | undefined {
  const named = process.env["CHROMIUM_PATH"]?.trim();
  const places = [...(named ? [named] : []), ...usualPlaces, chromium.executablePath()];
  return places.find(runs);
}

function tryTo(program: string, args: readonly string[]): void {
  try {
    execFileSync(program, args, { stdio: ["ignore", "inherit", "inherit"], timeout: 600_000, env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } });
  } catch (error) {
    console.error(`${program} ${args[0] ?? ""} did not succeed: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** Finds a Chromium or installs one: Playwright's own download, else the system's package. Fails when neither serves. */
export function ensureChromium(): string {
  const known = findChromium();
  if (known) return known;
  const playwright = join(dirname(createRequire(import.meta.url).resolve("@playwright/test/package.json")), "cli.js");
  tryTo(process.execPath, [playwright, "install", "chromium"]);
  const downloaded = findChromium();
  if (downloaded) return downloaded;
  if (isRoot()) {
    tryTo("apt-get", ["update"]);
    tryTo("apt-get", ["install", "-y", "--no-install-recommends", "chromium"]);
  }
  const installed = findChromium();
  if (installed) return installed;
  throw new Error("No Chromium was found and none could be installed: set CHROMIUM_PATH to one, or install the system's chromium package.");
}
