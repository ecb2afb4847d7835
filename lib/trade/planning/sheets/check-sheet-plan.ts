import { cutsByStage } from "./cut-stages.ts";
import type { Place, PlacedPart, Sheet, SheetCut, SheetLayout, SheetOrder, SheetPart, SheetPlan } from "./sheet-order.ts";

/** A rule a plan breaks, with where and the numbers. */
export type Breach = { readonly rule: string; readonly where: string; readonly value: number; readonly limit: number };

/**
 * Holds any sheet plan against the order, whoever made it, by sawing it: every cut goes edge to edge through a piece that is
 * there and loses a kerf; what lies there in the end must be the parts and offcuts listed, and rough edges only.
 */
export function checkSheetPlan(order: SheetOrder, plan: SheetPlan): Breach[] {
  const countOf = (id: string) => plan.layouts.reduce((sum, layout) => sum + layout.count * layout.parts.filter((part) => part.partId === id).length, 0);
  const usedOf = (id: string) => plan.layouts.reduce((sum, layout) => sum + (layout.sheetId === id ? layout.count : 0), 0);
  const cost = order.sheets.reduce((sum, sheet) => sum + sheet.cost * usedOf(sheet.id), 0);
  return [
    ...plan.layouts.flatMap((layout, index) => checkLayout(order, layout, `layouts.${index}`)),
    ...order.parts.flatMap((part) => differs("parts-cut", part.id, countOf(part.id), part.quantity)),
    ...order.sheets.flatMap((sheet) => above("sheets-used", sheet.id, usedOf(sheet.id), sheet.quantity ?? Infinity)),
    ...differs("cost", "plan", plan.cost, cost),
    ...above("bound", "plan", plan.bound, plan.cost),
  ];
}

function checkLayout(order: SheetOrder, layout: SheetLayout, where: string): Breach[] {
  const sheet = order.sheets.find((candidate) => candidate.id === layout.sheetId);
  if (!sheet) return [{ rule: "known-sheet", where, value: 0, limit: 1 }];
  const whole = { x: 0, y: 0, w: sheet.widthMm, h: sheet.heightMm };
  const { pieces, breaches } = saw(whole, layout.cuts, order.kerfMm, where);
  const listed: readonly Place[] = [...layout.parts, ...layout.offcuts];
  const rough = pieces.filter((piece) => !listed.some((place) => samePlace(place, piece)) && !withinTrim(sheet, piece));
  return [
    ...breaches,
    ...above("stages", where, Math.max(0, ...cutsByStage(sheet, layout).map(({ stage }) => stage)), order.mostStages ?? Infinity),
    ...listed.flatMap((place, index) => differs("sawn-out", `${where}.${index}`, pieces.filter((piece) => samePlace(place, piece)).length, 1)),
    ...differs("left-unlisted", where, rough.length, 0),
    ...differs("listed-once", where, new Set(listed.map(({ x, y }) => `${x},${y}`)).size, listed.length),
    ...layout.parts.flatMap((part) => checkPart(order.parts, part, where)),
    ...listed.filter((place) => place.x < sheet.trimMm || place.y < sheet.trimMm || place.x + place.w > whole.w - sheet.trimMm || place.y + place.h > whole.h - sheet.trimMm)
      .map(() => ({ rule: "trimmed", where, value: 0, limit: sheet.trimMm })),
  ];
}

function saw(whole: Place, cuts: readonly SheetCut[], kerf: number, where: string): { pieces: Place[]; breaches: Breach[] } {
  let pieces: Place[] = [whole];
  const breaches: Breach[] = [];
  for (const [index, { dir, at, piece }] of cuts.entries()) {
    if (!pieces.some((there) => samePlace(there, piece))) breaches.push({ rule: "piece-there", where: `${where}.cuts.${index}`, value: 0, limit: 1 });
    const { x, y, w, h } = piece;
    const halves = dir === "down"
      ? [{ x, y, w: at - x, h }, { x: at + kerf, y, w: x + w - at - kerf, h }]
      : [{ x, y, w, h: at - y }, { x, y: at + kerf, w, h: y + h - at - kerf }];
    pieces = [...pieces.filter((there) => !samePlace(there, piece)), ...halves.filter((half) => half.w > 0 && half.h > 0)];
  }
  return { pieces, breaches };
}

function checkPart(parts: readonly SheetPart[], placed: PlacedPart, where: string): Breach[] {
  const part = parts.find((candidate) => candidate.id === placed.partId);
  if (!part) return [{ rule: "known-part", where: placed.partId, value: 0, limit: 1 }];
  const [w, h] = placed.turned ? [part.heightMm, part.widthMm] : [part.widthMm, part.heightMm];
  return [
    ...differs("part-width", `${where}.${part.id}`, placed.w, w),
    ...differs("part-height", `${where}.${part.id}`, placed.h, h),
    ...(placed.turned && !part.mayTurn ? [{ rule: "grain", where: part.id, value: 1, limit: 0 }] : []),
  ];
}

const samePlace = (a: Place, b: Place): boolean => a.x === b.x && a.y === b.y && a.w === b.w && a.h === b.h;
const withinTrim = (sheet: Sheet, { x, y, w, h }: Place): boolean =>
  x + w <= sheet.trimMm || y + h <= sheet.trimMm || x >= sheet.widthMm - sheet.trimMm || y >= sheet.heightMm - sheet.trimMm;
const above = (rule: string, where: string, value: number, limit: number): Breach[] => (value > limit ? [{ rule, where, value, limit }] : []);
const differs = (rule: string, where: string, value: number, limit: number): Breach[] => (Math.abs(value - limit) > 1e-6 ? [{ rule, where, value, limit }] : []);
