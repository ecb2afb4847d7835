import { currentCaller } from "#lib/server/gate/session.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { answerFailure } from "../answer-failure.ts";

const MOST_BYTES = 2_000_000;

/** Takes ticks from screens and phones. JSON only, so that a form of another site cannot post here. */
export async function POST(request: Request): Promise<Response> {
  if (!request.headers.get("content-type")?.startsWith("application/json")) return new Response(null, { status: 415 });
  const text = await request.text();
  if (text.length > MOST_BYTES) return new Response(null, { status: 413 });
  const given = readJson(text);
  if (given === undefined) return answerFailure({ kind: "invalid", problems: [{ field: "", message: "This is not JSON." }] });
  const result = await recordSiteEvents(await currentCaller(), given as Parameters<typeof recordSiteEvents>[1]);
  return result.ok ? Response.json(result.value) : answerFailure(result.failure);
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
