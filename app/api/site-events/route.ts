import { currentCaller } from "#lib/server/gate/session.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { answerFailure } from "../answer-failure.ts";
import { readJson } from "../read-json.ts";

/** Takes ticks from screens and phones. */
export async function POST(request: Request): Promise<Response> {
  const read = await readJson(request);
  if ("unread" in read) return read.unread;
  const result = await recordSiteEvents(await currentCaller(), read.given as Parameters<typeof recordSiteEvents>[1]);
  return result.ok ? Response.json(result.value) : answerFailure(result.failure);
}
