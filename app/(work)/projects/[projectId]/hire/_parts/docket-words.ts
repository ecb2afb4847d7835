import type { DocketKind } from "#lib/contracts/hire/dockets.ts";
import type { OpenPart } from "#lib/trade/hire/open-dockets.ts";

export const DOCKET_WORDS: Readonly<Record<DocketKind, string>> = {
  "order": "Order", "delivery": "Delivery", "off-hire": "Off-hire call", "return": "Return", "yard-count": "Supplier's yard count", "missing": "Missing gear",
  "settlement": "Loss settled", "failed-collection": "Failed collection", "stand-down": "Stand-down", "credit": "Credit",
};

const OPEN_WORDS: Readonly<Record<OpenPart["code"], (pieces: string) => string>> = {
  "to-deliver": (pieces) => `${pieces} still to come`,
  "to-collect": (pieces) => `${pieces} still to be collected`,
  "no-yard-count": () => "the supplier's yard count is not in yet",
  "yard-counts-fewer": (pieces) => `the yard counts ${pieces} fewer than we did`,
  "yard-counts-more": (pieces) => `the yard counts ${pieces} more than we did`,
  "yard-claims-damage": (pieces) => `the yard claims damage to ${pieces} more than we saw`,
  "unsettled": () => "not settled yet",
};

export const openText = ({ code, quantity, item }: OpenPart & { readonly item: string | null }): string =>
  OPEN_WORDS[code](item === null ? String(quantity) : `${quantity} × ${item}`);

/** What usually follows a docket, to be entered from its page. */
export const FOLLOWED_BY: Readonly<Partial<Record<DocketKind, DocketKind>>> = {
  "order": "delivery", "delivery": "off-hire", "off-hire": "return", "return": "yard-count", "missing": "settlement", "yard-count": "credit",
};
export const GATE_KINDS: readonly DocketKind[] = ["delivery", "return"];
