import { amountFigure, rateFigure } from "#lib/kernel/money.ts";

/** `1,234.50`: thousands apart, without the currency, which stands at the head of what it is in. */
export const amountText = (minor: number, currency: string): string => {
  const [whole = "", part] = amountFigure(Math.abs(minor), currency).split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return `${minor < 0 ? "−" : ""}${grouped}${part === undefined ? "" : `.${part}`}`;
};

export type MoneyProps = { readonly minor: number; readonly currency: string; readonly withCurrency?: boolean };

export function Money({ minor, currency, withCurrency = false }: MoneyProps) {
  return <span className="whitespace-nowrap tabular-nums">{withCurrency ? `${currency} ` : ""}{amountText(minor, currency)}</span>;
}

/** A rate a piece, as fine as it is agreed: `0.085`. */
export const rateText = (rate: number | null, currency: string): string => (rate === null ? "–" : rateFigure(rate, currency));
