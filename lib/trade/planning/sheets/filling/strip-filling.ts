import { bestFilling } from "../../patterns/knapsack.ts";
import { join, partPiece, type Piece, within } from "./piece.ts";
import type { Shape } from "./piece.ts";

type Strip = { readonly height: number; readonly value: number; readonly piece: Piece };
export type StripFilling = { readonly value: number; readonly piece: Piece };

/**
 * A sheet ripped into strips, each cross-cut, and one more rip to size, with equal parts stacked in a strip where they go:
 * the cuts a site saw does easily. For each strip height the best filling of its length, then the best strips for the
 * width. Demand holds within a strip only; what goes beyond over the sheet is dropped by the caller.
 */
export function stripFilling(shapes: readonly Shape[], values: readonly number[], left: readonly number[], w: number, h: number): StripFilling | null {
  const open = shapes.filter((shape) => (left[shape.type] ?? 0) > 0 && (values[shape.type] ?? 0) > 0 && shape.w <= w && shape.h <= h);
  const heights = [...new Set(open.map((shape) => shape.h))].sort((a, b) => a - b);
  const strips = heights.flatMap((height) => bestStrip(open, values, left, w, height) ?? []);
  const items = strips.map((strip) => ({ size: strip.height, value: strip.value, most: Math.floor(h / strip.height) }));
  const best = bestFilling(items, h);
  if (!best) return null;
  const chosen = [...best.counts].flatMap(([index, copies]) => Array.from({ length: copies }, () => strips[index]));
  const widest = Math.max(...chosen.map((strip) => strip?.piece.w ?? 0));
  const piece = stacked("across", chosen.flatMap((strip) => (strip ? [within(strip.piece, widest, strip.height)] : [])));
  return piece ? { value: best.value, piece } : null;
}

/** The same with the first cuts the other way. */
export function uprightFilling(shapes: readonly Shape[], values: readonly number[], left: readonly number[], w: number, h: number): StripFilling | null {
  const lying = shapes.map((shape) => ({ ...shape, w: shape.h, h: shape.w }));
  const filling = stripFilling(lying, values, left, h, w);
  return filling && { value: filling.value, piece: stoodUp(filling.piece) };
}

function bestStrip(shapes: readonly Shape[], values: readonly number[], left: readonly number[], w: number, height: number): Strip | null {
  const stacks = shapes.filter((shape) => shape.h <= height).map((shape) => ({ shape, copies: Math.min(left[shape.type] ?? 0, Math.floor(height / shape.h)) }));
  const items = stacks.map(({ shape, copies }) => ({ size: shape.w, value: copies * (values[shape.type] ?? 0), most: Math.min(Math.floor(w / shape.w), Math.floor((left[shape.type] ?? 0) / copies)) }));
  const best = bestFilling(items, w);
  if (!best) return null;
  const columns = [...best.counts].flatMap(([index, count]) => {
    const stack = stacks[index];
    const piece = stack && stacked("across", Array.from({ length: stack.copies }, () => partPiece(stack.shape)));
    return piece ? Array.from({ length: count }, () => within(piece, piece.w, height)) : [];
  });
  const piece = stacked("down", columns);
  return piece && { height, value: best.value, piece };
}

function stacked(dir: "down" | "across", pieces: readonly Piece[]): Piece | null {
  return pieces.reduceRight<Piece | null>((far, near) => (far ? join(dir, near, far) : near), null);
}

export function stoodUp(piece: Piece): Piece {
  const [w, h] = [piece.h, piece.w];
  if (piece.kind === "rest") return { ...piece, w, h };
  if (piece.kind === "part") return { ...piece, w, h, shape: { ...piece.shape, w: piece.shape.h, h: piece.shape.w } };
  return { ...piece, w, h, dir: piece.dir === "down" ? "across" : "down", near: stoodUp(piece.near), far: stoodUp(piece.far) };
}
