import { lengthFigure, sectionText, type Units } from "#app/_ui/value/format-quantity.ts";

export type ChangeWords = { readonly title: string; readonly lines: readonly string[]; readonly reason: string | null };

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null && !Array.isArray(value);
const text = (value: unknown): string | null => (typeof value === "string" && value !== "" ? value : null);
const number = (value: unknown): number | null => (typeof value === "number" ? value : null);

/** What a change of the schedule or the set-up did to the column, read from its audit line. */
export function changeWords(detail: unknown, units: Units): ChangeWords {
  const given: Fields = isFields(detail) ? detail : {};
  const reason = text(given["reason"]);
  const after = isFields(given["after"]) ? given["after"] : null;
  if (given["importId"] !== undefined) return { title: "Taken in from a schedule", lines: [text(given["fileName"]) ?? "a file"], reason };
  if (given["added"] !== undefined) return { title: "Added to the schedule", lines: [`mark ${text(given["mark"]) ?? "unknown"}, from ${text(given["from"]) ?? "unknown"}`], reason };
  if (given["removed"] !== undefined) return { title: "Removed from the schedule", lines: [], reason };
  if (after !== null) return { title: "Size, height or remarks changed", lines: differences(isFields(given["before"]) ? given["before"] : null, after, units), reason };
  return { title: "Schedule changed", lines: [], reason };
}

type Spoken = { readonly name: string; readonly of: (fields: Fields, units: Units) => string };

const SPOKEN: readonly Spoken[] = [
  { name: "section", of: sectionOf },
  { name: "headed by", of: (fields) => text(fields["headedBy"]) ?? "unknown" },
  { name: "form height", of: (fields, units) => { const height = number(fields["formHeightMm"]); return height === null ? "from the levels" : `${lengthFigure(height, units)}${units === "us" ? "" : " mm"}`; } },
  { name: "concrete", of: (fields) => text(fields["concrete"]) ?? "none" },
  { name: "remarks", of: (fields) => text(fields["remarks"]) ?? "none" },
];
const KEYS: Readonly<Record<string, string>> = { "section": "widthMm", "headed by": "headedBy", "form height": "formHeightMm", "concrete": "concrete", "remarks": "remarks" };

function sectionOf(fields: Fields, units: Units): string {
  const [width, depth] = [number(fields["widthMm"]), number(fields["depthMm"])];
  return width === null || depth === null ? "unknown" : sectionText(fields["shape"] === "circle" ? "circle" : "rectangle", width, depth, units);
}

function differences(before: Fields | null, after: Fields, units: Units): string[] {
  return SPOKEN.flatMap(({ name, of }) => {
    if (after[KEYS[name] ?? ""] === undefined) return [];
    const now = of(after, units);
    if (before === null) return [`${name} ${now}`];
    const was = of(before, units);
    return was === now ? [] : [`${name} ${was} → ${now}`];
  });
}
