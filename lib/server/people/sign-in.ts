import "server-only";
import { signInInput } from "#lib/contracts/people.ts";
import { brokenRule, ok } from "#lib/kernel/result.ts";
import type { Caller } from "../gate/caller.ts";
import { doorUseCase } from "../gate/use-case.ts";
import { transaction } from "../platform/db.ts";
import { sha256, verifyPassword } from "../platform/secrets.ts";
import { countFailures, findPersonAtDoor, noteFailure } from "./door-store.ts";
import { countTry, forgetTries, personKey, TRIES_MINUTES } from "./tries.ts";

const MOST_PER_ADDRESS = 60;

/** Answers the same, after the same work, whether the address is unknown, the password wrong or the person deactivated. */
export const signIn = doorUseCase("people.signIn", signInInput, async ({ email, password, address }) => {
  const key = personKey(email);
  const addressKey = sha256(`address:${address}`);
  const before = await transaction(async (tx) => {
    const isBarred = (await countFailures(tx, addressKey, TRIES_MINUTES)) >= MOST_PER_ADDRESS;
    const mayTry = await countTry(tx, key, isBarred);
    return { person: await findPersonAtDoor(tx, email), mayTry };
  });
  if (!before.mayTry) return brokenRule("too-many-sign-ins", { minutes: TRIES_MINUTES });

  const { person } = before;
  const matches = await verifyPassword(person?.passwordHash ?? null, password);
  if (!person || !matches || !person.isActive) {
    await transaction((tx) => noteFailure(tx, addressKey));
    return brokenRule("wrong-sign-in");
  }
  await forgetTries(key);
  const caller: Caller = { companyId: person.companyId, personId: person.id, sessionEpoch: person.sessionEpoch };
  return ok(caller);
});
