const DAY_WORDS = new Intl.DateTimeFormat("en-AU", { weekday: "short", day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });

/** `Wed 25 Nov 2026` from a plain day. */
export const dayWords = (day: string): string => DAY_WORDS.format(new Date(`${day}T00:00:00Z`)).replace(",", "");

/** Abbreviations are a matter of region: AEDT is known to one, CST to another. */
const REGIONS = ["en-AU", "en-US", "en-GB", "en-NZ", "en-CA", "en-IN", "en-ZA"];

type Formats = { readonly day: Intl.DateTimeFormat; readonly time: Intl.DateTimeFormat; readonly names: readonly Intl.DateTimeFormat[] };

/** Making a format costs far more than using it does, and a page of columns shows hundreds of instants. */
const formats = new Map<string, Formats>();

function formatsOf(timeZone: string): Formats {
  const known = formats.get(timeZone);
  if (known) return known;
  const made = {
    day: new Intl.DateTimeFormat("en-AU", { weekday: "short", day: "numeric", month: "short", year: "numeric", timeZone }),
    time: new Intl.DateTimeFormat("en-AU", { hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone }),
    names: REGIONS.map((region) => new Intl.DateTimeFormat(region, { timeZone, timeZoneName: "short" })),
  };
  formats.set(timeZone, made);
  return made;
}

const nameOf = (format: Intl.DateTimeFormat, at: Date): string => format.formatToParts(at).find(({ type }) => type === "timeZoneName")?.value ?? "";

function zoneAbbreviation(at: Date, formatsByRegion: readonly Intl.DateTimeFormat[]): string {
  let first = "";
  for (const format of formatsByRegion) {
    const name = nameOf(format, at);
    if (!/^(GMT|UTC)[+−-]/.test(name)) return name;
    first ||= name;
  }
  return first;
}

export type InstantWords = { readonly day: string; readonly time: string; readonly zone: string };

/** An instant (ISO 8601, UTC) as the clock on that site showed it. */
export function instantWords(at: string, timeZone: string): InstantWords {
  const instant = new Date(at);
  const { day, time, names } = formatsOf(timeZone);
  return { day: day.format(instant).replace(",", ""), time: time.format(instant), zone: zoneAbbreviation(instant, names) };
}
