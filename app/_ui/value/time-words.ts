const DAY_WORDS = new Intl.DateTimeFormat("en-AU", { weekday: "short", day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });

/** `Wed 25 Nov 2026` from a plain day. */
export const dayWords = (day: string): string => DAY_WORDS.format(new Date(`${day}T00:00:00Z`)).replace(",", "");

/** Abbreviations are a matter of region: AEDT is known to one, CST to another. */
const REGIONS = ["en-AU", "en-US", "en-GB", "en-NZ", "en-CA", "en-IN", "en-ZA"];

const partOf = (format: Intl.DateTimeFormat, at: Date, type: Intl.DateTimeFormatPartTypes): string =>
  format.formatToParts(at).find((part) => part.type === type)?.value ?? "";

function zoneAbbreviation(at: Date, timeZone: string): string {
  const names = REGIONS.map((region) => partOf(new Intl.DateTimeFormat(region, { timeZone, timeZoneName: "short" }), at, "timeZoneName"));
  return names.find((name) => !/^(GMT|UTC)[+−-]/.test(name)) ?? names[0] ?? "";
}

const formats = new Map<string, { readonly day: Intl.DateTimeFormat; readonly time: Intl.DateTimeFormat }>();

function formatsOf(timeZone: string) {
  const known = formats.get(timeZone);
  if (known) return known;
  const made = {
    day: new Intl.DateTimeFormat("en-AU", { weekday: "short", day: "numeric", month: "short", year: "numeric", timeZone }),
    time: new Intl.DateTimeFormat("en-AU", { hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone }),
  };
  formats.set(timeZone, made);
  return made;
}

export type InstantWords = { readonly day: string; readonly time: string; readonly zone: string };

/** An instant (ISO 8601, UTC) as the clock on that site showed it. */
export function instantWords(at: string, timeZone: string): InstantWords {
  const instant = new Date(at);
  const { day, time } = formatsOf(timeZone);
  return { day: day.format(instant).replace(",", ""), time: time.format(instant), zone: zoneAbbreviation(instant, timeZone) };
}
