import { naturalOrder } from "#lib/kernel/natural-order.ts";

/** A lettered grid line at the start of a reference: one to three letters, and the tenths of a line set between two others. */
const LETTERED = /^([A-Za-z]{1,3})(?![A-Za-z])(\.\d+)?/;

type Line = { readonly letters: string; readonly tenths: string };
const lineOf = (reference: string): Line | null => {
  const found = LETTERED.exec(reference);
  return found ? { letters: (found[1] ?? "").toUpperCase(), tenths: found[2] ?? "" } : null;
};
/** Lettered lines first, then numbered ones, then places that stand on no line. */
const rankOf = (reference: string, line: Line | null): number => (line ? 0 : /^\d/.test(reference) ? 1 : 2);

/** Grid references in the order of the lines on the drawing: A/2 before A/10, B.3 after B, and AA after Z. */
export function gridOrder(left: string, right: string): number {
  const [a, b] = [lineOf(left), lineOf(right)];
  const byLine = a && b
    ? a.letters.length - b.letters.length || naturalOrder(a.letters, b.letters) || naturalOrder(a.tenths, b.tenths)
    : rankOf(left, a) - rankOf(right, b);
  return byLine || naturalOrder(left, right);
}
