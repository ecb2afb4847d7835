import { MM_PER_FOOT, MM_PER_INCH } from "#lib/kernel/us-units.ts";

const SIXTEENTHS_PER_FOOT = 12 * 16;

/** A length to the nearest sixteenth of an inch, as a tape shows it. */
type TapeReading = { readonly isNegative: boolean; readonly feet: number; readonly inches: number; readonly over: number; readonly under: number };

function readTape(lengthMm: number): TapeReading {
  const all = Math.round((Math.abs(lengthMm) / MM_PER_INCH) * 16);
  const feet = Math.floor(all / SIXTEENTHS_PER_FOOT);
  const rest = all - feet * SIXTEENTHS_PER_FOOT;
  const inches = Math.floor(rest / 16);
  let over = rest - inches * 16;
  let under = 16;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return { isNegative: lengthMm < 0 && all > 0, feet, inches, over, under };
}

function inchText({ inches, over, under, feet }: TapeReading): string {
  if (over === 0) return `${inches}"`;
  return inches === 0 && feet === 0 ? `${over}/${under}"` : `${inches} ${over}/${under}"`;
}

/** `12'-0"`, `7 7/8"`, `9'-4 1/2"`: below one foot the feet are left out. */
export function feetInches(lengthMm: number): string {
  const tape = readTape(lengthMm);
  const text = tape.feet === 0 ? inchText(tape) : `${tape.feet}'-${inchText(tape)}`;
  return tape.isNegative ? `−${text}` : text;
}

/** Inches alone, for what a carpenter reads off in inches whatever its length: panels, ply, gaps between clamps. */
export function inchesOnly(lengthMm: number): string {
  const tape = readTape(lengthMm);
  const text = inchText({ ...tape, inches: tape.inches + tape.feet * 12, feet: 0 });
  return tape.isNegative ? `−${text}` : text;
}

const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
const INCHES = String.raw`(?:(${NUMBER})(?:[\s-]+(\d+)\/(\d+))?|(\d+)\/(\d+))`;
const FEET_AND_INCHES = new RegExp(String.raw`^(?:(${NUMBER})\s*(?:'|’|ft)\s*-?\s*)?(?:${INCHES}\s*(?:"|”|''|in)?)?$`, "i");
const METRIC = new RegExp(String.raw`^(${NUMBER})\s*(mm|m)?$`, "i");

const figure = (text: string | undefined): number => Number((text ?? "0").replace(",", "."));

/** Millimetres from what a person types: `2850`, `2.85 m`, `9'-4 1/2"`, `9 ft 4.5`, `112"`; undefined when it is no length. */
export function parseLength(text: string, units: "metric" | "us"): number | undefined {
  const typed = text.trim();
  const metric = METRIC.exec(typed);
  if (metric && (units === "metric" || metric[2])) return figure(metric[1]) * (metric[2]?.toLowerCase() === "m" ? 1000 : 1);
  const tape = FEET_AND_INCHES.exec(typed);
  if (!tape || typed === "") return undefined;
  const [, feet, inches, over, under, loneOver, loneUnder] = tape;
  if (units === "metric" && !/['’"”]|ft|in/i.test(typed)) return undefined;
  const fraction = figure(over ?? loneOver) / (figure(under ?? loneUnder) || 1);
  return figure(feet) * MM_PER_FOOT + (figure(inches) + fraction) * MM_PER_INCH;
}
