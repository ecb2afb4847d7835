/** Digits after the point in an ISO 4217 currency: 2 for AUD, 0 for JPY. */
const places = (currency: string): number => new Intl.NumberFormat("en-AU", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;

/** Integer minor units as a person writes them, with the currency's code. */
export const moneyText = (minor: number, currency: string): string =>
  `${new Intl.NumberFormat("en-AU", { minimumFractionDigits: places(currency), maximumFractionDigits: places(currency) }).format(minor / 10 ** places(currency))} ${currency}`;

export const toMinor = (amount: number, currency: string): number => Math.round(amount * 10 ** places(currency));
export const fromMinor = (minor: number, currency: string): number => minor / 10 ** places(currency);
export const moneyPlaces = places;
