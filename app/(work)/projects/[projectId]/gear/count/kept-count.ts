import { uuidv7From } from "#lib/kernel/ids.ts";

/** What was counted so far at one place, by item; `asked` is the id under which these very figures were sent and no answer came. */
export type KeptCount = { readonly lines: Readonly<Record<string, number>>; readonly asked?: { readonly countId: string; readonly said: string } };
type Line = { readonly itemId: string; readonly counted: number };

const STORE = "shutterwright count of ";
export const NOTHING_COUNTED: KeptCount = { lines: {} };

export function findCount(key: string): KeptCount {
  try {
    const kept = JSON.parse(localStorage.getItem(STORE + key) ?? "null") as KeptCount | null;
    return typeof kept?.lines === "object" ? kept : NOTHING_COUNTED;
  } catch {
    return NOTHING_COUNTED;
  }
}

/** A browser that keeps nothing still counts, until its page is closed. */
export function keepCount(key: string, count: KeptCount): void {
  try {
    localStorage.setItem(STORE + key, JSON.stringify(count));
  } catch {
    // Full or forbidden.
  }
}

export function dropCount(key: string): void {
  try {
    localStorage.removeItem(STORE + key);
  } catch {
    // Forbidden: then nothing was kept.
  }
}

/** The same figures sent again are the same count, so that an answer lost on the way makes no second one. */
export function askedOnce(count: KeptCount, lines: readonly Line[], now: number, random: Uint8Array): { readonly countId: string; readonly said: string } {
  const said = JSON.stringify(lines);
  return count.asked?.said === said ? count.asked : { countId: uuidv7From(now, random), said };
}
