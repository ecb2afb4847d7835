import type { UnitSystem } from "./lift.ts";
import type { Field } from "./table/headings.ts";
import { type Findings, quoted, type RawCell, type RawLift, type Table } from "./table/raw-lift.ts";
import { type LengthUnit, readLength } from "./table/read-length.ts";
import { readSize, type Shape } from "./table/read-size.ts";
import { isNil } from "./table/shorthand.ts";

export type Section = { readonly shape: Shape; readonly width_mm: number; readonly depth_mm: number };

/** Sides a column may have and this tool will read; outside them a wrong unit is likelier than the column. */
export const LEAST_SIDE_MM = 100;
export const GREATEST_SIDE_MM = 3000;

type ShapeWord = "rectangle" | "square" | "circle" | "other";
type Trouble = { readonly at: RawCell; readonly message: string; readonly remedy: string };

/** The section of a lift from its shape, size, width, depth and diameter cells; null with a problem said when they do not make one. */
export function resolveSection(lift: RawLift, table: Table, system: UnitSystem, findings: Findings): Section | null {
  const found = sectionOf(lift, table, system);
  const trouble = "at" in found ? found : outOfRange(found, lift);
  if (!trouble) return "at" in found ? null : found;
  findings.problems.push({ source: trouble.at.source, message: trouble.message, remedy: trouble.remedy });
  return null;
}

function sectionOf(lift: RawLift, table: Table, system: UnitSystem): Section | Trouble {
  const { cells } = lift;
  const shape = cells.shape ? shapeNamed(cells.shape.text) : null;
  if (shape === "other" && cells.shape) {
    return { at: cells.shape, message: `${quoted(cells.shape.text)} is not a shape this tool boxes.`, remedy: "Use rectangular, square or round; leave other shapes out of the file." };
  }
  const size = written(cells.size);
  if (size) return fromSize(size, shape, table.units.size, system);
  const diameter = written(cells.diameter);
  if (diameter) return fromSides(diameter, null, "circle", { width: table.units.diameter }, system);
  const width = written(cells.width);
  if (width) return fromSides(width, written(cells.depth), shape, { width: table.units.width, depth: table.units.depth }, system);
  return { at: anyCell(lift), message: "There is no size for this lift.", remedy: "Write a size such as 300x600, 450 SQ or 500 DIA." };
}

/** A row that says there is no column: its size cells hold nothing but dashes. */
export function saysNone({ cells }: RawLift): boolean {
  const sizes = [cells.size, cells.diameter, cells.width, cells.depth].filter((cell) => cell !== undefined);
  return sizes.length > 0 && sizes.every((cell) => isNil(cell.text));
}

const written = (cell: RawCell | undefined): RawCell | null => (cell && !isNil(cell.text) ? cell : null);
const anyCell = (lift: RawLift): RawCell => ({ text: "", source: lift.source });

function shapeNamed(text: string): ShapeWord | null {
  const word = text.toLowerCase().replace(/[^a-z\u00f8]/g, "");
  if (isNil(text)) return null;
  if (/^(?:rectangular|rectangle|rect|r|blade|oblong)$/.test(word)) return "rectangle";
  if (/^(?:square|sq|s)$/.test(word)) return "square";
  if (/^(?:circular|circle|circ|round|rd|rnd|c|o|dia|\u00f8)$/.test(word)) return "circle";
  return "other";
}

function fromSize(cell: RawCell, shape: ShapeWord | null, unit: LengthUnit | undefined, system: UnitSystem): Section | Trouble {
  const reading = readSize(cell.text, unit ?? bareUnit(system), unit === undefined);
  if (reading.kind === "bars") return { at: cell, message: `${quoted(cell.text)} is bars or ties, not a size.`, remedy: "Put the column's size here, such as 300x600." };
  if (reading.kind === "none") return { at: cell, message: `${quoted(cell.text)} is not a size.`, remedy: "Write a size such as 300x600, 450 SQ or 500 DIA." };
  if (reading.kind === "one number") {
    if (shape === "circle") return { shape: "circle", width_mm: reading.value_mm, depth_mm: reading.value_mm };
    if (shape === "square") return { shape: "rectangle", width_mm: reading.value_mm, depth_mm: reading.value_mm };
    return { at: cell, message: `${quoted(cell.text)} is one number and does not say which shape.`, remedy: "Write 450x450, 450 SQ or 450 DIA." };
  }
  const clash = (shape === "circle" && reading.shape !== "circle" && reading.width_mm !== reading.depth_mm) || (shape !== null && shape !== "circle" && reading.shape === "circle");
  if (clash) return { at: cell, message: `${quoted(cell.text)} does not agree with the shape column.`, remedy: "Correct the size or the shape." };
  if (shape === "square" && reading.width_mm !== reading.depth_mm) return unevenSquare(cell);
  return { shape: shape === "circle" ? "circle" : reading.shape, width_mm: reading.width_mm, depth_mm: reading.depth_mm };
}

const unevenSquare = (cell: RawCell): Trouble => ({ at: cell, message: `${quoted(cell.text)} makes a square with two different sides.`, remedy: "Correct the size or call it rectangular." });

function fromSides(first: RawCell, second: RawCell | null, shape: ShapeWord | null, units: { width?: LengthUnit | undefined; depth?: LengthUnit | undefined }, system: UnitSystem): Section | Trouble {
  const width_mm = side(first, units.width, system);
  const depth_mm = second ? side(second, units.depth ?? units.width, system) : null;
  if (width_mm === null) return fromWords(first, second, shape, units.width, system);
  if (second && depth_mm === null) return { at: second, message: `${quoted(second.text)} is not a length.`, remedy: "Write one number, with its unit if it is not the heading's." };
  if (shape === "circle") {
    if (depth_mm !== null && depth_mm !== width_mm) return { at: second ?? first, message: "A round column has one diameter, but width and depth differ.", remedy: "Leave the depth blank or correct the shape." };
    return { shape: "circle", width_mm, depth_mm: width_mm };
  }
  if (shape === "square" && depth_mm !== null && depth_mm !== width_mm) return unevenSquare(second ?? first);
  if (depth_mm === null && shape !== "square") return { at: first, message: "The depth is missing.", remedy: "Write the depth, or say in the shape column that it is square or round." };
  return { shape: "rectangle", width_mm, depth_mm: depth_mm ?? width_mm };
}

/** A width column that nevertheless holds whole sizes, such as `500 DIA`. */
function fromWords(first: RawCell, second: RawCell | null, shape: ShapeWord | null, unit: LengthUnit | undefined, system: UnitSystem): Section | Trouble {
  if (!second && readSize(first.text, unit ?? bareUnit(system)).kind === "section") return fromSize(first, shape, unit, system);
  return { at: first, message: `${quoted(first.text)} is not a length.`, remedy: "Write one number, with its unit if it is not the heading's." };
}

const bareUnit = (system: UnitSystem): LengthUnit => (system === "us" ? "in" : "mm");

/** Without a stated unit a side under 5 is metres, as in 0.3. */
function side(cell: RawCell, unit: LengthUnit | undefined, system: UnitSystem): number | null {
  const value = readLength(cell.text, unit ?? bareUnit(system));
  return value !== null && unit === undefined && system === "metric" && value < 5 ? readLength(cell.text, "m") : value;
}

function outOfRange(section: Section, lift: RawLift): Trouble | null {
  const fields: readonly Field[] = ["size", "diameter", "width"];
  const at = fields.map((field) => lift.cells[field]).find((cell) => cell && !isNil(cell.text)) ?? anyCell(lift);
  const wrong = [section.width_mm, section.depth_mm].find((value) => value < LEAST_SIDE_MM || value > GREATEST_SIDE_MM);
  if (wrong === undefined) return null;
  return { at, message: `A side of ${wrong} mm is outside ${LEAST_SIDE_MM} to ${GREATEST_SIDE_MM} mm.`, remedy: "Check the number and its unit; name the unit in the heading, for example (cm)." };
}
