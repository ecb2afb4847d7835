import { wrongMethod } from "../_parts/answer.ts";
import { openApiDocument } from "../_parts/document.ts";

let text: string | undefined;

/** Public, as it says nothing of anybody; the same until the next release. */
export function GET(): Response {
  text ??= JSON.stringify(openApiDocument());
  return new Response(text, { headers: { "content-type": "application/json", "cache-control": "no-cache" } });
}

const getOnly = (): Response => wrongMethod("GET");
export { getOnly as POST, getOnly as PUT, getOnly as PATCH, getOnly as DELETE };
