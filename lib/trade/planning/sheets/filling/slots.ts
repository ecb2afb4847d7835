import { type Piece, rest } from "./piece.ts";
import type { Shape } from "./piece.ts";

/** A piece being filled: open, a part, or cut in two. */
export type Slot = { readonly w: number; readonly h: number; filled: null | Shape | { readonly dir: "down" | "across"; readonly near: Slot; readonly far: Slot } };

export const openSlot = (w: number, h: number): Slot => ({ w, h, filled: null });

/** The part into the corner; what is left beside and above becomes one or two open slots, the larger left whole. */
export function fillSlot(slot: Slot, shape: Shape): Slot[] {
  const [beside, above] = [slot.w - shape.w, slot.h - shape.h];
  if (beside === 0 && above === 0) {
    slot.filled = shape;
    return [];
  }
  const downFirst = above === 0 || (beside > 0 && beside * slot.h >= slot.w * above);
  const near = downFirst ? openSlot(shape.w, slot.h) : openSlot(slot.w, shape.h);
  const far = downFirst ? openSlot(beside, slot.h) : openSlot(slot.w, above);
  slot.filled = { dir: downFirst ? "down" : "across", near, far };
  return [...fillSlot(near, shape), far];
}

export function slotFrom(piece: Piece): Slot {
  if (piece.kind === "rest") return openSlot(piece.w, piece.h);
  if (piece.kind === "part") return { w: piece.w, h: piece.h, filled: piece.shape };
  return { w: piece.w, h: piece.h, filled: { dir: piece.dir, near: slotFrom(piece.near), far: slotFrom(piece.far) } };
}

export function pieceFrom(slot: Slot): Piece {
  const { w, h, filled } = slot;
  if (!filled) return rest(w, h);
  if ("type" in filled) return { kind: "part", w, h, shape: filled };
  return { kind: "cut", w, h, dir: filled.dir, near: pieceFrom(filled.near), far: pieceFrom(filled.far) };
}

export function openSlots(slot: Slot): Slot[] {
  if (!slot.filled) return [slot];
  return "type" in slot.filled ? [] : [...openSlots(slot.filled.near), ...openSlots(slot.filled.far)];
}

export type Tightness = (slot: Slot, shape: Shape) => number;
export const shortestSideLeft: Tightness = (slot, shape) => Math.min(slot.w - shape.w, slot.h - shape.h);
export const leastAreaLeft: Tightness = (slot, shape) => slot.w * slot.h - shape.w * shape.h;

/** The tightest open slot for any of the shapes, put to use; null when none is large enough. */
export function placeTightest(slots: Slot[], shapes: readonly Shape[], tightness: Tightness): Slot[] | null {
  let best: { index: number; shape: Shape; left: number } | null = null;
  for (const [index, slot] of slots.entries()) {
    for (const shape of shapes) {
      if (shape.w > slot.w || shape.h > slot.h) continue;
      const left = tightness(slot, shape);
      if (!best || left < best.left) best = { index, shape, left };
    }
  }
  const slot = best && slots[best.index];
  if (!best || !slot) return null;
  return [...slots.slice(0, best.index), ...fillSlot(slot, best.shape), ...slots.slice(best.index + 1)];
}

/** Fills the rests of a piece with parts, in the order of the types given, as many as are left of each. */
export function fillRests(piece: Piece, types: readonly (readonly Shape[])[], left: number[]): Piece {
  const root = slotFrom(piece);
  let slots = openSlots(root);
  for (const shapes of types) {
    const type = shapes[0]?.type ?? -1;
    while ((left[type] ?? 0) > 0) {
      const next = placeTightest(slots, shapes, shortestSideLeft);
      if (!next) break;
      slots = next;
      left[type] = (left[type] ?? 0) - 1;
    }
  }
  return pieceFrom(root);
}
