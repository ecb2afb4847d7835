/** The two grid lines that cross at a column. */
export type GridCrossing = { readonly lettered: string; readonly numbered: string };

const LETTERED = /^[A-Za-z]{1,3}(?:\.\d{1,2})?'?$/;
const NUMBERED = /^\d{1,3}(?:\.\d{1,2})?[a-z]?'?$/;

/** `A/1`, `A-1`, `A 1`, `A1`, `1/A`, `B.3/4` as two grid lines; null for any other text, which stays a free location. */
export function splitGridRef(ref: string): GridCrossing | null {
  const text = ref.trim();
  const parts = text.split(/\s*[/\\-]\s*|\s+/);
  if (parts.length === 2) return crossing(parts[0] ?? "", parts[1] ?? "");
  const joined = /^([A-Za-z]{1,3})(\d{1,3})$/.exec(text);
  return joined ? crossing(joined[1] ?? "", joined[2] ?? "") : null;
}

function crossing(first: string, second: string): GridCrossing | null {
  if (LETTERED.test(first) && NUMBERED.test(second)) return { lettered: first.toUpperCase(), numbered: second };
  if (NUMBERED.test(first) && LETTERED.test(second)) return { lettered: second.toUpperCase(), numbered: first };
  return null;
}

/** One key for every way of writing the same place: A/1, a-1 and A1 are one. */
export function placeKey(gridRef: string): string {
  const crossed = splitGridRef(gridRef);
  return crossed ? `${crossed.lettered}/${crossed.numbered}` : gridRef.toLowerCase().replace(/\s+/g, " ").trim();
}
