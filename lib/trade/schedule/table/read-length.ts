import { MM_PER_FOOT, MM_PER_INCH } from "#lib/kernel/us-units.ts";

export type LengthUnit = "mm" | "cm" | "m" | "in" | "ft";

const MM_PER: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, ft: MM_PER_FOOT };
const UNIT_WORDS: readonly (readonly [LengthUnit, RegExp])[] = [
  ["mm", /^(?:mm|mms|millimet(?:re|er)s?)$/],
  ["cm", /^(?:cm|cms|centimet(?:re|er)s?)$/],
  ["m", /^(?:m|mtr|mtrs|met(?:re|er)s?)$/],
  ["in", /^(?:in|ins|inch|inches|")$/],
  ["ft", /^(?:ft|feet|foot|'|ft-in|ft\/in|feet-inches)$/],
];
const MAX_LENGTH_TEXT = 64;

export const unitNamed = (word: string): LengthUnit | null =>
  UNIT_WORDS.find(([, words]) => words.test(word))?.[0] ?? null;

/** One spelling for the many primes, quotation marks and minus signs that keyboards put into dimensions. */
export const plainMarks = (text: string): string =>
  text
    .replace(/[\u2018\u2019\u2032\u00b4`]/g, "'")
    .replace(/[\u201c\u201d\u2033]/g, '"')
    .replace(/''/g, '"')
    .replace(/[\u2212\u2013\u2014]/g, "-");

/** To a tenth of a millimetre, which keeps every sixteenth of an inch apart. */
export const tenths = (value_mm: number): number => Math.round(Number((value_mm * 10).toPrecision(12))) / 10 + 0;

/** A number whose comma may group thousands or mark decimals: three digits after it group, except in metres and feet. */
export function readNumber(text: string, unit: LengthUnit): number | null {
  if (!/^(?:\d[\d.,]*|\.\d+)$/.test(text)) return null;
  const grouped = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text) && (text.includes(".") || !["m", "ft"].includes(unit));
  const plain = grouped ? text.replace(/,/g, "") : text.replace(",", ".");
  return /^(?:\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/** A length in mm: `300`, `0.3 m`, `30cm`, `12"`, `12'-6 1/2"`, `RL +4.200`. A bare number is taken in `bare`. Null when it is none. */
export function readLength(text: string, bare: LengthUnit): number | null {
  if (text.length > MAX_LENGTH_TEXT) return null;
  const stripped = plainMarks(text.toLowerCase())
    .replace(/^(?:rl|ssl|ffl|fsl|sfl|el|elev|elevation|toc|tos)\b\.?\s*[:=]?\s*/, "")
    .replace(/\s*(?:ahd|aod)$/, "")
    .replace(/^(?:\u00b1|\+\/-|\+)\s*/, "")
    .trim();
  const negative = stripped.startsWith("-");
  const size = unsigned(negative ? stripped.slice(1).trim() : stripped, bare);
  if (size === null || !Number.isFinite(size)) return null;
  return tenths(negative ? -size : size);
}

function unsigned(text: string, bare: LengthUnit): number | null {
  const plain = /^([\d.,]+)\s*([a-z"']*?)\.?$/.exec(text);
  if (plain) {
    const unit = plain[2] ? unitNamed(plain[2]) : bare;
    const value = unit ? readNumber(plain[1] ?? "", unit) : null;
    return unit && value !== null ? value * MM_PER[unit] : null;
  }
  return feetAndInches(text) ?? inchFraction(text);
}

function feetAndInches(text: string): number | null {
  const found = /^(\d+)\s*(?:'|ft|feet|foot)\s*-?\s*(\d+(?:\.\d+)?)?(?:\s*-?\s*(\d+)\/(\d+))?\s*(?:"|in|inch|inches)?$/.exec(text);
  if (!found) return null;
  // `5'-1/2"`: the whole inches are then the numerator.
  const wholeInches = Number(found[2] ?? 0);
  const part = fraction(found[3], found[4]);
  if (part === null || wholeInches + part >= 12) return null;
  return Number(found[1]) * MM_PER_FOOT + (wholeInches + part) * MM_PER_INCH;
}

function inchFraction(text: string): number | null {
  const found = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)\s*(?:"|in|inch|inches)$/.exec(text);
  if (!found) return null;
  const part = fraction(found[2], found[3]);
  return part === null ? null : (Number(found[1] ?? 0) + part) * MM_PER_INCH;
}

function fraction(numerator: string | undefined, denominator: string | undefined): number | null {
  if (numerator === undefined || denominator === undefined) return 0;
  const value = Number(numerator) / Number(denominator);
  return value < 1 ? value : null;
}
