import { setImmediate as othersRun } from "node:timers/promises";
import { type Asking, NO_ANSWER } from "#lib/kernel/linear-model.ts";
import type { Solve } from "./solver-pool.ts";

type Time = { readonly nowMs: () => number; readonly limitMs: number };

/** Runs a calculation that asks for models to be solved, letting others have the thread at each of its stops, and hurrying it once its time is up. */
export async function answerQuestions<T>(asking: Asking<T>, solve: Solve, { nowMs, limitMs }: Time): Promise<T> {
  const until = nowMs() + limitMs;
  let step = asking.next();
  while (!step.done) {
    const question = step.value;
    const left = until - nowMs();
    if (!question) await othersRun();
    const answer = question && left > 0 ? await solve(question, Math.min(question.timeShareMs ?? left, left * (question.timeShare ?? 1))) : NO_ANSWER;
    step = asking.next({ answer, timeIsUp: nowMs() >= until });
  }
  return step.value;
}
