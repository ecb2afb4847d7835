import type { Role } from "#lib/access/roles.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";

/** A column as the panel needs it. */
export type TickColumn = {
  readonly id: string;
  readonly gridRef: string;
  readonly mark: string;
  /** The name of its level. */
  readonly level: string;
  readonly shape: "rectangle" | "circle";
  readonly widthMm: number;
  readonly depthMm: number;
  readonly done: number;
  readonly flagged: boolean;
};

export type TickPerson = { readonly id: string; readonly name: string; readonly role: Role };
export type TickProject = { readonly id: string; readonly timeZone: string; readonly units: Units };

export const columnName = ({ gridRef, level }: Pick<TickColumn, "gridRef" | "level">): string => `${gridRef}, ${level}`;

const NAMED = 3;

/** "A4", "A4, B4 and C4", "A4, B4, C4 and 11 more". */
export function nameSome(names: readonly string[]): string {
  if (names.length > NAMED + 1) return `${names.slice(0, NAMED).join(", ")} and ${names.length - NAMED} more`;
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}

/** Which columns, for a heading: the level is named once when they all stand on it. */
export function columnsWords(columns: readonly TickColumn[]): string {
  const [first] = columns;
  if (first === undefined) return "no column";
  const oneLevel = columns.every((column) => column.level === first.level);
  return oneLevel ? `${nameSome(columns.map((column) => column.gridRef))}, ${first.level}` : nameSome(columns.map(columnName));
}
