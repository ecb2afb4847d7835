import { placeKey } from "./grid-names.ts";
import { nameKey } from "./level-order.ts";
import type { Lift, UnitSystem } from "./lift.ts";
import type { LevelTable, Span } from "./resolve-levels.ts";
import { resolveSection, saysNone } from "./resolve-section.ts";
import { type Findings, quoted, type RawCell, type RawLift, type Table } from "./table/raw-lift.ts";
import type { Source } from "./table/sheet.ts";
import { isGridRun, isNil, looksLikeDate, splitList, splitMarks } from "./table/shorthand.ts";

export const LEAST_STOREY_MM = 300;
export const GREATEST_STOREY_MM = 15_000;

const LONGEST_MARK = 20;
const LONGEST_PLACE = 40;
const LONGEST_NOTE = { concrete: 40, mainBars: 80, remarks: 500 } as const;

type Place = { readonly mark: string; readonly gridRef: string; readonly locatedBy: "grid" | "mark" };

/** Every lift that one raw lift stands for: each of its places, between each pair of neighbouring levels. */
export function resolveLift(raw: RawLift, table: Table, levels: LevelTable, system: UnitSystem, findings: Findings): Lift[] {
  if (saysNone(raw)) return [];
  const section = resolveSection(raw, table, system, findings);
  const places = placesOf(raw, findings);
  const storeys = storeysOf(raw, table, levels, findings);
  if (!section || !places || !storeys) return [];
  const note = (field: keyof typeof LONGEST_NOTE) => noteOf(raw.cells[field], field, findings);
  const rest = { ...section, concrete: note("concrete"), mainBars: note("mainBars"), remarks: note("remarks"), source: raw.source };
  return places.flatMap((place) => storeys.map((storey) => ({ ...place, ...storey, ...rest })));
}

function placesOf(raw: RawLift, findings: Findings): Place[] | null {
  const { mark, grid } = raw.cells;
  const say = (source: Source, message: string, remedy: string) => {
    findings.problems.push({ source, message, remedy });
    return null;
  };
  const tooLong = [mark, grid].find((cell) => cell && splitList(cell.text).some((name) => name.length > (cell === mark ? LONGEST_MARK : LONGEST_PLACE)));
  if (tooLong) return say(tooLong.source, `${quoted(tooLong.text)} is too long for a name.`, `Shorten marks to ${LONGEST_MARK} and grid references to ${LONGEST_PLACE} characters.`);
  const date = [mark, grid].find((cell) => cell && looksLikeDate(cell.text));
  if (date) return say(date.source, `${quoted(date.text)} is a date, perhaps made from a reference such as 1-2.`, "Format the cell as text and write the reference again.");
  if (grid && isGridRun(grid.text)) return say(grid.source, `${quoted(grid.text)} is a run of grid references.`, "List them one by one, separated by commas.");
  const marks = mark && !isNil(mark.text) ? splitMarks(mark.text) : [];
  const grids = grid && !isNil(grid.text) ? splitList(grid.text) : [];
  if (marks.length === 0 && grids.length === 0) return say(raw.source, "This lift has neither a mark nor a grid reference.", "Write at least one of them.");
  if (grids.length === 0) return marks.map((name) => ({ mark: name, gridRef: name, locatedBy: "mark" as const }));
  if (marks.length > 1 && marks.length !== grids.length) {
    return say(raw.source, `${marks.length} marks stand beside ${grids.length} grid references.`, "Give each mark its own row, or as many grid references as marks.");
  }
  return grids.map((gridRef, index) => ({ mark: marks[index] ?? marks[0] ?? gridRef, gridRef, locatedBy: "grid" as const }));
}

type Storey = Pick<Lift, "fromLevel" | "toLevel" | "fromElevation_mm" | "toElevation_mm" | "storeyHeight_mm">;

function storeysOf(raw: RawLift, table: Table, levels: LevelTable, findings: Findings): Storey[] | null {
  const span = levels.spanOf(raw);
  const say = (message: string, remedy: string, source: Source = span?.source ?? raw.source) => {
    findings.problems.push({ source, message, remedy });
    return null;
  };
  if (!span) return say("This lift names no level.", "Add a level column, or from and to levels.");
  const trouble = nameTrouble(raw);
  if (trouble) return say(`${quoted(trouble.text)} cannot be the name of a level.`, `Use a name of at most ${LONGEST_PLACE} characters, formatted as text.`, trouble.source);
  const to = span.to ?? levels.above(span.from);
  if (to === null) return say(`No level above ${span.from} is named, so this lift has no top.`, `Add the level above as a row of its own, or write both ends, such as ${span.from}-RF.`);
  const names = levels.run(span.from, to);
  if (names.length < 2) return say(`${to} does not stand above ${span.from}.`, "Correct the from and to levels, or their elevations.");
  if (names.length > 2) warnOfRun(span, to, names, findings);
  const height = levels.heightOf(raw, table);
  const storeys = names.slice(1).map((upper, index) => storeyBetween(names[index] ?? "", upper, levels, names.length === 2 ? height : null));
  const wrong = storeys.find(({ storeyHeight_mm: tall }) => tall !== null && (tall < LEAST_STOREY_MM || tall > GREATEST_STOREY_MM));
  if (wrong) return say(`${wrong.fromLevel} to ${wrong.toLevel} is ${wrong.storeyHeight_mm} mm high, outside ${LEAST_STOREY_MM} to ${GREATEST_STOREY_MM} mm.`, "Check the elevations or the height, and their unit.");
  warnOfHeight(raw, storeys, height, findings);
  return storeys;
}

const nameTrouble = ({ cells }: RawLift): RawCell | null =>
  [cells.level, cells.fromLevel, cells.toLevel].find((cell) => cell && (cell.text.length > LONGEST_PLACE || looksLikeDate(cell.text) || isNil(cell.text))) ?? null;

function storeyBetween(fromLevel: string, toLevel: string, levels: LevelTable, height: number | null): Storey {
  const [low, high] = [levels.elevationOf(fromLevel), levels.elevationOf(toLevel)];
  const between = low !== null && high !== null ? Math.round((high - low) * 10) / 10 : null;
  return { fromLevel, toLevel, fromElevation_mm: low, toElevation_mm: high, storeyHeight_mm: between ?? height };
}

function warnOfRun(span: Span, to: string, names: readonly string[], findings: Findings): void {
  findings.warnings.push({
    source: span.source,
    message: `${span.from} to ${to} passes ${names.slice(1, -1).join(", ")}: read as ${names.length - 1} lifts.`,
    remedy: "Check these lifts in the preview.",
  });
}

function warnOfHeight(raw: RawLift, storeys: readonly Storey[], height: number | null, findings: Findings): void {
  const [only] = storeys;
  const cell = raw.cells.height;
  if (!cell || isNil(cell.text)) return;
  if (height === null) findings.problems.push({ source: cell.source, message: `${quoted(cell.text)} is not a height.`, remedy: "Write a number, with its unit if it is not the heading's." });
  else if (storeys.length === 1 && only && only.storeyHeight_mm !== null && Math.abs(only.storeyHeight_mm - height) > 1) {
    findings.warnings.push({ source: cell.source, message: `The height of ${height} mm is not the ${only.storeyHeight_mm} mm between ${only.fromLevel} and ${only.toLevel}; the levels are used.`, remedy: "Nothing to do if this is the clear height under the slab." });
  }
}

function noteOf(cell: RawCell | undefined, field: keyof typeof LONGEST_NOTE, findings: Findings): string | null {
  if (!cell || isNil(cell.text)) return null;
  const longest = LONGEST_NOTE[field];
  if (cell.text.length <= longest) return cell.text;
  findings.warnings.push({ source: cell.source, message: `The text is cut to ${longest} characters.`, remedy: "Shorten it in the file if the rest matters." });
  return cell.text.slice(0, longest);
}

/** One column cannot stand twice between the same levels: twins that agree are read once, others are refused. */
export function withoutTwins(lifts: readonly Lift[], findings: Findings): Lift[] {
  const seen = new Map<string, Lift>();
  for (const lift of lifts) {
    const key = `${placeKey(lift.gridRef)}\n${nameKey(lift.fromLevel)}`;
    const first = seen.get(key);
    if (!first) seen.set(key, lift);
    else tellTwins(first, lift, findings);
  }
  return [...seen.values()];
}

function tellTwins(first: Lift, twin: Lift, findings: Findings): void {
  const same = nameKey(first.mark) === nameKey(twin.mark) && first.shape === twin.shape && first.width_mm === twin.width_mm && first.depth_mm === twin.depth_mm && nameKey(first.toLevel) === nameKey(twin.toLevel);
  const where = `${twin.gridRef} from ${twin.fromLevel} stands in ${first.source.cell} already`;
  if (same) findings.warnings.push({ source: twin.source, message: `${where}, with the same size; read once.`, remedy: "Nothing to do." });
  else findings.problems.push({ source: twin.source, message: `${where}, with another mark, size or top.`, remedy: "Correct or remove one of the two." });
}
