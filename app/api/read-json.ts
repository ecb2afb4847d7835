import { answerFailure } from "./answer-failure.ts";

const MOST_BYTES = 2_000_000;

/**
 * What a screen or a phone posts, and what to answer where it cannot be read. JSON only, so that a form of another
 * site cannot post here.
 */
export async function readJson(request: Request): Promise<{ readonly given: unknown } | { readonly unread: Response }> {
  if (!request.headers.get("content-type")?.startsWith("application/json")) return { unread: new Response(null, { status: 415 }) };
  const text = await request.text();
  if (text.length > MOST_BYTES) return { unread: new Response(null, { status: 413 }) };
  try {
    return { given: JSON.parse(text) as unknown };
  } catch {
    return { unread: answerFailure({ kind: "invalid", problems: [{ field: "", message: "This is not JSON." }] }) };
  }
}
