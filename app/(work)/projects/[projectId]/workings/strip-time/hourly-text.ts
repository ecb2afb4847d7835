/** Days and times of day, as loggers write them before each reading. */
const STAMP = /\b\d{1,4}[-/.]\d{1,2}[-/.]\d{2,4}(?:T(?=\d))?|(?<!\d)\d{1,2}:\d{2}(?::\d{2})?(?:\s*[ap]m)?Z?\b/gi;
const GAP = /^(?:[-–—?]|gap|null|n\/?a)$/i;
const NUMBER = /^[+\-−]?\d+(?:\.\d+)?$/;

/**
 * Temperatures out of what was typed or pasted: one to an hour, apart by spaces, commas, semicolons or lines; days and times of day are passed
 * over. Null is a gap, NaN something that is no temperature.
 */
export const readHourlyText = (text: string): readonly (number | null)[] =>
  text.replace(STAMP, " ").split(/[\s,;]+/).filter((word) => word !== "").map((word) =>
    GAP.test(word) ? null : NUMBER.test(word) ? Number(word.replace("−", "-")) : Number.NaN);

/** Twelve to a line, so that half a day can be told at a glance. */
export function hourlyText(hourly: readonly (number | null)[], places: number): string {
  const words = hourly.map((temperature) => (temperature === null ? "gap" : String(Number(temperature.toFixed(places)))));
  return Array.from({ length: Math.ceil(words.length / 12) }, (_, line) => words.slice(line * 12, line * 12 + 12).join(" ")).join("\n");
}
