import type { Day } from "#lib/kernel/days.ts";
import type { ChargeLine } from "../accrual/charge-line.ts";
import { numberOf } from "../day-number.ts";
import type { DifferenceReason, InvoiceLine } from "./invoice.ts";

/** Why the two sides probably differ, with the figures that say so. */
export type Guess = { readonly reason: DifferenceReason; readonly values: Readonly<Record<string, number>> };

const guess = (reason: DifferenceReason, values: Readonly<Record<string, number>> = {}): Guess => ({ reason, values });

/** What is left once lines of the same quantity and amount on both sides have been struck out. */
function strikeOut(theirs: readonly InvoiceLine[], ours: readonly ChargeLine[]): { theirs: InvoiceLine[]; ours: ChargeLine[] } {
  const left = [...ours];
  const rest = theirs.filter((line) => {
    const at = left.findIndex((own) => own.amount === line.amount && (line.quantity === null || own.quantity === line.quantity));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  return { theirs: rest, ours: left };
}

export type Differing = {
  readonly theirs: readonly InvoiceLine[]; readonly ours: readonly ChargeLine[];
  /** Charged for the same thing before the invoice's period. */
  readonly earlier: readonly ChargeLine[];
  readonly difference: number;
  /** Last day of the invoice's period. */
  readonly periodTo: Day;
};

/**
 * Looks for the usual mistakes in turn: the first that accounts for the difference is named. A guess is something to
 * ask the supplier, never a finding.
 */
export function guessReason({ theirs, ours, earlier, difference, periodTo }: Differing): Guess {
  if (ours.length === 0 && !earlier.some(({ kind }) => kind === "minimum" || kind === "docket-minimum")) return guess("not-ours");
  if (theirs.length === 0) return guess("not-charged");
  const left = strikeOut(theirs, ours);
  return minimumTwice(theirs, earlier, difference) ?? chargedTwice(theirs, difference) ?? compareDays(left.theirs, left.ours, periodTo) ?? guess("unexplained");
}

/** The amount over is a minimum that was charged in an earlier period, or stands on this invoice as another one. */
function minimumTwice(theirs: readonly InvoiceLine[], earlier: readonly ChargeLine[], difference: number): Guess | null {
  const isMinimum = ({ kind }: { readonly kind: string }): boolean => kind === "minimum" || kind === "docket-minimum";
  const before = earlier.filter(isMinimum).reduce((sum, { amount }) => sum + amount, 0);
  const asked = theirs.filter(isMinimum).map(({ amount }) => amount);
  if (difference <= 0 || asked.length === 0) return null;
  const isAgain = before > 0 || asked.length > 1;
  return isAgain && asked.some((amount) => amount <= difference) ? guess("minimum-twice", { before }) : null;
}

function chargedTwice(theirs: readonly InvoiceLine[], difference: number): Guess | null {
  const again = theirs.find((line, index) => theirs.some((other, at) => at < index && sameLine(line, other)));
  return again && again.amount === difference ? guess("charged-twice", { row: again.row }) : null;
}

const sameLine = (a: InvoiceLine, b: InvoiceLine): boolean =>
  a.kind === b.kind && a.quantity === b.quantity && a.from === b.from && a.to === b.to && a.amount === b.amount;

/** Days of a line on the calendar, from its dates or as it states them. */
const daysOf = (line: InvoiceLine): number | null =>
  line.from !== null && line.to !== null ? numberOf(line.to) - numberOf(line.from) + 1 : line.days;

type Sums = { readonly pieces: number; readonly pieceDays: number };

function compareDays(theirs: readonly InvoiceLine[], ours: readonly ChargeLine[], periodTo: Day): Guess | null {
  if (theirs.length === 0 || theirs.some((line) => line.quantity === null || daysOf(line) === null)) return null;
  const their: Sums = {
    pieces: sum(theirs, ({ quantity }) => quantity ?? 0), pieceDays: sum(theirs, (line) => (line.quantity ?? 0) * (daysOf(line) ?? 0)),
  };
  const own: Sums = { pieces: sum(ours, ({ quantity }) => quantity), pieceDays: sum(ours, (line) => line.quantity * (numberOf(line.to) - numberOf(line.from) + 1)) };
  const rates = rateOf(theirs, ours);
  if (their.pieceDays === own.pieceDays) return guess("wrong-rate", rates ?? {});
  if (rates !== null && rates["theirs"] !== rates["ours"]) return null;
  if (their.pieceDays > own.pieceDays && ranOn(theirs, ours, periodTo)) return guess("return-ignored", { pieceDays: their.pieceDays - own.pieceDays });
  if (their.pieces !== own.pieces) return guess("wrong-quantity", { theirs: their.pieces, ours: own.pieces });
  return guess("extra-days", { pieceDays: their.pieceDays - own.pieceDays, pieces: own.pieces });
}

/** All of theirs run to the end of the period, though some of ours ended before it. */
const ranOn = (theirs: readonly InvoiceLine[], ours: readonly ChargeLine[], periodTo: Day): boolean =>
  theirs.every(({ to }) => to === periodTo) && ours.some(({ to }) => to < periodTo);

/** The rate each side uses, where both use a single one. */
function rateOf(theirs: readonly InvoiceLine[], ours: readonly ChargeLine[]): Record<string, number> | null {
  const [their, rest] = [...new Set(theirs.map(({ rate }) => rate))];
  if (their === undefined || their === null || rest !== undefined) return null;
  const known = ours.flatMap(({ working }) => (working ? [working.perDay, working.perWeek, working.perMonth] : [])).filter((rate) => rate !== null);
  const same = known.find((rate) => rate === their);
  const nearest = [...known].sort((a, b) => Math.abs(a - their) - Math.abs(b - their))[0];
  return nearest === undefined ? null : { theirs: their, ours: same ?? nearest };
}

const sum = <T>(list: readonly T[], of: (item: T) => number): number => list.reduce((total, item) => total + of(item), 0);
