import type { LiveMessage } from "#lib/contracts/columns-sheet.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { followProject } from "#lib/server/progress/follow-project.ts";
import { answerFailure } from "../../answer-failure.ts";

export const dynamic = "force-dynamic";

const KEEP_ALIVE_MS = 20_000;

/** A stream of text that may be written to before anyone reads it, and closed from either end. */
function openStream(onClose: () => void) {
  const encoder = new TextEncoder();
  let controller: ReadableStreamDefaultController<Uint8Array> | undefined;
  const body = new ReadableStream<Uint8Array>({ start: (given) => void (controller = given), cancel: () => close() });
  const write = (text: string): void => controller?.enqueue(encoder.encode(text));
  const pulse = setInterval(() => write(": still here\n\n"), KEEP_ALIVE_MS);
  function close(): void {
    if (!controller) return;
    clearInterval(pulse);
    const open = controller;
    controller = undefined;
    onClose();
    try {
      open.close();
    } catch {
      // The reader has closed it already.
    }
  }
  return { body, write, close };
}

/** Server-sent events (WHATWG HTML section 9.2); a reconnecting screen names the last number it has seen. */
export async function GET(request: Request, context: { params: Promise<{ projectId: string }> }): Promise<Response> {
  const { projectId } = await context.params;
  const seen = request.headers.get("last-event-id") ?? new URL(request.url).searchParams.get("since") ?? "";
  const since = /^\d{1,15}$/.test(seen) ? Number(seen) : 0;
  let leave = (): void => undefined;
  const stream = openStream(() => leave());
  const push = (message: LiveMessage): void => stream.write(`id: ${message.seq}\ndata: ${JSON.stringify(message)}\n\n`);
  stream.write("retry: 2000\n\n");
  const followed = await followProject(await currentCaller(), projectId, since, push, stream.close);
  if (!followed.ok) {
    stream.close();
    return answerFailure(followed.failure);
  }
  leave = followed.value;
  if (request.signal.aborted) stream.close();
  request.signal.addEventListener("abort", stream.close);
  const headers = { "content-type": "text/event-stream; charset=utf-8", "cache-control": "no-store, no-transform", "x-accel-buffering": "no" };
  return new Response(stream.body, { headers });
}
