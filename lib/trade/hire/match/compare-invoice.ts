import type { Day } from "#lib/kernel/days.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import type { ChargeLine } from "../accrual/charge-line.ts";
import { guessReason, type Differing, type Guess } from "./guess-reason.ts";
import type { InvoiceLine } from "./invoice.ts";

/** What belongs together on both sides: one delivery's hire of one item, or one docket's trip, loss or damage. */
export type MatchedGroup = {
  readonly key: string;
  readonly docket: string | null;
  readonly itemId: string | null;
  readonly theirs: readonly InvoiceLine[];
  readonly ours: readonly ChargeLine[];
  readonly theirAmount: number;
  readonly ourAmount: number;
  /** Theirs less ours: over zero is asked for too much. */
  readonly difference: number;
  /** Null where both agree, to the cent or to the rounding of their lines. */
  readonly guess: Guess | null;
};

/** Our charges of the invoice's period, with what was charged before it, so that a minimum asked for twice is seen. */
export type OurSide = {
  readonly lines: readonly ChargeLine[];
  readonly earlier: readonly ChargeLine[];
  /** Last day of the invoice's period. */
  readonly periodTo: Day;
  /** A docket's number as the supplier writes it. */
  readonly docketNumber: (docketId: string) => string;
};

/** Dockets are told apart by letters and figures alone: `DN-0412`, `dn 412` and `DN 0412` are one. */
export const plainDocket = (number: string | null): string =>
  (number ?? "").toUpperCase().replace(/[^A-Z0-9]/g, "").replace(/(^|[A-Z])0+(?=\d)/g, "$1");

const isHire = (kind: InvoiceLine["kind"]): boolean => kind === "hire" || kind === "missing" || kind === "minimum";
const keyOf = (kind: InvoiceLine["kind"], docket: string, itemId: string | null): string => `${isHire(kind) ? "hire" : kind}|${docket}|${itemId ?? ""}`;

/** Line by line, grouped by docket and item; what only one side has stands in a group of its own. Dearest difference first. */
export function compareInvoice(invoice: readonly InvoiceLine[], { lines, earlier, periodTo, docketNumber }: OurSide): MatchedGroup[] {
  const ourKey = (line: ChargeLine): string => keyOf(line.kind, plainDocket(docketNumber(line.docketId)), line.itemId);
  const ours = groupBy(lines, ourKey);
  const before = groupBy(earlier, ourKey);
  const theirs = groupBy(invoice, (line) => keyOf(line.kind, plainDocket(line.docket), line.itemId));
  return [...new Set([...theirs.keys(), ...ours.keys()])]
    .map((key) => matched(key, { theirs: theirs.get(key) ?? [], ours: ours.get(key) ?? [], earlier: before.get(key) ?? [], periodTo }, docketNumber))
    .sort((a, b) => Math.abs(b.difference) - Math.abs(a.difference) || (a.key < b.key ? -1 : 1));
}

function matched(key: string, sides: Omit<Differing, "difference">, docketNumber: OurSide["docketNumber"]): MatchedGroup {
  const { theirs, ours, earlier } = sides;
  const theirAmount = theirs.reduce((sum, { amount }) => sum + amount, 0);
  const ourAmount = ours.reduce((sum, { amount }) => sum + amount, 0);
  const difference = theirAmount - ourAmount;
  const rounding = Math.max(theirs.length, ours.length) - 1;
  const first = ours[0] ?? earlier[0];
  return {
    key, theirs, ours, theirAmount, ourAmount, difference,
    docket: theirs[0]?.docket ?? (first ? docketNumber(first.docketId) : null), itemId: theirs[0]?.itemId ?? first?.itemId ?? null,
    guess: Math.abs(difference) <= rounding ? null : guessReason({ ...sides, difference }),
  };
}

export type InvoiceTotals = { readonly theirs: number; readonly ours: number; readonly over: number; readonly under: number };

export const totalsOf = (groups: readonly MatchedGroup[]): InvoiceTotals => ({
  theirs: groups.reduce((sum, { theirAmount }) => sum + theirAmount, 0),
  ours: groups.reduce((sum, { ourAmount }) => sum + ourAmount, 0),
  over: groups.reduce((sum, { guess, difference }) => sum + (guess === null ? 0 : Math.max(0, difference)), 0),
  under: groups.reduce((sum, { guess, difference }) => sum + (guess === null ? 0 : Math.max(0, -difference)), 0),
});
