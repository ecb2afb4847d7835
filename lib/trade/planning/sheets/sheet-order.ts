import { brokenRule, invalid, ok, type Problem, type Result } from "#lib/kernel/result.ts";

/** A sheet that can be had: new (quantity null: as many as needed) or an offcut on the rack. `trimMm` comes off all four edges first. */
export type Sheet = { readonly id: string; readonly widthMm: number; readonly heightMm: number; readonly trimMm: number; readonly quantity: number | null; readonly cost: number };
/** The face grain of sheets and parts runs along the width; a part that may not turn keeps it. */
export type SheetPart = { readonly id: string; readonly widthMm: number; readonly heightMm: number; readonly quantity: number; readonly mayTurn: boolean };

/**
 * Saw cuts run from edge to edge of the piece cut and lose one kerf. What is left of at least `keepFrom`, either way round, goes back to the rack.
 * `mostStages`: how often the cuts may change direction on the way to a part, the first way counted and trimming not: rip,
 * cross-cut and one more rip are three. Null: as often as it pays.
 */
export type SheetOrder = {
  readonly kerfMm: number;
  readonly mostStages: number | null;
  readonly sheets: readonly Sheet[];
  readonly parts: readonly SheetPart[];
  readonly keepFrom: { readonly longMm: number; readonly shortMm: number };
};

export type Place = { readonly x: number; readonly y: number; readonly w: number; readonly h: number };
/** In cutting order. `down` cuts parallel to the sheet's height at x = `at`, `across` parallel to its width at y = `at`; the kerf lies beyond `at`. `piece` is what lies on the saw. */
export type SheetCut = { readonly dir: "down" | "across"; readonly at: number; readonly piece: Place };
export type PlacedPart = Place & { readonly partId: string; readonly turned: boolean };
export type Offcut = Place & { readonly kept: boolean };
/** `count` equal sheets cut the same way. */
export type SheetLayout = { readonly sheetId: string; readonly count: number; readonly cuts: readonly SheetCut[]; readonly parts: readonly PlacedPart[]; readonly offcuts: readonly Offcut[] };

/** `bound`: no plan can cost less, `areaBound` by area alone. `proven` when this plan is at the bound; `gap` is (cost - bound) / cost. */
export type SheetPlan = {
  readonly layouts: readonly SheetLayout[];
  readonly cost: number;
  readonly bound: number;
  readonly areaBound: number;
  readonly gap: number;
  readonly proven: boolean;
  /** Of the sheet area used, what is neither part nor kept. */
  readonly wasteMm2: number;
  readonly keptMm2: number;
};

/** What strips need: ripped, cross-cut, and ripped to size once more. */
const LEAST_STAGES = 3;

export function checkSheetOrder(order: SheetOrder): Result<SheetOrder> {
  const problems: Problem[] = [];
  const need = (field: string, value: number, least: number) => {
    if (!Number.isSafeInteger(value) || value < least) problems.push({ field, message: `Must be a whole number of at least ${least}.` });
  };
  const rows = <Row extends { readonly id: string; readonly widthMm: number; readonly heightMm: number; readonly quantity: number | null }>(list: string, all: readonly Row[]) =>
    all.forEach((row, index) => {
      need(`${list}.${index}.widthMm`, row.widthMm, 1);
      need(`${list}.${index}.heightMm`, row.heightMm, 1);
      need(`${list}.${index}.quantity`, row.quantity ?? 0, 0);
      if (all.findIndex((other) => other.id === row.id) !== index) problems.push({ field: `${list}.${index}.id`, message: `"${row.id}" is there twice.` });
    });
  rows("sheets", order.sheets);
  rows("parts", order.parts);
  order.sheets.forEach((sheet, index) => { need(`sheets.${index}.trimMm`, sheet.trimMm, 0); need(`sheets.${index}.cost`, sheet.cost, 0); });
  need("kerfMm", order.kerfMm, 0);
  need("mostStages", order.mostStages ?? LEAST_STAGES, LEAST_STAGES);
  if (problems.length > 0) return invalid(...problems);
  const tooLarge = order.parts.find((part) => part.quantity > 0 && !order.sheets.some((sheet) => sheet.quantity !== 0 && covers(sheet, part)));
  return tooLarge ? brokenRule("part-larger-than-sheet", { part: tooLarge.id, widthMm: tooLarge.widthMm, heightMm: tooLarge.heightMm }) : ok(order);
}

function covers(sheet: Sheet, part: SheetPart): boolean {
  const [width, height] = [sheet.widthMm - 2 * sheet.trimMm, sheet.heightMm - 2 * sheet.trimMm];
  return (part.widthMm <= width && part.heightMm <= height) || (part.mayTurn && part.heightMm <= width && part.widthMm <= height);
}
