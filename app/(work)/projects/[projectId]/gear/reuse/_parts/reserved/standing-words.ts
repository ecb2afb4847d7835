import type { Standing } from "#lib/trade/gear/reserved.ts";

type Told = { readonly standing: Standing; readonly place: string | null; readonly afterLevel: string | null; readonly after: string | null; readonly widthMm: number; readonly heightMm: number; readonly cutDown: boolean; readonly itemId: string | null };

/** Where a panel that is spoken for is, and what is still to be done to it. */
export function standingWords({ standing, place, after, afterLevel, widthMm, heightMm, cutDown, itemId }: Told, length: (mm: number) => string): string {
  const size = `${length(widthMm)} × ${length(heightMm)}`;
  const then = cutDown && standing !== "cut-down" && standing !== "here" ? `, then cut down to ${size}` : "";
  switch (standing) {
    case "make": return `to be made, ${size}`;
    case "comes-off": return itemId === null ? `once ${after ?? "that column"} on ${afterLevel ?? "its level"} is stripped${then}` : `on ${place ?? "a column"} until that is stripped${then}`;
    case "bring": return `in ${place ?? "the yard"}: to be brought${then}`;
    case "cut-down": return `in ${place ?? "the rack"}: to be cut down to ${size}`;
    case "here": return `in ${place ?? "the rack"}`;
  }
}
