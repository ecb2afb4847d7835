import { countParts, keepOnly } from "./filling/piece.ts";
import { rasterFilling, rasterGrid } from "./filling/raster-filling.ts";

/** `most` null: as many as fit. */
export type ValuedPart = { readonly widthMm: number; readonly heightMm: number; readonly value: number; readonly most: number | null };
export type OneSheet = { readonly value: number; readonly bound: number; readonly copies: readonly number[] };

const FIRST_CUTS = 30;

/** The most valuable parts from one sheet, unturned, by guillotine cuts of any depth; `bound` is the exact value without limits on copies. */
export function fillOneSheet(widthMm: number, heightMm: number, kerfMm: number, parts: readonly ValuedPart[]): OneSheet {
  const [w, h] = [widthMm + kerfMm, heightMm + kerfMm];
  const shapes = parts.map((part, type) => ({ type, turned: false, w: part.widthMm + kerfMm, h: part.heightMm + kerfMm }));
  const limits = parts.map((part, type) => Math.min(part.most ?? Infinity, Math.floor((w * h) / ((shapes[type]?.w ?? w) * (shapes[type]?.h ?? h)))));
  const values = parts.map((part) => part.value);
  const grid = rasterGrid(shapes, limits, w, h);
  const tried = rasterFilling(grid, values, limits)(w, h).pieces(0, FIRST_CUTS).map((piece) => {
    const counts = countParts(keepOnly(piece, [...limits]));
    const copies = parts.map((_, type) => counts.get(type) ?? 0);
    return { copies, value: copies.reduce((sum, count, type) => sum + count * (values[type] ?? 0), 0) };
  });
  const best = tried.reduce((most, filling) => (filling.value > most.value ? filling : most), { value: 0, copies: parts.map(() => 0) });
  return { ...best, bound: rasterFilling(grid, values, null)(w, h).value };
}
