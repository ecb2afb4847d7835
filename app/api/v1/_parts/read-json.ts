import { fail, ok, type Result } from "#lib/kernel/result.ts";
import { problem } from "./problems.ts";

/** Room for the longest question there is, ninety days of hourly temperatures, three times over. */
export const MOST_BYTES = 128 * 1024;

/** The media type without its parameters (RFC 9110 section 8.3.1). */
const mediaType = (request: Request): string => (request.headers.get("content-type") ?? "").split(";")[0]?.trim().toLowerCase() ?? "";

const tooLarge = () => fail(problem("body-too-large", `Send at most ${MOST_BYTES} bytes.`));

/** The body up to the limit and no byte further, whatever its length claims to be; null when there is more. */
async function readBytes(request: Request): Promise<Uint8Array | null> {
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader = request.body?.getReader();
  for (let next = await reader?.read(); next?.value !== undefined; next = await reader?.read()) {
    length += next.value.byteLength;
    if (length > MOST_BYTES) {
      await reader?.cancel();
      return null;
    }
    parts.push(next.value);
  }
  return Buffer.concat(parts);
}

/** The JSON of a request, or the refusal to send back. */
export async function readJson(request: Request): Promise<Result<unknown, Response>> {
  if (mediaType(request) !== "application/json") return fail(problem("not-json", "Send the question as JSON, with the header Content-Type: application/json."));
  if (Number(request.headers.get("content-length") ?? 0) > MOST_BYTES) return tooLarge();
  const bytes = await readBytes(request);
  if (bytes === null) return tooLarge();
  try {
    return ok(JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes)) as unknown);
  } catch {
    return fail(problem("broken-json", "Send one JSON value in UTF-8 (RFC 8259): check quotes, commas and brackets."));
  }
}
