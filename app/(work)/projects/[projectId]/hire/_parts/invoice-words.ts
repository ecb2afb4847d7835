import type { QueryState } from "#lib/contracts/hire/invoices.ts";
import type { Guess } from "#lib/trade/hire/match/guess-reason.ts";
import type { DifferenceReason } from "#lib/trade/hire/match/invoice.ts";
import { rateText } from "#app/_ui/value/money.tsx";

export const REASON_WORDS: Readonly<Record<DifferenceReason, string>> = {
  "extra-days": "Days too many", "wrong-rate": "Another rate than agreed", "minimum-twice": "Minimum asked for again", "return-ignored": "A return left out",
  "wrong-quantity": "Another quantity", "charged-twice": "A line twice", "not-ours": "Nothing of ours", "not-charged": "Not charged by them", "unexplained": "No reason found",
};

/** The probable reason with the figures that speak for it. */
export function guessText({ reason, values }: Guess, currency: string): string {
  const { theirs, ours, pieceDays, pieces, row, before } = values;
  switch (reason) {
    case "extra-days": return `Probably days too many: ${pieceDays} piece-days more for ${pieces} pieces.`;
    case "wrong-rate": return theirs === undefined || ours === undefined || theirs === ours ? "Same pieces and days, another amount: probably another rate than agreed." : `Probably another rate: ${rateText(theirs, currency)} asked, ${rateText(ours, currency)} agreed.`;
    case "minimum-twice": return (before ?? 0) > 0 ? "Probably a minimum that was charged in an earlier period." : "Probably the minimum asked for twice.";
    case "return-ignored": return `Probably a return left out: ${pieceDays} piece-days run on after pieces had gone back.`;
    case "wrong-quantity": return `Probably another quantity: ${theirs} asked, ${ours} by our dockets.`;
    case "charged-twice": return `Probably the same line twice; see row ${row}.`;
    case "not-ours": return "No docket of ours goes with it.";
    case "not-charged": return "By our dockets it is due, and they do not ask for it.";
    case "unexplained": return "No usual reason accounts for it; compare the lines.";
  }
}

export const QUERY_WORDS: Readonly<Record<QueryState, string>> = { open: "Open", sent: "Sent to the supplier", credited: "Credited", accepted: "Accepted by us" };
