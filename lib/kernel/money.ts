/** Money is a whole number of minor units (cents) with an ISO 4217 currency; rates may be finer, in hundredths of a minor unit. */
export const RATE_PARTS = 100;

/** Decimal places of a currency: two for most, none for JPY, three for KWD (ISO 4217, as the runtime's CLDR data has it). */
export const minorDigits = (currency: string): number =>
  new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;

/** `1234.5` in AUD is 123450; null when the text is no amount or finer than `digits` places. */
function wholeOf(text: string, digits: number): number | null {
  const plain = text.trim().replace(/[\s\u00a0\u202f']/g, "");
  const match = /^(-?)(\d{1,12})(?:\.(\d+))?$/.exec(plain.replace(/,(?=\d{3}(?:\D|$))/g, ""));
  if (!match) return null;
  const [, sign = "", whole = "", part = ""] = match;
  if (part.replace(/0+$/, "").length > digits) return null;
  const value = Number(`${whole}${part.slice(0, digits).padEnd(digits, "0")}`);
  return Number.isSafeInteger(value) ? (sign === "-" ? -value : value) : null;
}

export const readAmount = (text: string, currency: string): number | null => wholeOf(text, minorDigits(currency));
/** A rate per piece, in hundredths of a minor unit: 0.085 AUD a day is 850. */
export const readRate = (text: string, currency: string): number | null => wholeOf(text, minorDigits(currency) + 2);

const plain = (value: number, digits: number): string => {
  const size = String(Math.abs(value)).padStart(digits + 1, "0");
  const text = digits === 0 ? size : `${size.slice(0, -digits)}.${size.slice(-digits)}`;
  return value < 0 ? `-${text}` : text;
};

/** Without thousands marks or currency: what a field or a spreadsheet takes. */
export const amountFigure = (minor: number, currency: string): string => plain(minor, minorDigits(currency));

/** As many places as a currency has, more where the rate is finer. */
export function rateFigure(rate: number, currency: string): string {
  const digits = minorDigits(currency);
  const text = plain(rate, digits + 2);
  return text.endsWith("00") ? text.slice(0, digits === 0 ? -3 : -2) : text.replace(/0$/, "");
}
