import { type ChildProcess, spawn } from "node:child_process";
import { chmod, mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { clusterUrl } from "#lib/launch/database/cluster.ts";
import { freePort } from "#lib/launch/database/free-port.ts";

export type StartedApp = {
  readonly url: string;
  /** The owner's address of its database. */
  readonly databaseUrl: string;
  stop(): Promise<void>;
};

const patienceMs = 480_000;

function untilPrinted(child: ChildProcess, sign: string): Promise<void> {
  let text = "";
  return new Promise((fulfil, reject) => {
    const late = setTimeout(() => reject(new Error(`Not started in ${patienceMs / 1000} s:\n${text}`)), patienceMs);
    const hear = (chunk: Buffer): void => {
      text += chunk.toString();
      if (!text.includes(sign)) return;
      clearTimeout(late);
      fulfil();
    };
    child.stdout?.on("data", hear);
    child.stderr?.on("data", hear);
    child.once("exit", (code) => reject(new Error(`It stopped (code ${code ?? "none"}):\n${text}`)));
  });
}

async function databaseOf(folder: string): Promise<string> {
  const [port = "", password = ""] = await Promise.all(
    ["database-port", "database-password"].map(async (name) => (await readFile(join(folder, name), "utf8")).trim()),
  );
  return clusterUrl({ port: Number(port), password }, "shutterwright");
}

/** The product as `npm start` runs it, demo company included, on a data folder and a port of its own. */
export async function startWholeApp(env: Readonly<Record<string, string>> = {}): Promise<StartedApp> {
  const folder = await mkdtemp(join(tmpdir(), "shutterwright-app-"));
  await chmod(folder, 0o711);
  const port = await freePort();
  const { DATABASE_URL: _database, HOST: _host, NEXTAUTH_URL: _address, ...kept } = process.env;
  const child = spawn(process.execPath, [resolve("lib/launch/start.mjs")], {
    env: { ...kept, DATA_DIR: folder, PORT: String(port), ...env }, stdio: ["ignore", "pipe", "pipe", "ipc"],
  });
  const ended = new Promise<void>((fulfil) => child.once("exit", () => fulfil()));
  const stop = async (): Promise<void> => {
    child.kill("SIGTERM");
    await ended;
    await rm(folder, { recursive: true, force: true });
  };
  try {
    await untilPrinted(child, "Shutterwright is at");
    return { url: `http://localhost:${port}`, databaseUrl: await databaseOf(folder), stop };
  } catch (error) {
    await stop();
    throw error;
  }
}
