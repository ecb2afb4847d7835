import { amountFigure, readAmount } from "#lib/kernel/money.ts";
import type { CuttingRule, TimberUse } from "#lib/contracts/planning/cutting.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { lengthText, readLengthMm, readShown } from "#app/_ui/value/typed-length.ts";

export type Edge = { readonly units: Units; readonly currency: string };
type Sheet = CuttingRule["sheets"][number];
type Timber = CuttingRule["timbers"][number];

/** A size of stock as it stands in its table while someone types; `given` is what it began as. */
export type SheetRow = { readonly key: string; readonly given: Sheet | undefined; readonly length: string; readonly width: string; readonly price: string; readonly onHand: string };
export type TimberRow = { readonly key: string; readonly given: Timber | undefined; readonly use: TimberUse; readonly length: string; readonly price: string; readonly onHand: string };

const countText = (count: number | null): string => (count === null ? "" : String(count));

/** Nothing typed means as many as needed; what is no count goes as no number and is refused with its row. */
const readCount = (text: string): number | null => (text.trim() === "" ? null : /^\d+$/.test(text.trim()) ? Number(text) : Number.NaN);

function lengthMm(text: string, givenMm: number | undefined, { units }: Edge): number {
  const shown = givenMm === undefined ? undefined : { text: lengthText(givenMm, units), mm: givenMm };
  return readShown(text, shown, (typed) => readLengthMm(typed, units)) ?? Number.NaN;
}

export const toSheetRow = (sheet: Sheet, { units, currency }: Edge, key: string): SheetRow => ({
  key, given: sheet, length: lengthText(sheet.lengthMm, units), width: lengthText(sheet.widthMm, units), price: amountFigure(sheet.price, currency), onHand: countText(sheet.onHand),
});
export const toTimberRow = (timber: Timber, { units, currency }: Edge, key: string): TimberRow => ({
  key, given: timber, use: timber.use, length: lengthText(timber.lengthMm, units), price: amountFigure(timber.price, currency), onHand: countText(timber.onHand),
});

export const toSheet = (row: SheetRow, edge: Edge): Sheet => ({
  lengthMm: lengthMm(row.length, row.given?.lengthMm, edge), widthMm: lengthMm(row.width, row.given?.widthMm, edge),
  price: readAmount(row.price, edge.currency) ?? Number.NaN, onHand: readCount(row.onHand),
});
export const toTimber = (row: TimberRow, edge: Edge): Timber => ({
  use: row.use, lengthMm: lengthMm(row.length, row.given?.lengthMm, edge), price: readAmount(row.price, edge.currency) ?? Number.NaN, onHand: readCount(row.onHand),
});
