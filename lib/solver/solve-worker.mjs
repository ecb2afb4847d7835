import { parentPort } from "node:worker_threads";
import { solveModel } from "./solve-model.mjs";

parentPort?.on("message", ({ question, timeLimitMs }) => {
  try {
    parentPort?.postMessage({ answer: solveModel(question, timeLimitMs) });
  } catch (error) {
    parentPort?.postMessage({ failed: String(error) });
  }
});
