import "server-only";
import { recordSiteEventsInput, type ProposedEventInput } from "#lib/contracts/progress.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { settleReserved } from "../gear/reserved/settle-reserved.ts";
import { takeEvents } from "./take-events.ts";

/** A column stood or stripped takes panels or yields them, and so does whatever may take that back. */
const movesPanels = (event: ProposedEventInput): boolean =>
  event.kind === "stage-reached" ? event.stage !== "cut" : event.kind === "set-back" || event.kind === "withdrawn" || event.kind === "settled";

/** The same id twice gets the same answer, whoever asks again and however late. */
export const recordSiteEvents = projectUseCase(
  "progress.recordSiteEvents", "progress.record", recordSiteEventsInput, async (scope, { events, saved, personId }) => {
    if (personId !== undefined && personId !== scope.member.id) return fail({ kind: "not-signed-in" });
    const answer = await takeEvents(scope, events, saved);
    if (events.some(movesPanels)) await settleReserved(scope);
    return ok(answer);
  },
);
