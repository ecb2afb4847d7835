import { inchFigure, sixteenths } from "#lib/kernel/inches.ts";
import { MM_PER_FOOT, MM_PER_INCH } from "#lib/kernel/us-units.ts";

const SIXTEENTHS_PER_FOOT = 12 * 16;

const signed = (lengthMm: number, all: number, text: string): string => (lengthMm < 0 && all > 0 ? `−${text}` : text);

/** `12'-0"`, `7 7/8"`, `9'-4 1/2"`, to the nearest sixteenth: below one foot the feet are left out, and in feet the whole inches never. */
export function feetInches(lengthMm: number): string {
  const all = sixteenths(Math.abs(lengthMm));
  const feet = Math.floor(all / SIXTEENTHS_PER_FOOT);
  const rest = all - feet * SIXTEENTHS_PER_FOOT;
  if (feet === 0) return signed(lengthMm, all, `${inchFigure(rest)}"`);
  return signed(lengthMm, all, `${feet}'-${rest > 0 && rest < 16 ? "0 " : ""}${inchFigure(rest)}"`);
}

/** Inches alone, for what a carpenter reads off in inches whatever its length: panels, ply, gaps between clamps. */
export function inchesOnly(lengthMm: number): string {
  const all = sixteenths(Math.abs(lengthMm));
  return signed(lengthMm, all, `${inchFigure(all)}"`);
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
