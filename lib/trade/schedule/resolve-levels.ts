import { contradicts, isLevelName, nameKey, orderLevels } from "./level-order.ts";
import type { KnownLevel, UnitSystem } from "./lift.ts";
import type { Field } from "./table/headings.ts";
import { type Findings, quoted, type RawCell, type RawLift, type Table } from "./table/raw-lift.ts";
import { type LengthUnit, plainMarks, readLength } from "./table/read-length.ts";
import type { Source } from "./table/sheet.ts";
import { isNil, splitLevelRun } from "./table/shorthand.ts";

/** From one level up to another; `to` is null where only the lower one is written, and then means the next one up. */
export type Span = { readonly from: string; readonly to: string | null; readonly source: Source };

/** The levels of a file in order, with what is known of their heights. */
export type LevelTable = {
  readonly names: readonly string[];
  readonly elevationOf: (name: string) => number | null;
  readonly above: (name: string) => string | null;
  /** Every level from one to the other, both included; empty when they do not rise. */
  readonly run: (from: string, to: string) => readonly string[];
  readonly spanOf: (lift: RawLift) => Span | null;
  readonly heightOf: (lift: RawLift, table: Table) => number | null;
};

const MAX_LEVELS = 300;

export function resolveLevels(tables: readonly Table[], system: UnitSystem, known: readonly KnownLevel[], findings: Findings): LevelTable {
  const book = gather(tables, system, known, findings);
  const { names, tangled } = orderLevels({ names: [...book.names.values()].slice(0, MAX_LEVELS), pairs: book.pairs, elevations: book.order });
  if (tangled) {
    findings.problems.push({ source: null, message: "The levels contradict one another: each is said to stand above another.", remedy: "Give every level its elevation, or correct the from and to levels." });
  }
  if (book.names.size > MAX_LEVELS) {
    findings.problems.push({ source: null, message: `The file names ${book.names.size} levels; at most ${MAX_LEVELS} are read.`, remedy: "Check that the level column holds levels." });
  }
  const place = new Map(names.map((name, index) => [nameKey(name), index]));
  const above = (name: string) => names[(place.get(nameKey(name)) ?? names.length) + 1] ?? null;
  carryHeightsUp(tables, book, above);
  return {
    names: names.filter((name) => book.mentioned.has(nameKey(name))),
    elevationOf: (name) => book.elevations.get(nameKey(name))?.value ?? null,
    above,
    run: (from, to) => names.slice(place.get(nameKey(from)) ?? 0, (place.get(nameKey(to)) ?? -1) + 1),
    spanOf: book.spanOf,
    heightOf: book.heightOf,
  };
}

type Measured = { readonly value: number; readonly source: Source | null };
type Book = {
  readonly names: Map<string, string>;
  readonly mentioned: Set<string>;
  readonly pairs: (readonly [string, string])[];
  readonly elevations: Map<string, Measured>;
  /** Elevations to order by: the file's, and the project's where the file has none. */
  readonly order: Map<string, number>;
  readonly spanOf: (lift: RawLift) => Span | null;
  readonly heightOf: (lift: RawLift, table: Table) => number | null;
};

function gather(tables: readonly Table[], system: UnitSystem, known: readonly KnownLevel[], findings: Findings): Book {
  const names = new Map(known.map((level) => [nameKey(level.name), level.name]));
  const units = new Map(tables.map((table) => [table, { elevation: heightUnit(table, ELEVATIONS, system, findings), height: heightUnit(table, ["height"], system, findings) }]));
  for (const table of tables) {
    for (const { cells } of table.lifts) {
      for (const cell of [cells.fromLevel, cells.toLevel]) if (cell) names.set(nameKey(cell.text), names.get(nameKey(cell.text)) ?? cell.text);
    }
  }
  const isLevel = (name: string) => names.has(nameKey(name)) || isLevelName(name);
  const book: Book = {
    names, mentioned: new Set(), pairs: [], elevations: new Map(), order: new Map(),
    spanOf: (lift) => spanOf(lift, isLevel),
    heightOf: (lift, table) => (lift.cells.height ? readLength(lift.cells.height.text, units.get(table)?.height ?? "mm") : null),
  };
  for (const table of tables) gatherTable(table, units.get(table)?.elevation ?? "m", book, findings);
  for (const level of known) {
    if (level.elevation_mm !== null && !book.elevations.has(nameKey(level.name))) book.order.set(nameKey(level.name), level.elevation_mm);
  }
  for (const [key, { value }] of book.elevations) book.order.set(key, value);
  for (const table of tables) book.pairs.push(...pairsOfRun(table.levelRun, book.order, findings));
  return book;
}

function spanOf({ cells }: RawLift, isLevel: (name: string) => boolean): Span | null {
  const start = cells.fromLevel ?? cells.level;
  if (!start) return null;
  if (cells.fromLevel && cells.toLevel) return { from: start.text, to: cells.toLevel.text, source: start.source };
  const run = splitLevelRun(start.text, isLevel);
  return { from: run?.[0] ?? start.text, to: run?.[1] ?? cells.toLevel?.text ?? null, source: start.source };
}

function gatherTable(table: Table, unit: LengthUnit, book: Book, findings: Findings): void {
  const mention = (name: string) => {
    book.mentioned.add(nameKey(name));
    if (!book.names.has(nameKey(name))) book.names.set(nameKey(name), name);
  };
  const measure = (name: string, cell: RawCell | undefined) => {
    if (!cell || isNil(cell.text)) return;
    const value = readLength(cell.text, unit);
    const earlier = book.elevations.get(nameKey(name));
    if (value === null) findings.problems.push({ source: cell.source, message: `${quoted(cell.text)} is not an elevation.`, remedy: "Write a number, with its unit if it is not the heading's." });
    else if (!earlier) book.elevations.set(nameKey(name), { value, source: cell.source });
    else if (Math.abs(earlier.value - value) > 0.5) {
      findings.problems.push({
        source: cell.source,
        message: `${name} has two elevations: ${earlier.value} mm in ${earlier.source?.cell ?? "the file"} and ${value} mm in ${cell.source.cell}.`,
        remedy: "Give each level one elevation.",
      });
    }
  };
  for (const level of table.levelRun) mention(level.text);
  for (const { level, elevation } of table.levelElevations) measure(level.text, elevation);
  for (const lift of table.lifts) {
    const span = book.spanOf(lift);
    if (!span) continue;
    mention(span.from);
    measure(span.from, lift.cells.fromElevation);
    if (span.to === null) continue;
    mention(span.to);
    measure(span.to, lift.cells.toElevation);
    book.pairs.push([span.from, span.to]);
  }
}

const ELEVATIONS: readonly Field[] = ["fromElevation", "toElevation"];

/** Where no unit is written: feet in US customary; in metric, metres while every value is small or broken, else millimetres. */
function heightUnit(table: Table, fields: readonly Field[], system: UnitSystem, findings: Findings): LengthUnit {
  const stated = fields.map((field) => table.units[field]).find((unit) => unit !== undefined);
  if (stated) return stated;
  const fromLifts = table.lifts.flatMap((lift) => fields.flatMap((field) => lift.cells[field] ?? []));
  const cells = fields.includes("fromElevation") ? [...fromLifts, ...table.levelElevations.map((fact) => fact.elevation)] : fromLifts;
  const bare = cells.filter((cell) => /^[^\d]*[\d.,]+$/.test(plainMarks(cell.text)));
  const first = bare[0];
  if (!first) return "mm";
  const values = bare.map((cell) => Math.abs(readLength(cell.text, "mm") ?? 0));
  const smallest = fields.includes("height") ? 30 : 300;
  const unit = system === "us" ? "ft" : values.every((value) => value < smallest) ? "m" : "mm";
  findings.warnings.push({
    source: first.source,
    message: `${fields.includes("height") ? "Heights" : "Elevations"} have no unit; read as ${UNIT_NAMES[unit]}.`,
    remedy: "Write the unit in the heading, for example (m) or (mm), if this is wrong.",
  });
  return unit;
}

const UNIT_NAMES: Readonly<Record<"ft" | "m" | "mm", string>> = { ft: "feet", m: "metres", mm: "millimetres" };

/** Rows follow one another upwards or downwards: heights or names decide which; failing both, the top is taken to be written first. */
function pairsOfRun(run: readonly RawCell[], elevations: ReadonlyMap<string, number>, findings: Findings): (readonly [string, string])[] {
  const steps = run.slice(1).map((cell, index) => [run[index]?.text ?? "", cell.text] as const);
  if (steps.length === 0) return [];
  const falling = steps.filter(([one, next]) => contradicts(one, next, elevations)).length;
  const rising = steps.filter(([one, next]) => contradicts(next, one, elevations)).length;
  if (falling === rising) {
    findings.warnings.push({ source: run[0]?.source ?? null, message: "Nothing says whether the levels are written upwards or downwards; the top one is taken to come first.", remedy: "Give the levels elevations if this is wrong." });
  }
  return rising > falling ? steps : steps.map(([one, next]) => [next, one] as const);
}

/** A storey height and one known end give the other end. */
function carryHeightsUp(tables: readonly Table[], book: Book, above: (name: string) => string | null): void {
  const storeys = new Map<string, { from: string; to: string; height: number; source: Source }>();
  for (const table of tables) {
    for (const lift of table.lifts) {
      const span = book.spanOf(lift);
      const height = book.heightOf(lift, table);
      const to = span ? (span.to ?? above(span.from)) : null;
      if (span && to && height !== null && above(span.from) === to) storeys.set(`${nameKey(span.from)}\n${nameKey(to)}`, { from: nameKey(span.from), to: nameKey(to), height, source: span.source });
    }
  }
  for (let round = 0; round < storeys.size; round += 1) {
    for (const { from, to, height, source } of storeys.values()) {
      const [low, high] = [book.elevations.get(from), book.elevations.get(to)];
      if (low && !high) book.elevations.set(to, { value: low.value + height, source });
      if (high && !low) book.elevations.set(from, { value: high.value - height, source });
    }
  }
}
