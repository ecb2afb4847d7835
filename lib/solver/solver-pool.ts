import { Worker } from "node:worker_threads";
import { type Answer, NO_ANSWER, type Question } from "#lib/kernel/linear-model.ts";

export type Solve = (question: Question, timeLimitMs: number) => Promise<Answer>;
export type SolverPool = { readonly solve: Solve; readonly close: () => Promise<void> };

type Job = { readonly question: Question; readonly timeLimitMs: number; readonly settle: (answer: Answer) => void; readonly fail: (error: Error) => void };
type Seat = { worker: Worker; job: Job | null; alarm: NodeJS.Timeout | null };

// The solver looks at its clock between steps; one that has not come back by then is ended.
const GRACE_MS = 3_000;

/** Solves models off the calling thread, so that no page waits for them; workers start when first needed and do not keep the process alive. */
export function createSolverPool(size = 1): SolverPool {
  const seats: Seat[] = [];
  const waiting: Job[] = [];

  const next = () => {
    const job = waiting[0];
    if (!job) return;
    const seat = seats.find((candidate) => candidate.job === null) ?? (seats.length < size ? openSeat(seats, next) : null);
    if (!seat) return;
    waiting.shift();
    begin(seat, job, () => { closeSeat(seats, seat); next(); });
  };

  const solve: Solve = (question, timeLimitMs) =>
    timeLimitMs <= 0
      ? Promise.resolve(NO_ANSWER)
      : new Promise((settle, fail) => { waiting.push({ question, timeLimitMs, settle, fail }); next(); });

  const close = async () => {
    for (const job of waiting.splice(0)) job.settle(NO_ANSWER);
    await Promise.all(seats.splice(0).map((seat) => { finish(seat)?.settle(NO_ANSWER); return seat.worker.terminate(); }));
  };
  return { solve, close };
}

function begin(seat: Seat, job: Job, overrun: () => void): void {
  seat.job = job;
  seat.worker.ref();
  seat.alarm = setTimeout(() => { finish(seat)?.settle(NO_ANSWER); overrun(); }, job.timeLimitMs + GRACE_MS);
  seat.worker.postMessage({ question: job.question, timeLimitMs: job.timeLimitMs });
}

function openSeat(seats: Seat[], next: () => void): Seat {
  const worker = new Worker(new URL("./solve-worker.mjs", import.meta.url));
  const seat: Seat = { worker, job: null, alarm: null };
  worker.unref();
  worker.on("message", (message: { answer?: Answer; failed?: string }) => {
    const job = finish(seat);
    if (message.answer) job?.settle(message.answer);
    else job?.fail(new Error(`The solver failed: ${message.failed ?? "no answer"}`));
    next();
  });
  worker.on("error", (error: Error) => {
    closeSeat(seats, seat);
    finish(seat)?.fail(error);
    next();
  });
  seats.push(seat);
  return seat;
}

function closeSeat(seats: Seat[], seat: Seat): void {
  const at = seats.indexOf(seat);
  if (at >= 0) seats.splice(at, 1);
  void seat.worker.terminate();
}

function finish(seat: Seat): Job | null {
  const { job } = seat;
  if (seat.alarm) clearTimeout(seat.alarm);
  seat.job = null;
  seat.alarm = null;
  seat.worker.unref();
  return job;
}
