import { type LengthUnit, plainMarks, readLength, unitNamed } from "./read-length.ts";

export type Shape = "rectangle" | "circle";

/** What a size cell says. `one number` needs the shape column to mean anything; `bars` is steel, which looks like a size and is none. */
export type SizeReading =
  | { readonly kind: "section"; readonly shape: Shape; readonly width_mm: number; readonly depth_mm: number }
  | { readonly kind: "one number"; readonly value_mm: number }
  | { readonly kind: "bars" }
  | { readonly kind: "none" };

const MAX_SIZE_TEXT = 80;
const ROUND_SIGNS = /[\u00d8\u00f8\u2300\u2205\u03c6\u03d5\u03a6]/g;

const BARS: readonly RegExp[] = [
  /@|\bc\s*\/\s*c\b|\bcrs\b|\bcts\b/, // spacing: 8 dia @ 150 c/c
  /^\d{1,3}\s*(?:nos?\.?)?\s*-?\s*(?:[tyhnrbs]|hd|sd|ht|#)\s*-?\s*\d{1,2}(?!\d)/, // count, grade, diameter: 8T25, 4-Y20, 8-#8
  /^\d{1,3}\s*-?\s*d\s*\d{1,2}(?!\d)/, // 8-D25
  /^(?:[tyhnrb]|hd|#)\s*\d{1,2}\s*-/, // T8-200
  /^d\s*\d{1,2}\s*-/, // D10-200
  /^\d{1,2}\s*-\s*\d{1,2}\s*(?:mm)?\s*(?:dia|\u00f8)/, // 8-25 dia
];

/** Reads one size. Bare numbers are in `bare`; where no unit was stated anywhere, pairs under 5 are metres (`0.3 x 0.6`). */
export function readSize(text: string, bare: LengthUnit, smallMeansMetres = false): SizeReading {
  if (text.length > MAX_SIZE_TEXT) return { kind: "none" };
  const plain = plainMarks(text.toLowerCase())
    .replace(ROUND_SIGNS, "\u00f8")
    .replace(/[\u00d7\u2715\u2a2f*]/g, "x")
    .replace(/\s+/g, " ")
    .trim();
  if (BARS.some((pattern) => pattern.test(plain))) return { kind: "bars" };
  const reading = circle(plain, bare) ?? square(plain, bare) ?? rectangle(plain, bare) ?? oneNumber(plain, bare);
  if (!reading) return { kind: "none" };
  return smallMeansMetres && bare === "mm" && largest(reading) < 5 ? readSize(text, "m") : reading;
}

export const largest = (reading: SizeReading): number =>
  reading.kind === "section" ? Math.max(reading.width_mm, reading.depth_mm)
  : reading.kind === "one number" ? reading.value_mm
  : Infinity;

const section = (shape: Shape, width_mm: number | null, depth_mm: number | null): SizeReading | null =>
  width_mm !== null && depth_mm !== null && width_mm > 0 && depth_mm > 0 ? { kind: "section", shape, width_mm, depth_mm } : null;

function circle(text: string, bare: LengthUnit): SizeReading | null {
  const words = "(?:\u00f8|diameter|dia\\.?|round|circular|circle|circ\\.?|rd\\.?)";
  const rest = around(text, words) ?? /^d\s*(\d{3,4}(?:\s*mm)?)$/.exec(text)?.[1] ?? null;
  if (rest === null) return null;
  const diameter = readLength(rest, bare);
  return section("circle", diameter, diameter);
}

function square(text: string, bare: LengthUnit): SizeReading | null {
  const rest = around(text, "(?:square|sq\\.?|\u25a1|\u2b1c)");
  if (rest === null) return null;
  const side = readLength(rest, bare);
  return side === null ? null : section("rectangle", side, side);
}

/** What is left of `500 dia` or `dia 500` once the word is taken off either end. */
function around(text: string, words: string): string | null {
  const before = new RegExp(`^${words}\\s*[=:]?\\s*(\\S.*)$`).exec(text);
  const after = new RegExp(`^(.*\\S)\\s*${words}$`).exec(text);
  return before?.[1] ?? after?.[1] ?? null;
}

function rectangle(text: string, bare: LengthUnit): SizeReading | null {
  const sides = text.split(/\s*x\s*|\s+by\s+/);
  const pair = sides.length === 2 ? sides : slashPair(text, bare);
  if (!pair) return null;
  const [first = "", second = ""] = pair.map(withoutSideLetter);
  const shared = unitAtEnd(second) ?? bare;
  return section("rectangle", readLength(first, shared), readLength(second, unitAtEnd(second) ? bare : (unitAtEnd(first) ?? bare)));
}

/** `30/60`: a pair only in metric, since in inches a stroke writes a fraction. */
function slashPair(text: string, bare: LengthUnit): string[] | null {
  if (bare === "in" || bare === "ft" || !/^[\d.,]+\s*\/\s*[\d.,]+\s*(?:mm|cm|m)?$/.test(text)) return null;
  return text.split(/\s*\/\s*/);
}

/** `300(W)`, `600D`: the letter only says which side it is. */
const withoutSideLetter = (side: string): string =>
  side.replace(/^[bdwlh]\s*=\s*/, "").replace(/(\d)\s*(?:\([bdwlh]\)|[bdwlh])$/, "$1").trim();

function unitAtEnd(side: string): LengthUnit | null {
  const word = /([a-z]+|"|')$/.exec(side)?.[1];
  return word ? unitNamed(word) : null;
}

function oneNumber(text: string, bare: LengthUnit): SizeReading | null {
  const value_mm = readLength(text, bare);
  return value_mm !== null && value_mm > 0 ? { kind: "one number", value_mm } : null;
}
