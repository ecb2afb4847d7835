import type { Answer, Question } from "#lib/kernel/linear-model.ts";

/** Solves on the thread it is called on. */
export function solveModel(question: Question, timeLimitMs: number): Answer;
