import { parentPort } from "node:worker_threads";
import type { Asking } from "#lib/kernel/linear-model.ts";
import { answerQuestions } from "./answer-questions.ts";
import { CALCULATIONS, type Calculation } from "./calculations.ts";
import { solveModel } from "./solve-model.mjs";

type Asked = { readonly calculation: Calculation; readonly order: unknown; readonly limitMs: number };

const calculations = CALCULATIONS as unknown as Readonly<Record<Calculation, (order: unknown) => Asking<unknown>>>;
const solveHere = (...asked: Parameters<typeof solveModel>) => Promise.resolve(solveModel(...asked));

parentPort?.on("message", ({ calculation, order, limitMs }: Asked) => {
  answerQuestions(calculations[calculation](order), solveHere, { nowMs: () => performance.now(), limitMs })
    .then((plan) => parentPort?.postMessage({ plan }), (error: unknown) => parentPort?.postMessage({ failed: String(error) }));
});
