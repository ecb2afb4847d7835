import { paths } from "#app/paths.ts";
import { ENGINEERING_LIMIT } from "#lib/contracts/workings/answer-parts.ts";
import type { Failure } from "#lib/kernel/result.ts";
import { problem, wrongShape } from "./problems.ts";
import { tokenNotValid } from "./token-caller.ts";

const BUSY_SECONDS = 5;

export const nothingHere = (): Response => problem("not-found", `The document at ${paths.openApi()} lists every address.`);

/** A use case's failure as a program reads it. What a calculator cannot fail with is thrown: it would be a mistake of ours. */
export function refuse(failure: Failure): Response {
  switch (failure.kind) {
    case "not-signed-in":
      return tokenNotValid();
    case "not-allowed":
      return problem("not-allowed", "Ask the owner of the company to do it, or to change the role.");
    case "not-found":
      return nothingHere();
    case "invalid":
      return wrongShape(failure.problems);
    case "rule":
      if (failure.code === "planner-busy" || failure.code === "plan-overran") return problem("busy", "Ask again after the seconds in Retry-After.", { headers: { "retry-after": String(BUSY_SECONDS) } });
      if (failure.code === ENGINEERING_LIMIT) return problem(ENGINEERING_LIMIT, String(failure.values["message"]), { values: failure.values });
  }
  throw new Error(`A calculator failed with ${JSON.stringify(failure)}.`);
}

export const told = (value: unknown): Response => Response.json(value, { headers: { "cache-control": "no-store" } });
export const wrongMethod = (allowed: string): Response => problem("wrong-method", `Send ${allowed} instead.`, { headers: { allow: allowed } });
