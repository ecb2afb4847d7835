import { parseLength } from "./feet-inches.ts";
import { figureText, quantityText, type Units } from "./format-quantity.ts";

const whole = (valueMm: number | undefined, units: Units): number | undefined =>
  valueMm === undefined ? undefined : units === "us" ? Math.round(valueMm) : Number(valueMm.toFixed(4));

/** A length in a table: millimetres or feet and inches; undefined when it cannot be read. */
export const readLengthMm = (text: string, units: Units): number | undefined => whole(parseLength(text, units), units);

/** A side of a column, to a tenth of a millimetre, so that 12" stays 12". */
export function readSideMm(text: string, units: Units): number | undefined {
  const read = parseLength(text, units);
  return read === undefined ? undefined : Math.round(read * 10) / 10;
}

/** A height or offset, which may lie below zero; bare metric figures are metres, as on an elevation. */
export function readHeightMm(text: string, units: Units): number | undefined {
  const typed = text.trim().replace(/^[−–]/, "-");
  const isBelow = typed.startsWith("-");
  const bare = typed.replace(/^[+-]\s*/, "");
  const read = parseLength(units === "metric" && /^[\d.,]+$/.test(bare) ? `${bare} m` : bare, units);
  return read === undefined ? undefined : (whole(isBelow ? -read : read, units) ?? 0) + 0;
}

export const lengthText = (valueMm: number, units: Units): string =>
  units === "us" ? quantityText(valueMm, "mm", "us") : String(Math.round(valueMm * 10) / 10);

/** `12.600` in metres, or feet and inches. */
export const heightText = (valueMm: number, units: Units): string =>
  units === "us" ? quantityText(valueMm, "mm", "us") : figureText(valueMm / 1000, 3).replace("\u202f", "");

/** A length with the text that shows it: feet and inches are rounded to a sixteenth, so the text alone would not give it back. */
export type ShownLength = { readonly text: string; readonly mm: number };

/** The length as it was while its text is untouched, else what was typed. */
export const readShown = (typed: string, shown: ShownLength | undefined, read: (typed: string) => number | undefined): number | undefined =>
  shown !== undefined && shown.text === typed ? shown.mm : read(typed);
