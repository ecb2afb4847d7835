import "server-only";
import { calendarFeedInput, readCalendarInput } from "#lib/contracts/hire/returns.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { doorUseCase, projectUseCase } from "../gate/use-case.ts";
import { transaction } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { newToken, sha256 } from "../platform/secrets.ts";
import { addFeed, readFeedAtDoor, revokeOwnFeeds } from "./feed-store.ts";

/** A new secret address for this person and project; an older one stops working. It is shown once. */
export const openCalendarFeed = projectUseCase("returns.openCalendarFeed", "hire.read", calendarFeedInput, async (scope) => {
  await revokeOwnFeeds(scope);
  const token = newToken();
  await addFeed(scope, newId(), sha256(token));
  return ok({ token });
});

export const revokeCalendarFeed = projectUseCase("returns.revokeCalendarFeed", "hire.read", calendarFeedInput, async (scope) => {
  await revokeOwnFeeds(scope);
  return ok(null);
});

/** What a calendar reads: unknown and revoked addresses are the same to it. */
export const readCalendar = doorUseCase("returns.readCalendar", readCalendarInput, async ({ token }) => {
  const feed = await transaction((tx) => readFeedAtDoor(tx, sha256(token)));
  return feed ? ok(feed) : notFound("calendar");
});
