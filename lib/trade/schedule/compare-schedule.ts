import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { compareLevels, type KnownLevelRow, type LevelChange } from "./compare-levels.ts";
import { placeKey, splitGridRef } from "./grid-names.ts";
import { nameKey } from "./level-order.ts";
import type { Lift, ScheduleReading } from "./lift.ts";
import type { Finding } from "./table/raw-lift.ts";
import type { Shape } from "./table/read-size.ts";
import type { Source } from "./table/sheet.ts";

export type KnownColumn = {
  readonly id: string;
  readonly gridRef: string;
  readonly mark: string | null;
  readonly fromLevel: string;
  readonly toLevel: string;
  readonly shape: Shape;
  readonly width_mm: number;
  readonly depth_mm: number;
  /** Furthest stage reached, 0 (nothing yet) to 6 (stripped). */
  readonly stage: number;
};

/** A project as the database has it. */
export type KnownSchedule = {
  readonly levels: readonly KnownLevelRow[];
  readonly gridLines: readonly { readonly name: string }[];
  readonly marks: readonly { readonly name: string }[];
  readonly columns: readonly KnownColumn[];
};

export type ColumnChange = {
  readonly id: string;
  readonly gridRef: string;
  readonly fromLevel: string;
  readonly stage: number;
  readonly what: "mark" | "shape" | "width" | "depth" | "toLevel";
  readonly from: string | number | null;
  readonly to: string | number;
  readonly source: Source;
};

export type NewMark = Pick<Lift, "shape" | "width_mm" | "depth_mm" | "concrete"> & { readonly name: string };
/** A schedule names grid lines but does not space them. */
export type NewGridLine = { readonly name: string; readonly family: "lettered" | "numbered"; readonly offset_mm: null };

export type SchedulePreview = {
  readonly create: {
    readonly levels: readonly { readonly name: string; readonly elevation_mm: number }[];
    readonly gridLines: readonly NewGridLine[];
    readonly marks: readonly NewMark[];
    readonly columns: readonly Lift[];
  };
  readonly change: { readonly levels: readonly LevelChange[]; readonly columns: readonly ColumnChange[] };
  /** Ids of columns that the file repeats as they are. */
  readonly same: readonly string[];
  readonly refused: readonly Finding[];
  /** Columns the file does not mention; nothing happens to them. */
  readonly notInFile: readonly KnownColumn[];
  /** Grid references that name no two grid lines and stay as written. */
  readonly freePlaces: readonly string[];
};

const POURED = 5;
const SAME_SIDE_MM = 0.05;

const keyOf = (column: { readonly gridRef: string; readonly fromLevel: string }): string => `${placeKey(column.gridRef)}\n${nameKey(column.fromLevel)}`;

/** What taking a schedule in would do to a project. Nothing is deleted, and a poured column is never changed. */
export function compareSchedule(known: KnownSchedule, read: ScheduleReading): SchedulePreview {
  const poured = known.columns.filter((column) => column.stage >= POURED);
  const levels = compareLevels(known.levels, read.levels, new Set(poured.flatMap((column) => [nameKey(column.fromLevel), nameKey(column.toLevel)])));
  const lifts = placedByMark(read.lifts, known.columns);
  const usable = lifts.filter((lift) => ![lift.fromLevel, lift.toLevel].some((name) => levels.unusable.has(nameKey(name))));
  const byKey = new Map(known.columns.map((column) => [keyOf(column), column]));
  const create: Lift[] = [];
  const change: ColumnChange[] = [];
  const same: string[] = [];
  const refused: Finding[] = [...read.problems, ...levels.refused];
  for (const lift of usable) {
    if (!rises(lift, levels.heights)) {
      refused.push(goesDown(lift));
      continue;
    }
    const column = byKey.get(keyOf(lift));
    const changes = column ? changesTo(column, lift) : [];
    if (!column) create.push(lift);
    else if (changes.length === 0) same.push(column.id);
    else if (column.stage >= POURED) refused.push(pouredAlready(column, lift, changes));
    else change.push(...changes);
  }
  const mentioned = new Set(lifts.map(keyOf));
  return {
    create: { levels: levels.create, gridLines: newGridLines(known, create), marks: newMarks(known, usable), columns: create },
    change: { levels: levels.change, columns: change },
    same,
    refused,
    notInFile: known.columns.filter((column) => !mentioned.has(keyOf(column))),
    freePlaces: distinct(create.filter((lift) => lift.locatedBy === "mark" || !splitGridRef(lift.gridRef)).map((lift) => lift.gridRef)),
  };
}

/** A level that stays where the project has it may lie otherwise than the file thinks. */
function rises({ fromLevel, toLevel }: Lift, heights: ReadonlyMap<string, number>): boolean {
  const [from, to] = [heights.get(nameKey(fromLevel)), heights.get(nameKey(toLevel))];
  return from === undefined || to === undefined || from < to;
}

const goesDown = ({ gridRef, fromLevel, toLevel, source }: Lift): Finding => ({
  source,
  message: `${gridRef} from ${fromLevel} to ${toLevel} is left out: in the project ${toLevel} does not lie above ${fromLevel}.`,
  remedy: "Correct the elevations in the file or in the project.",
});

/** A schedule by marks alone speaks of every place where the project has that mark. */
function placedByMark(lifts: readonly Lift[], columns: readonly KnownColumn[]): Lift[] {
  const places = new Map<string, Set<string>>();
  for (const { mark, gridRef } of columns) {
    if (mark !== null) places.set(nameKey(mark), (places.get(nameKey(mark)) ?? new Set()).add(gridRef));
  }
  return lifts.flatMap((lift): Lift[] => {
    const known = lift.locatedBy === "mark" ? places.get(nameKey(lift.mark)) : undefined;
    return known ? [...known].map((gridRef) => ({ ...lift, gridRef, locatedBy: splitGridRef(gridRef) ? "grid" : "mark" })) : [lift];
  });
}

/** A schedule by grid references alone gives no mark, so it changes none. */
const givesMark = (lift: Lift): boolean => lift.locatedBy === "mark" || lift.mark !== lift.gridRef;

function changesTo(column: KnownColumn, lift: Lift): ColumnChange[] {
  const { id, gridRef, fromLevel, stage } = column;
  const differing: Pick<ColumnChange, "what" | "from" | "to">[] = [];
  if (givesMark(lift) && nameKey(column.mark ?? "") !== nameKey(lift.mark)) differing.push({ what: "mark", from: column.mark, to: lift.mark });
  if (nameKey(column.toLevel) !== nameKey(lift.toLevel)) differing.push({ what: "toLevel", from: column.toLevel, to: lift.toLevel });
  if (column.shape !== lift.shape) differing.push({ what: "shape", from: column.shape, to: lift.shape });
  if (Math.abs(column.width_mm - lift.width_mm) > SAME_SIDE_MM) differing.push({ what: "width", from: column.width_mm, to: lift.width_mm });
  if (Math.abs(column.depth_mm - lift.depth_mm) > SAME_SIDE_MM) differing.push({ what: "depth", from: column.depth_mm, to: lift.depth_mm });
  return differing.map((difference) => ({ id, gridRef, fromLevel, stage, ...difference, source: lift.source }));
}

const pouredAlready = (column: KnownColumn, lift: Lift, changes: readonly ColumnChange[]): Finding => ({
  source: lift.source,
  message: `${column.gridRef} from ${column.fromLevel} is poured already and stays as it is; the file would change ${changes.map(({ what, from, to }) => `${WORDS[what]} ${from ?? "none"} to ${to}`).join(", ")}.`,
  remedy: "If the file is right, settle it with the engineer before anything else is cast on this column.",
});

const WORDS: Readonly<Record<ColumnChange["what"], string>> = { mark: "mark", shape: "shape", width: "width", depth: "depth", toLevel: "top level" };

/** The lowest lift of a mark gives its usual section; every column carries its own besides. */
function newMarks(known: KnownSchedule, lifts: readonly Lift[]): NewMark[] {
  const taken = new Set(known.marks.map((mark) => nameKey(mark.name)));
  const marks = new Map<string, NewMark & { readonly lowest: number }>();
  for (const lift of lifts) {
    const key = nameKey(lift.mark);
    const lowest = lift.fromElevation_mm ?? Infinity;
    const earlier = marks.get(key);
    if (taken.has(key) || (earlier && earlier.lowest <= lowest)) continue;
    marks.set(key, { name: earlier?.name ?? lift.mark, shape: lift.shape, width_mm: lift.width_mm, depth_mm: lift.depth_mm, concrete: lift.concrete, lowest });
  }
  return [...marks.values()].map(({ lowest: _, ...mark }) => mark).sort((a, b) => naturalOrder(a.name, b.name));
}

function newGridLines(known: KnownSchedule, lifts: readonly Lift[]): NewGridLine[] {
  const taken = new Set(known.gridLines.map((line) => nameKey(line.name)));
  const crossings = lifts.flatMap((lift) => (lift.locatedBy === "grid" ? (splitGridRef(lift.gridRef) ?? []) : []));
  const fresh = (names: readonly string[], family: NewGridLine["family"]): NewGridLine[] =>
    distinct(names.filter((name) => !taken.has(nameKey(name)))).map((name) => ({ name, family, offset_mm: null }));
  return [...fresh(crossings.map((each) => each.lettered), "lettered"), ...fresh(crossings.map((each) => each.numbered), "numbered")];
}

const distinct = (names: readonly string[]): string[] => [...new Set(names)].sort(naturalOrder);
