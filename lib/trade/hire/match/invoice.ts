import type { Day } from "#lib/kernel/days.ts";
import type { ChargeKind } from "../accrual/charge-line.ts";

/** One line of a supplier's invoice, as it stands on their paper. What they leave out is null. */
export type InvoiceLine = {
  /** Row in their file or place on their page, from 1. */
  readonly row: number;
  readonly kind: ChargeKind;
  /** The delivery's docket for hire, the docket of the trip, loss or damage otherwise; their spelling. */
  readonly docket: string | null;
  readonly itemId: string | null;
  /** What they call it. */
  readonly text: string;
  readonly quantity: number | null;
  readonly from: Day | null;
  readonly to: Day | null;
  readonly days: number | null;
  /** Hundredths of a minor unit a piece, by the day, the week or the month. */
  readonly rate: number | null;
  readonly amount: number;
};

export const DIFFERENCE_REASONS = [
  "extra-days", "wrong-rate", "minimum-twice", "return-ignored", "wrong-quantity", "charged-twice", "not-ours", "not-charged", "unexplained",
] as const;
export type DifferenceReason = (typeof DIFFERENCE_REASONS)[number];
