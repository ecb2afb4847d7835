export type Reception = {
  /** Undefined until something was tried. */
  readonly isReached: boolean | undefined;
  /** When this screen last heard from the server, by the phone's clock. */
  readonly lastAt: number | undefined;
};

let now: Reception = { isReached: undefined, lastAt: undefined };
const hearers = new Set<() => void>();

/** Whoever talks to the server says here whether it was reached; the line about reception reads it. */
export function noteContact(isReached: boolean): void {
  const lastAt = isReached ? Date.now() : now.lastAt;
  const isNews = isReached !== now.isReached || (lastAt ?? 0) - (now.lastAt ?? 0) > 20_000;
  if (!isNews) return;
  now = { isReached, lastAt };
  for (const hear of hearers) hear();
}

export const readReception = (): Reception => now;

export function followReception(hear: () => void): () => void {
  hearers.add(hear);
  return () => hearers.delete(hear);
}
