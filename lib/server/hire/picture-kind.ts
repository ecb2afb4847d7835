import "server-only";

/** The kind of picture by its first bytes, whatever its name says; null for anything a page should not be given back. */
export function pictureKind(bytes: Uint8Array): string | null {
  const head = Buffer.from(bytes.subarray(0, 12)).toString("latin1");
  if (head.startsWith("\u00ff\u00d8\u00ff")) return "image/jpeg";
  if (head.startsWith("\u0089PNG\r\n\u001a\n")) return "image/png";
  return head.startsWith("RIFF") && head.slice(8, 12) === "WEBP" ? "image/webp" : null;
}
