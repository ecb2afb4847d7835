import type { StoredColumn } from "./stored-column.ts";

const FIELDS = ["shape", "widthMm", "depthMm", "headedBy", "formHeightMm", "concrete", "remarks"] as const;
type Field = (typeof FIELDS)[number];
export type Typed = Readonly<Partial<Record<Field, unknown>>>;

const isSame = (typed: Typed[Field], given: StoredColumn[Field]): boolean => (typed || null) === (given || null);

/** What the form starts from after somebody else's change: fields that were typed in stay, the others take what is stored now. */
export function rebase(base: StoredColumn, stored: StoredColumn, typed: Typed): StoredColumn {
  const touched = FIELDS.filter((field) => !isSame(typed[field], base[field]));
  const kept = Object.fromEntries(touched.map((field) => [field, base[field]])) as Partial<StoredColumn>;
  return { ...stored, ...kept };
}
