import { fail, ok, type Failure, type Result } from "#lib/kernel/result.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { enterByToken } from "#lib/server/people/access-tokens.ts";
import { problem } from "./problems.ts";

const REALM = 'Bearer realm="Shutterwright"';
const WHERE = "Make a token under Account, Tokens for programs, and send it as Authorization: Bearer <token>.";

/** RFC 6750 section 3.1: a token that was sent and opens nothing is called so; without one the challenge stands alone. */
export const tokenNotValid = (): Response =>
  problem("token-not-valid", `It is unknown, revoked or out of date, or its owner can no longer sign in. ${WHERE}`, { headers: { "www-authenticate": `${REALM}, error="invalid_token"` } });

const askLater = ({ most, seconds }: Extract<Failure, { kind: "rule" }>["values"]): Response =>
  problem("too-many-questions", `One person's programs are answered ${most} questions a minute. Ask again after the seconds in Retry-After.`, { headers: { "retry-after": String(seconds) } });

/** Who a program acts as. Only the header counts: a browser's session opens nothing here, so no other site can ask in somebody's name. */
export async function tokenCaller(request: Request): Promise<Result<Caller, Response>> {
  const token = /^bearer +(\S+) *$/i.exec(request.headers.get("authorization") ?? "")?.[1];
  if (token === undefined) return fail(problem("no-token", WHERE, { headers: { "www-authenticate": REALM } }));
  const entered = await enterByToken({ token });
  if (entered.ok) return ok(entered.value);
  return fail(entered.failure.kind === "rule" && entered.failure.code === "too-many-questions" ? askLater(entered.failure.values) : tokenNotValid());
}
