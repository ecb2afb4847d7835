import { spawn } from "node:child_process";

/** @type {readonly NodeJS.Signals[]} */
const forwarded = ["SIGINT", "SIGTERM", "SIGHUP"];

/**
 * Runs a Node.js program to its end and tells its exit code. Signals are handed on, and the program hears when this
 * process is gone. `quiet` keeps its output for the case that it fails.
 * @param {readonly string[]} args
 * @param {{ env?: Record<string, string>, quiet?: boolean }} [options]
 * @returns {Promise<number>}
 */
export function runNode(args, { env = {}, quiet = false } = {}) {
  const output = quiet ? "pipe" : "inherit";
  const child = spawn(process.execPath, args, {
    stdio: ["ignore", output, output, "ipc"],
    env: { ...process.env, ...env },
  });
  /** @type {Buffer[]} */
  const kept = [];
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (chunk) => kept.push(chunk));
  /** @param {NodeJS.Signals} signal */
  const handOn = (signal) => child.kill(signal);
  for (const signal of forwarded) process.on(signal, handOn);
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (code, signal) => {
      for (const name of forwarded) process.off(name, handOn);
      const status = code ?? (signal === "SIGINT" ? 130 : 1);
      if (status !== 0) process.stderr.write(Buffer.concat(kept));
      resolve(status);
    });
  });
}

/**
 * Runs one of our TypeScript programs.
 * @param {string} file
 * @param {{ args?: readonly string[], env?: Record<string, string>, quiet?: boolean }} [options]
 */
export function runTypeScript(file, { args = [], ...options } = {}) {
  return runNode(["--conditions=react-server", "--import", "tsx", file, ...args], options);
}
