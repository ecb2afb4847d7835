import ical, { ICalCalendarMethod, ICalEventStatus } from "ical-generator";
import { addDays, toDay } from "#lib/kernel/days.ts";
import { readCalendar } from "#lib/server/returns/calendar-feed.ts";
import { answerFailure } from "../../answer-failure.ts";

export const dynamic = "force-dynamic";

const WORDS = { call: "Call off hire", load: "Load for return", collect: "Collection" } as const;
const REFRESH_SECONDS = 3600;
/** One program's own lines for whole days; DTSTART and DTEND say as much to all. */
const FOREIGN_LINES = /^X-(?!WR-|PUBLISHED-)[^\r]*\r\n/gm;

/** iCalendar (RFC 5545): a task keeps its UID, a change raises its SEQUENCE, a withdrawn one is cancelled. */
export async function GET(_request: Request, context: { params: Promise<{ token: string }> }): Promise<Response> {
  const { token } = await context.params;
  const answer = await readCalendar({ token: token.replace(/\.ics$/, "") });
  if (!answer.ok) return answerFailure(answer.failure);
  const { project, tasks } = answer.value;
  const calendar = ical({ name: `Returns, ${project.name}`, method: ICalCalendarMethod.PUBLISH, prodId: { company: "Shutterwright", product: "returns", language: "EN" }, ttl: REFRESH_SECONDS });
  for (const task of tasks) {
    const pieces = task.lines.map(({ item, quantity }) => `${quantity} × ${item}`);
    calendar.createEvent({
      id: `${task.id}@shutterwright`, sequence: task.sequence, stamp: new Date(task.changedAt), allDay: true, start: task.on, end: addDays(toDay(task.on), 1),
      summary: `${task.state === "done" ? "Done: " : ""}${WORDS[task.kind]}, ${task.supplier}`, location: project.site,
      description: [...pieces, task.kind === "collect" ? "" : `Collection on ${task.collectOn}`, task.kind === "call" && task.phone ? `Telephone ${task.phone}` : ""].filter((line) => line !== "").join("\n"),
      status: task.state === "withdrawn" ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
    });
  }
  return new Response(calendar.toString().replace(FOREIGN_LINES, ""), { headers: { "content-type": "text/calendar; charset=utf-8", "content-disposition": 'inline; filename="returns.ics"', "cache-control": "private, no-cache" } });
}
