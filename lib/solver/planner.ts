import { createHash } from "node:crypto";
import { Worker } from "node:worker_threads";
import type { Calculation, OrderOf, PlanOf } from "./calculations.ts";

/** `busy`: the queue is full. `overrun`: it did not come back in time and was ended. */
export type Planned<Plan> = { readonly kind: "plan"; readonly plan: Plan } | { readonly kind: "busy" } | { readonly kind: "overrun" };
export type Planner = {
  readonly plan: <C extends Calculation>(calculation: C, order: OrderOf<C>, limitMs: number) => Promise<Planned<PlanOf<C>>>;
  readonly close: () => Promise<void>;
};

type Job = { readonly message: object; readonly limitMs: number; readonly settle: (planned: Planned<unknown>) => void; readonly fail: (error: Error) => void };
type Running = { readonly job: Job; readonly alarm: NodeJS.Timeout };

// A calculation looks at its clock between steps; one that has not come back by then is ended.
const GRACE_MS = 6_000;

/**
 * Plans one after another in a worker of its own, so that no page waits for a calculation it did not ask for. The same
 * order asked again, as when a page is reloaded, gets the plan kept or still being made.
 */
export function createPlanner({ mostWaiting, mostKept }: { readonly mostWaiting: number; readonly mostKept: number }): Planner {
  const kept = new Map<string, Promise<Planned<unknown>>>();
  const waiting: Job[] = [];
  let worker: Worker | null = null;
  let running: Running | null = null;

  const finish = (): Job | null => {
    const job = running?.job ?? null;
    if (running) clearTimeout(running.alarm);
    running = null;
    worker?.unref();
    return job;
  };
  const end = async (): Promise<void> => {
    const ended = worker;
    worker = null;
    await ended?.terminate();
  };
  const open = (): Worker => {
    const opened = openWorker();
    opened.on("message", ({ plan, failed }: { plan?: unknown; failed?: string }) => {
      const job = finish();
      if (failed === undefined) job?.settle({ kind: "plan", plan });
      else job?.fail(new Error(`The calculation failed: ${failed}`));
      next();
    });
    opened.on("error", (error: Error) => {
      worker = null;
      finish()?.fail(error);
      next();
    });
    return opened;
  };
  const next = (): void => {
    if (running) return;
    const job = waiting.shift();
    if (!job) return;
    worker ??= open();
    worker.ref();
    const alarm = setTimeout(() => { finish()?.settle({ kind: "overrun" }); void end().then(next); }, job.limitMs + GRACE_MS);
    running = { job, alarm };
    worker.postMessage(job.message);
  };

  const plan: Planner["plan"] = async (calculation, order, limitMs) => {
    const key = createHash("sha256").update(JSON.stringify([calculation, order, limitMs])).digest("hex");
    const known = kept.get(key);
    if (known) return (await known) as Planned<PlanOf<typeof calculation>>;
    if (waiting.length >= mostWaiting) return { kind: "busy" };
    const made = new Promise<Planned<unknown>>((settle, fail) => { waiting.push({ message: { calculation, order, limitMs }, limitMs, settle, fail }); next(); });
    keep(kept, key, made, mostKept);
    return (await made) as Planned<PlanOf<typeof calculation>>;
  };
  const close = async (): Promise<void> => {
    for (const job of waiting.splice(0)) job.settle({ kind: "busy" });
    finish()?.settle({ kind: "overrun" });
    await end();
  };
  return { plan, close };
}

function keep(kept: Map<string, Promise<Planned<unknown>>>, key: string, made: Promise<Planned<unknown>>, most: number): void {
  kept.set(key, made);
  const drop = () => kept.delete(key);
  made.then((planned) => planned.kind === "plan" || drop(), drop);
  const [oldest] = kept.keys();
  if (kept.size > most && oldest !== undefined) kept.delete(oldest);
}

/** The built server has its workers built in; from the sources they need a loader first. */
function openWorker(): Worker {
  if (process.env["NEXT_RUNTIME"] !== undefined) return new Worker(new URL("./plan-worker.ts", import.meta.url));
  const program = new URL("./plan-worker.ts", import.meta.url).href;
  return new Worker(/* turbopackIgnore: true */ new URL("./worker-from-source.mjs", import.meta.url), { workerData: { program } });
}
