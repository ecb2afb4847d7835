import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { prepare } from "./prepare.mjs";
import { runNode, runTypeScript } from "./run.mjs";
import { tallyOfPlaywright, tallyOfStep, tallyOfVitest } from "./tally.mjs";

/** @typedef {import("./tally.mjs").Tally} Tally */

const next = "node_modules/next/dist/bin/next";
const typescript = "node_modules/typescript/bin/tsc";
const eslint = "node_modules/eslint/bin/eslint.js";
const vitest = "node_modules/vitest/vitest.mjs";
const playwright = "node_modules/@playwright/test/cli.js";

// The tests bring a database, a folder and a port of their own; what the caller works with is none of their business.
const callersOwn = ["DATABASE_URL", "DATA_DIR", "PORT", "HOST", "NEXTAUTH_URL", "NEXTAUTH_SECRET", "NODE_ENV"];

/** Side by side: each keeps one core busy. @returns {Promise<Tally>} */
async function typesAndLint() {
  const declared = await runNode([next, "typegen"], { quiet: true });
  if (declared !== 0) return tallyOfStep(declared);
  const [types, lint] = (await Promise.all([runNode([typescript, "--noEmit"]), runNode([eslint, ".", "--max-warnings", "0"])])).map(tallyOfStep);
  return { passed: types.passed + lint.passed, failed: types.failed + lint.failed, notRun: types.notRun + lint.notRun };
}

/**
 * @param {string} project
 * @param {string} folder
 * @param {readonly string[]} [more]
 * @returns {Promise<Tally>}
 */
async function vitestProject(project, folder, more = []) {
  const report = join(folder, `${project}.json`);
  const args = [vitest, "run", "--project", project, "--reporter=default", "--reporter=json", `--outputFile.json=${report}`, ...more];
  return tallyOfVitest(report, await runNode(args));
}

/** @returns {Promise<Tally>} */
const build = async () => tallyOfStep(await runTypeScript("lib/launch/steps/build-process.ts"));

/**
 * @param {string} folder
 * @returns {Promise<Tally>}
 */
async function journeys(folder) {
  const report = join(folder, "journeys.json");
  const env = { PLAYWRIGHT_JSON_OUTPUT_NAME: report, PLAYWRIGHT_JSON_OUTPUT_FILE: report };
  return tallyOfPlaywright(report, await runNode([playwright, "test", "--reporter=list,json"], { env }));
}

/**
 * @param {string} folder
 * @returns {readonly (readonly [string, (before: ReadonlyMap<string, Tally>) => Promise<Tally>])[]}
 */
const stepsIn = (folder) => [
  ["types and lint", typesAndLint],
  ["unit, validation, architecture", () => vitestProject("unit", folder)],
  ["integration", () => vitestProject("integration", folder, ["--maxWorkers=100%"])],
  ["build", build],
  ["end-to-end", async (before) => (before.get("build")?.failed === 0 ? journeys(folder) : notPossible())],
];

/** @returns {Tally} */
function notPossible() {
  console.error("Not possible: the build failed.");
  return tallyOfStep(1);
}

/** @param {number} since */
const secondsSince = (since) => `${Math.round((Date.now() - since) / 1000)} s`;

/** Runs every check in order, whatever the ones before said; tells how many failed. */
export async function testRun() {
  for (const name of callersOwn) delete process.env[name];
  process.env.CI ??= "true";
  const folder = mkdtempSync(join(tmpdir(), "shutterwright-tests-"));
  /** @type {Map<string, Tally>} */
  const tallies = new Map();
  if (!(await prepare())) tallies.set("install", tallyOfStep(1));
  for (const [name, step] of tallies.size === 0 ? stepsIn(folder) : []) {
    console.log(`\n== ${name}`);
    const begun = Date.now();
    const tally = await step(tallies);
    tallies.set(name, tally);
    console.log(`== ${name}: ${tally.passed} passed, ${tally.failed} failed${tally.notRun > 0 ? `, ${tally.notRun} not run` : ""} (${secondsSince(begun)})`);
  }
  rmSync(folder, { recursive: true, force: true });
  return lastLine([...tallies.values()]);
}

/** @param {readonly Tally[]} tallies */
function lastLine(tallies) {
  const passed = tallies.reduce((sum, one) => sum + one.passed, 0);
  const failed = tallies.reduce((sum, one) => sum + one.failed, 0);
  console.log(`\n${passed} passed, ${failed} failed`);
  return failed;
}
