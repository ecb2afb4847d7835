import type { InvoicePage } from "#lib/server/hire/invoices.ts";

type Docket = InvoicePage["dockets"][number];
type Group = InvoicePage["groups"][number];
const ENDS: readonly Docket["kind"][] = ["off-hire", "return", "yard-count", "missing"];

/** The dockets our side of a difference rests on: the one it is about, and for hire whatever ended some of it by the end of the period. */
export function evidenceFor(group: Group, dockets: readonly Docket[], periodTo: string): Docket[] {
  const isHire = group.key.startsWith("hire|");
  const own = dockets.filter(({ id, number }) => number === group.docket || group.ours.some(({ docketId }) => docketId === id));
  const first = own.map(({ on }) => on).sort()[0] ?? "";
  const ended = dockets.filter(({ kind, on, itemIds }) => isHire && ENDS.includes(kind) && on >= first && on <= periodTo && itemIds.includes(group.itemId ?? ""));
  return [...new Set([...own, ...ended])];
}
