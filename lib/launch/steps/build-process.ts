import { ClearLine } from "../database/clear-line.ts";
import { buildWhenStale } from "./build.ts";

try {
  const made = await buildWhenStale();
  console.log(made ? "Built." : "Nothing has changed since the last build.");
} catch (error) {
  console.error(error instanceof ClearLine ? error.message : error);
  process.exitCode = 1;
}
