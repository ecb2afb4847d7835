import { randomBytes } from "node:crypto";
import { chmod, mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { type Cluster, startCluster } from "#lib/launch/database/cluster.ts";
import { ClearLine } from "#lib/launch/database/clear-line.ts";
import { freePort } from "#lib/launch/database/free-port.ts";
import { startTestCluster } from "./test-cluster.ts";

type Row = { readonly what: string; readonly measured: string; readonly budget: string; readonly ok: boolean };

const benchFolder = resolve("tests/bench");
const ending = ".bench.ts";

/** A PostgreSQL that keeps its promises to the disk, as the real one does: its speed is part of what is measured. */
async function startDurableCluster(): Promise<Cluster> {
  const folder = await mkdtemp(join(tmpdir(), "shutterwright-bench-"));
  await chmod(folder, 0o711);
  const cluster = await startCluster({ folder, port: await freePort(), password: randomBytes(18).toString("hex"), durable: true });
  return { ...cluster, stop: () => cluster.stop().then(() => rm(folder, { recursive: true, force: true })) };
}

async function chosen(wanted: readonly string[]): Promise<string[]> {
  const known = (await readdir(benchFolder)).filter((name) => name.endsWith(ending)).map((name) => name.slice(0, -ending.length)).sort();
  const unknown = wanted.find((name) => !known.includes(name));
  if (unknown !== undefined) throw new ClearLine(`There is no bench "${unknown}"; there are ${known.join(", ")}.`);
  return wanted.length > 0 ? [...wanted] : known;
}

async function measure(name: string): Promise<readonly Row[]> {
  try {
    const { run } = (await import(pathToFileURL(join(benchFolder, `${name}${ending}`)).href)) as { run(): Promise<readonly Row[]> };
    return await run();
  } catch (error) {
    console.error(error);
    return [{ what: name, measured: "did not finish", budget: "", ok: false }];
  }
}

function print(rows: readonly Row[]): void {
  const widest = (key: "what" | "measured" | "budget"): number => Math.max(key.length, ...rows.map((row) => row[key].length));
  const widths = [widest("what"), widest("measured"), widest("budget")] as const;
  const line = (cells: readonly string[]): string => cells.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join("  ").trimEnd();
  console.log(`\n${line(["what", "measured", "budget", ""])}\n${line(widths.map((width) => "-".repeat(width)))}`);
  for (const row of rows) console.log(line([row.what, row.measured, row.budget, row.ok ? "kept" : "MISSED"]));
}

async function runBenches(wanted: readonly string[]): Promise<boolean> {
  const names = await chosen(wanted);
  const cluster = await startTestCluster(startDurableCluster);
  const rows: Row[] = [];
  try {
    for (const name of names) {
      console.log(`measuring ${name}`);
      rows.push(...(await measure(name)));
    }
  } finally {
    await cluster.stop();
  }
  print(rows);
  return rows.length > 0 && rows.every((row) => row.ok);
}

const status = await runBenches(process.argv.slice(2)).then(
  (kept) => (kept ? 0 : 1),
  (error: unknown) => {
    console.error(error instanceof ClearLine ? error.message : error);
    return 1;
  },
);
process.exit(status);
