import { type ChildProcess, spawn } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { projectFolder } from "../steps/project.mjs";
import { serverProgram } from "../steps/build.ts";

export type Child = {
  /** Settles with the exit code when the process is gone, asked for or not. */
  readonly ended: Promise<number>;
  stop(): Promise<void>;
};

export type AppTerms = {
  readonly databaseUrl: string;
  readonly port: number;
  readonly host: string;
  readonly secret: string;
};

const patienceMs = 10_000;
const inProject = (path: string): string => join(projectFolder, path);

export function appEnvironment(terms: AppTerms): NodeJS.ProcessEnv {
  const given = process.env["NEXTAUTH_URL"]?.trim();
  return {
    ...process.env,
    DATABASE_URL: terms.databaseUrl,
    NEXTAUTH_SECRET: terms.secret,
    // Without a fixed public address, sign-in follows the one the browser used.
    ...(given ? { NEXTAUTH_URL: given } : { AUTH_TRUST_HOST: "true" }),
    PORT: String(terms.port),
    HOSTNAME: terms.host,
    NEXT_TELEMETRY_DISABLED: "1",
  };
}

function startChild(args: readonly string[], env: NodeJS.ProcessEnv): Child {
  const leave = pathToFileURL(inProject("lib/launch/serve/leave-with-parent.mjs")).href;
  const child = spawn(process.execPath, ["--import", leave, ...args], {
    cwd: projectFolder, env: { ...env, SHUTTERWRIGHT_STARTER: String(process.pid) }, stdio: ["ignore", "inherit", "inherit", "ipc"],
  });
  const ended = new Promise<number>((resolve, reject) => {
    child.once("exit", (code) => resolve(code ?? 1));
    child.once("error", reject);
  });
  return { ended, stop: () => stop(child, ended) };
}

async function stop(child: ChildProcess, ended: Promise<number>): Promise<void> {
  child.kill("SIGTERM");
  const late = setTimeout(() => child.kill("SIGKILL"), patienceMs);
  await ended;
  clearTimeout(late);
}

/** The built app. */
export const startApp = (terms: AppTerms): Child =>
  startChild([serverProgram], { ...appEnvironment(terms), NODE_ENV: "production" });

/** The app straight from its sources, for whoever works on it. */
export const startSources = (terms: AppTerms): Child =>
  startChild(
    [inProject("node_modules/next/dist/bin/next"), "dev", "--port", String(terms.port), "--hostname", terms.host],
    { ...appEnvironment(terms), NODE_ENV: "development" },
  );

/** The worker, which runs the jobs kept in the database. */
export const startWorker = (terms: AppTerms): Child =>
  startChild(["--conditions=react-server", "--import", "tsx", inProject("lib/launch/work.ts")], {
    ...appEnvironment(terms), NODE_ENV: "production",
  });

/** Waits until the app answers; false when its process ends first or patience runs out. */
export async function untilServing({ host, port }: Pick<AppTerms, "host" | "port">, child: Child, patience = 60_000): Promise<boolean> {
  const reachable = host === "0.0.0.0" ? "127.0.0.1" : host === "::" ? "[::1]" : host.includes(":") ? `[${host}]` : host;
  const giveUp = Date.now() + patience;
  let gone = false;
  void child.ended.then(() => (gone = true));
  while (!gone && Date.now() < giveUp) {
    const signal = AbortSignal.timeout(20_000);
    const answered = await fetch(`http://${reachable}:${port}/`, { redirect: "manual", signal }).then(() => true, () => false);
    if (answered && !gone) return true;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return false;
}
