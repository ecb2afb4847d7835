import { existsSync, readFileSync } from "node:fs";

/** @typedef {{ passed: number, failed: number, notRun: number }} Tally */

/**
 * @param {string} path
 * @returns {any}
 */
function read(path) {
  try {
    return existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : undefined;
  } catch {
    return undefined;
  }
}

/**
 * A run that says nothing, runs nothing, or ends badly although no test did, counts as one failure.
 * @param {Tally | undefined} tally
 * @param {number} status
 * @returns {Tally}
 */
function judged(tally, status) {
  const { passed, failed, notRun } = tally ?? { passed: 0, failed: 0, notRun: 0 };
  const unexplained = failed === 0 && (status !== 0 || passed === 0);
  return { passed, failed: unexplained ? 1 : failed, notRun };
}

/**
 * What a vitest report says. A file that could not even be read holds no test, so it counts as one.
 * @param {string} path
 * @param {number} status
 */
export function tallyOfVitest(path, status) {
  const report = read(path);
  if (report === undefined) return judged(undefined, status);
  const unread = report.testResults.filter(
    /** @param {{ status: string, assertionResults: { status: string }[] }} file */
    (file) => file.status === "failed" && !file.assertionResults.some((one) => one.status === "failed"),
  );
  const notRun = report.numPendingTests + report.numTodoTests;
  return judged({ passed: report.numPassedTests, failed: report.numFailedTests + unread.length, notRun }, status);
}

/**
 * What a browser run's report says. A journey left out is one that failed: none may be.
 * @param {string} path
 * @param {number} status
 */
export function tallyOfPlaywright(path, status) {
  const stats = read(path)?.stats;
  if (stats === undefined) return judged(undefined, status);
  return judged({ passed: stats.expected, failed: stats.unexpected + stats.flaky + stats.skipped, notRun: 0 }, status);
}

/**
 * What a step without single tests says.
 * @param {number} status
 * @returns {Tally}
 */
export const tallyOfStep = (status) => (status === 0 ? { passed: 1, failed: 0, notRun: 0 } : { passed: 0, failed: 1, notRun: 0 });
