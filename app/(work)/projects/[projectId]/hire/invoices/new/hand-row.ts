import { readAmount, readRate } from "#lib/kernel/money.ts";
import type { ChargeKind } from "#lib/trade/hire/accrual/charge-line.ts";

/** A line as it is typed. */
export type HandRow = {
  readonly key: string; readonly kind: ChargeKind; readonly docket: string; readonly itemId: string; readonly quantity: string; readonly from: string;
  readonly to: string; readonly rate: string; readonly amount: string;
};

/** What the contract takes; a figure that cannot be read goes as no number and is refused with its row. */
export const toLines = (rows: readonly HandRow[], items: readonly { readonly id: string; readonly name: string }[], currency: string) =>
  rows.map((row, index) => ({
    row: index + 1, kind: row.kind, docket: row.docket, itemId: row.itemId === "" ? null : row.itemId, text: items.find(({ id }) => id === row.itemId)?.name ?? row.kind,
    quantity: row.quantity.trim() === "" ? null : Number(row.quantity), from: row.from.trim() || null, to: row.to.trim() || null, days: null,
    rate: row.rate.trim() === "" ? null : (readRate(row.rate, currency) ?? Number.NaN), amount: readAmount(row.amount, currency) ?? Number.NaN,
  }));
