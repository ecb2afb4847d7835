import type { ColumnGear } from "#lib/contracts/hire/column-gear.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { lengthText, readLengthMm, readShown } from "#app/_ui/value/typed-length.ts";

type Given = ColumnGear["rows"][number];
export type Limit = "sideOver" | "sideUpTo" | "heightOver" | "heightUpTo";

/** A row as it stands in its table while someone types; `given` is what it began as, `level` empty for all. */
export type GearRow = { readonly key: string; readonly given: Given | undefined; readonly itemId: string; readonly count: string; readonly level: string } & Readonly<Record<Limit, string>>;

export const emptyRow = (key: string, itemId: string): GearRow => ({ key, given: undefined, itemId, count: "", level: "", sideOver: "", sideUpTo: "", heightOver: "", heightUpTo: "" });

export function toGearRow(given: Given, units: Units, key: string): GearRow {
  const text = (mm: number | null): string => (mm === null ? "" : lengthText(mm, units));
  return {
    key, given, itemId: given.itemId, count: String(given.count), level: given.levelId ?? "",
    sideOver: text(given.sideOverMm), sideUpTo: text(given.sideUpToMm), heightOver: text(given.heightOverMm), heightUpTo: text(given.heightUpToMm),
  };
}

/** What the contract takes; what cannot be read goes as no number and is refused with its row. */
export function toGear(row: GearRow, units: Units): Given {
  const limit = (key: Limit): number | null => (row[key].trim() === "" ? null : lengthMm(row[key], row.given?.[`${key}Mm`] ?? undefined, units));
  return {
    itemId: row.itemId, levelId: row.level === "" ? null : row.level, count: /^\d+$/.test(row.count.trim()) ? Number(row.count) : Number.NaN,
    sideOverMm: limit("sideOver"), sideUpToMm: limit("sideUpTo"), heightOverMm: limit("heightOver"), heightUpToMm: limit("heightUpTo"),
  };
}

function lengthMm(text: string, givenMm: number | undefined, units: Units): number {
  const shown = givenMm === undefined ? undefined : { text: lengthText(givenMm, units), mm: givenMm };
  return readShown(text, shown, (typed) => readLengthMm(typed, units)) ?? Number.NaN;
}
