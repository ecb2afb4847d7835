import "server-only";
import { createTokenInput, MOST_QUESTIONS_A_MINUTE, nothing, readInvitationInput, revokeTokenInput } from "#lib/contracts/people.ts";
import { brokenRule, fail, notFound, ok } from "#lib/kernel/result.ts";
import type { Caller } from "../gate/caller.ts";
import { companyUseCase, doorUseCase } from "../gate/use-case.ts";
import { transaction } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { newToken, sha256 } from "../platform/secrets.ts";
import { createTurns } from "../platform/turns.ts";
import { findTokenAtDoor } from "./door-store.ts";
import { addToken, listOwnTokens, revokeOwnToken } from "./token-store.ts";

/** Starts every token, so that one found in a log or a repository can be recognised. */
const PREFIX = "swt_";
const MOST = 20;

/** Answers with the token once; only its hash is kept. */
export const createToken = companyUseCase("people.createToken", "account.keep", createTokenInput, async (scope, { name, days }) => {
  if ((await listOwnTokens(scope)).length >= MOST) return brokenRule("too-many-tokens", { most: MOST });
  const token = `${PREFIX}${newToken()}`;
  const expiresAt = new Date(Date.parse(scope.now) + days * 86_400_000).toISOString();
  await addToken(scope, { id: newId(), name, tokenHash: sha256(token), expiresAt });
  return ok({ token, expiresAt });
});

export const listTokens = companyUseCase("people.listTokens", "account.keep", nothing, async (scope) =>
  ok(
    (await listOwnTokens(scope)).map(({ id, name, createdAt, expiresAt, lastUsedAt }) => ({
      id, name, createdAt: createdAt.toISOString(), expiresAt: expiresAt.toISOString(), lastUsedAt: lastUsedAt?.toISOString() ?? null,
    })),
  ),
);

export const revokeToken = companyUseCase("people.revokeToken", "account.keep", revokeTokenInput, async (scope, { tokenId }) =>
  (await revokeOwnToken(scope, tokenId)) ? ok(null) : notFound("token"),
);

/** This server's count, by person: more tokens give no more turns. */
const secondsToWait = createTurns({ most: MOST_QUESTIONS_A_MINUTE, windowMs: 60_000, nowMs: () => performance.now() });

/** Who a program acts as, as often as one person's programs may. Unknown, expired, revoked and a deactivated person's tokens are all the same to it. */
export const enterByToken = doorUseCase("people.enterByToken", readInvitationInput, async ({ token }) => {
  const found = token.startsWith(PREFIX) ? await transaction((tx) => findTokenAtDoor(tx, sha256(token))) : null;
  if (!found) return fail({ kind: "not-signed-in" });
  const seconds = secondsToWait(found.personId);
  if (seconds > 0) return brokenRule("too-many-questions", { most: MOST_QUESTIONS_A_MINUTE, seconds });
  const caller: Caller = { companyId: found.companyId, personId: found.personId, sessionEpoch: found.sessionEpoch };
  return ok(caller);
});
