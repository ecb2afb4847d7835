type Asked = { get(name: string): string | null };

const first = (list: string | null): string | undefined => list?.split(",")[0]?.trim() || undefined;

/**
 * Scheme and host a phone reaches this server by: the public address it was given, or else the one this page was asked by.
 * A proxy in front says which that was.
 */
export function ownAddress(asked: Asked, given: string | undefined): string {
  if (given && URL.canParse(given)) return new URL(given).origin;
  const host = first(asked.get("x-forwarded-host")) ?? first(asked.get("host")) ?? "localhost";
  return `${first(asked.get("x-forwarded-proto")) === "https" ? "https" : "http"}://${host}`;
}

/** Names that mean "this machine": a phone that scans them looks for the server in itself. */
export const isOwnMachineOnly = (address: string): boolean => /^(localhost|.*\.localhost|127(\.\d+){3}|\[::1\])$/.test(new URL(address).hostname);
