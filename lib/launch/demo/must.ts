import type { Result } from "#lib/kernel/result.ts";

/** What a use case of the demo answers, or an error that names the step. */
export function must<T>(what: string, result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(`The demo could not ${what}: ${JSON.stringify(result.failure)}`);
}
