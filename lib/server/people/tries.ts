import "server-only";
import { transaction, type Tx } from "../platform/db.ts";
import { sha256 } from "../platform/secrets.ts";
import { clearFailures, countFailures, noteFailure, takeTurns } from "./door-store.ts";

export const TRIES_MINUTES = 15;
const MOST_PER_PERSON = 8;

export const personKey = (email: string): string => sha256(`person:${email}`);

/** Whether this person's password may be tried once more; the try is counted before it is made, so that many at once are not let in under one count. */
export async function countTry(tx: Tx, key: string, isBarred = false): Promise<boolean> {
  await takeTurns(tx, key);
  if (isBarred || (await countFailures(tx, key, TRIES_MINUTES)) >= MOST_PER_PERSON) return false;
  await noteFailure(tx, key);
  return true;
}

/** As `countTry`, kept even where the use case it serves comes to nothing. */
export const countTryApart = (key: string): Promise<boolean> => transaction((tx) => countTry(tx, key));
export const forgetTries = (key: string): Promise<void> => transaction((tx) => clearFailures(tx, key));
