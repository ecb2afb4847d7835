import type { ChargeKind } from "../accrual/charge-line.ts";

export type InvoiceField = "docket" | "item" | "kind" | "quantity" | "from" | "to" | "days" | "rate" | "amount" | "currency";

/** Headings as invoices in English write them. Common practice, no source. */
const WORDS: Readonly<Record<InvoiceField, RegExp>> = {
  docket: /^(?:delivery |hire |del )?(?:docket|note|ticket|dn)(?: (?:no|number|ref))?$/,
  item: /^(?:item|description|product|equipment|gear|part|details?)(?: (?:name|description))?$/,
  kind: /^(?:type|charge|charge type|kind|category|line type)$/,
  quantity: /^(?:qty|quantity|pieces|pcs|no|nos|number|count)(?: on hire)?$/,
  from: /^(?:from|on hire|start|hire from|date from|on|date|charged from)(?: date)?$/,
  to: /^(?:to|off hire|until|end|hire to|date to|off|charged to)(?: date)?$/,
  days: /^(?:days|no days|number of days|days charged|charged days|hire days)$/,
  rate: /^(?:rate|unit rate|price|unit price|hire rate)(?: (?:per|a) (?:day|week|month|piece|unit))?$/,
  amount: /^(?:amount|total|line total|net|net amount|value|charge amount|ex tax)$/,
  currency: /^(?:currency|ccy)$/,
};
const FIELDS = Object.keys(WORDS) as readonly InvoiceField[];

/** What a heading stands for, its unit or currency in brackets left aside; null when it is none we know. */
export function readHeading(text: string): InvoiceField | null {
  const plain = text.toLowerCase().replace(/\s*[([][^)\]]*[)\]]\s*/g, " ").replace(/[^a-z ]+/g, " ").replace(/\s+/g, " ").trim();
  return FIELDS.find((field) => WORDS[field].test(plain)) ?? null;
}

/** The first that fits is taken, so that a failed collection is not read as a collection. Common practice, no source. */
const KIND_WORDS: readonly (readonly [ChargeKind, RegExp])[] = [
  ["failed-collection", /\b(?:failed|abortive|aborted|wasted|futile)\b/],
  ["docket-minimum", /\bminimum\b.*\bdocket\b|\bdocket\b.*\bminimum\b/],
  ["minimum", /\bmin(?:imum)?\b/],
  ["delivery", /\b(?:delivery|delivered|transport (?:in|out to site)|cartage in)\b/],
  ["collection", /\b(?:collection|collected|pick ?up|transport back|cartage out)\b/],
  ["cleaning", /\bclean(?:ing|ed)?\b/],
  ["damage", /\b(?:damaged?|repairs?)\b/],
  ["missing", /\bmissing\b.*\bhire\b|\bhire\b.*\bmissing\b/],
  ["loss", /\b(?:loss|lost|missing|replacement)\b/],
];

export const kindIn = (text: string): ChargeKind => KIND_WORDS.find(([, words]) => words.test(text.toLowerCase()))?.[0] ?? "hire";
