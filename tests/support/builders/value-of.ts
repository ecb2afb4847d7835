import type { Failure, Result } from "#lib/kernel/result.ts";

/** What a use case or a formula answered, where a refusal would mean that the test itself is wrong. */
export function valueOf<T>(result: Result<T, unknown>): T {
  if (result.ok) return result.value;
  throw new Error(`Refused: ${JSON.stringify(result.failure)}`);
}

/** Why a use case refused, as one word: the kind, or the code of the broken rule. */
export function refusal(result: Result<unknown, Failure>): string | null {
  if (result.ok) return null;
  return result.failure.kind === "rule" ? result.failure.code : result.failure.kind;
}
