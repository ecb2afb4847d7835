import type { DocketKind } from "#lib/contracts/hire/dockets.ts";

/** What is asked on the form of each kind, apart from number, day, time and note. */
type Asked = {
  readonly number: string; readonly numberHint?: string; readonly name?: string; readonly isNameRequired?: boolean; readonly answers?: string;
  readonly counts?: "counted" | "pieces"; readonly countWord?: string; readonly short?: boolean; readonly condition?: boolean; readonly trip?: string;
  readonly dispatched?: boolean; readonly until?: boolean; readonly amount?: boolean; readonly photos?: boolean; readonly verb: string;
};

export const ASKED: Readonly<Record<DocketKind, Asked>> = {
  "order": { number: "Order number", name: "Ordered with", counts: "pieces", countWord: "Ordered", verb: "Enter the order" },
  "delivery": {
    number: "Docket number", numberHint: "as on the supplier's docket", name: "Driver", answers: "Order", counts: "counted", countWord: "Counted", short: true, condition: true,
    trip: "Brought by the supplier, who charges the trip", dispatched: true, photos: true, verb: "Take the delivery in",
  },
  "off-hire": { number: "Off-hire number", numberHint: "the number the supplier gave on the call", name: "Spoken with", isNameRequired: true, counts: "pieces", countWord: "Called off", verb: "Enter the call" },
  "return": {
    number: "Return docket number", name: "Driver", answers: "Off-hire call", counts: "counted", countWord: "Counted", condition: true,
    trip: "Collected by the supplier, who charges the trip", photos: true, verb: "Send it back",
  },
  "yard-count": { number: "Yard count number", name: "Counted by", answers: "Return", counts: "counted", countWord: "Yard counts", condition: true, photos: true, verb: "Enter the count" },
  "missing": { number: "Report number", name: "Reported to", counts: "pieces", countWord: "Missing", verb: "Report as missing" },
  "settlement": { number: "Account number", name: "Settled with", answers: "Report of missing gear", verb: "Enter as settled" },
  "failed-collection": { number: "Docket number", name: "Driver", photos: true, verb: "Enter the failed collection" },
  "stand-down": { number: "Agreement", numberHint: "the letter or message it was agreed in", name: "Agreed with", until: true, verb: "Enter the stand-down" },
  "credit": { number: "Credit note number", name: "From", amount: true, verb: "Enter the credit" },
};

export type Counts = Readonly<Record<string, { readonly quantity: number; readonly short: number; readonly damaged: number; readonly dirty: number }>>;
export const NO_COUNT = { quantity: Number.NaN, short: Number.NaN, damaged: Number.NaN, dirty: Number.NaN };

const whole = (value: number): number => (Number.isNaN(value) ? 0 : value);

/** Items with a figure; those left empty are not on the docket. */
export const countedLines = (counts: Counts) =>
  Object.entries(counts).map(([itemId, { quantity, short, damaged, dirty }]) => ({ itemId, quantity: whole(quantity), short: whole(short), damaged: whole(damaged), dirty: whole(dirty) }))
    .filter(({ quantity, short }) => quantity > 0 || short > 0);
