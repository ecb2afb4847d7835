/** UUID version 7 (RFC 9562 section 5.7) from a clock reading and ten random bytes, so that ids sort by when they were made. */
export function uuidv7From(epochMs: number, random: Uint8Array): string {
  if (random.length < 10) throw new RangeError("uuidv7From needs ten random bytes");
  const bytes = new Uint8Array(16);
  for (let index = 0, rest = epochMs; index < 6; index += 1) {
    bytes[5 - index] = rest % 256;
    rest = Math.floor(rest / 256);
  }
  bytes.set(random.subarray(0, 10), 6);
  bytes[6] = 0x70 | ((bytes[6] ?? 0) & 0x0f);
  bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f);
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}
