import "server-only";
import { changePasswordInput, nothing } from "#lib/contracts/people.ts";
import { brokenRule, ok } from "#lib/kernel/result.ts";
import type { Caller } from "../gate/caller.ts";
import { companyUseCase } from "../gate/use-case.ts";
import { hashPassword, verifyPassword } from "../platform/secrets.ts";
import { companyName, ownSecret, setOwnPassword } from "./store.ts";
import { countTryApart, forgetTries, personKey, TRIES_MINUTES } from "./tries.ts";

export const getOwnAccount = companyUseCase("people.getOwnAccount", "account.keep", nothing, async (scope) => {
  const { email } = await ownSecret(scope);
  return ok({ ...scope.member, email, companyId: scope.companyId, companyName: await companyName(scope) });
});

/** Ends every session of this person, this one included: the page signs in again with the new password. */
export const changePassword = companyUseCase(
  "people.changePassword",
  "account.keep",
  changePasswordInput,
  async (scope, input) => {
    const { passwordHash, email } = await ownSecret(scope);
    const key = personKey(email);
    if (!(await countTryApart(key))) return brokenRule("too-many-sign-ins", { minutes: TRIES_MINUTES });
    if (!(await verifyPassword(passwordHash, input.current))) return brokenRule("wrong-current-password");
    await forgetTries(key);
    const { sessionEpoch } = await setOwnPassword(scope, await hashPassword(input.next));
    const caller: Caller = { companyId: scope.companyId, personId: scope.member.id, sessionEpoch };
    return ok(caller);
  },
);
