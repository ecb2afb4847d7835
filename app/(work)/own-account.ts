import "server-only";
import { cache } from "react";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getOwnAccount } from "#lib/server/people/own-account.ts";

/** Who is signed in; read once for each request, however many parts of the page ask. */
export const ownAccount = cache(async () => getOwnAccount(await currentCaller(), {}));
