import "server-only";
import { signInInput } from "#lib/contracts/people.ts";
import { brokenRule, ok } from "#lib/kernel/result.ts";
import type { Caller } from "../gate/caller.ts";
import { doorUseCase } from "../gate/use-case.ts";
import { transaction } from "../platform/db.ts";
import { sha256, verifyPassword } from "../platform/secrets.ts";
import { clearFailures, countFailures, findPersonAtDoor, noteFailure, takeTurns } from "./door-store.ts";

export const WINDOW_MINUTES = 15;
const MOST_PER_PERSON = 8;
const MOST_PER_ADDRESS = 60;

/** Answers the same, after the same work, whether the address is unknown, the password wrong or the person deactivated. */
export const signIn = doorUseCase("people.signIn", signInInput, async ({ email, password, address }) => {
  const personKey = sha256(`person:${email}`);
  const addressKey = sha256(`address:${address}`);
  const before = await transaction(async (tx) => {
    await takeTurns(tx, personKey);
    const tooMany =
      (await countFailures(tx, personKey, WINDOW_MINUTES)) >= MOST_PER_PERSON ||
      (await countFailures(tx, addressKey, WINDOW_MINUTES)) >= MOST_PER_ADDRESS;
    // Counted before it is checked: many guesses sent at once must not all be let in under the same count.
    if (!tooMany) await noteFailure(tx, personKey);
    return { person: await findPersonAtDoor(tx, email), tooMany };
  });
  if (before.tooMany) return brokenRule("too-many-sign-ins", { minutes: WINDOW_MINUTES });

  const { person } = before;
  const matches = await verifyPassword(person?.passwordHash ?? null, password);
  if (!person || !matches || !person.isActive) {
    await transaction((tx) => noteFailure(tx, addressKey));
    return brokenRule("wrong-sign-in");
  }
  await transaction((tx) => clearFailures(tx, personKey));
  const caller: Caller = { companyId: person.companyId, personId: person.id, sessionEpoch: person.sessionEpoch };
  return ok(caller);
});
