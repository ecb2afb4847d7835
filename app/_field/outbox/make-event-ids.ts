import { uuidv7From } from "#lib/kernel/ids.ts";

let lastMs = 0;
let count = 0;

/**
 * Ids that sort in the order they were made, also within one millisecond and when the clock is put back:
 * twelve random bits give way to a counter (RFC 9562 section 6.2, method 1).
 */
export function makeEventId(nowMs: number, random: (length: number) => Uint8Array): string {
  const bytes = random(10);
  if (nowMs > lastMs) {
    lastMs = nowMs;
    count = ((bytes[0] ?? 0) << 3) & 0x7ff;
  } else if ((count += 1) > 0xfff) {
    lastMs += 1;
    count = 0;
  }
  bytes[0] = count >> 8;
  bytes[1] = count & 0xff;
  return uuidv7From(lastMs, bytes);
}

export const randomBytes = (length: number): Uint8Array => crypto.getRandomValues(new Uint8Array(length));
