import "server-only";
import { recordSiteEventsInput } from "#lib/contracts/progress.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { takeEvents } from "./take-events.ts";

/** The same id twice gets the same answer, whoever asks again and however late. */
export const recordSiteEvents = projectUseCase(
  "progress.recordSiteEvents", "progress.record", recordSiteEventsInput, async (scope, { events, saved, personId }) => {
    if (personId !== undefined && personId !== scope.member.id) return fail({ kind: "not-signed-in" });
    return ok(await takeEvents(scope, events, saved));
  },
);
