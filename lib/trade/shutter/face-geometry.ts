import type { Millimetres } from "#lib/kernel/units.ts";
import { mm } from "#lib/kernel/units.ts";
import type { Rect, TimberRole } from "./form-set.ts";
import type { BackingTimber, FaceName, ShutterRule } from "./shutter-rule.ts";

export type Side = { readonly width: Millimetres; readonly depth: Millimetres };
/** Along the face's own axis on plan: x for A and C, y for B and D, from the column's centre. */
export type Interval = { readonly from: number; readonly to: number };

export const rect = (x: number, y: number, w: number, h: number): Rect => ({ x, y, w, h }) as Rect;
export const isAcross = (face: FaceName): boolean => face === "A" || face === "C";
export const sideOf = (section: Side, face: FaceName): Millimetres => (isAcross(face) ? section.width : section.depth);

/** Breadth along the ply and depth away from it, as the timber is laid. */
export const laid = (backing: BackingTimber): { breadth: Millimetres; depth: Millimetres } =>
  backing.orientation === "flat" ? { breadth: backing.width, depth: backing.depth } : { breadth: backing.depth, depth: backing.width };

/**
 * How far a panel's ply reaches. Two-over: the over pair laps both neighbours. Pinwheel: each laps the next one clockwise.
 * Fillet corner: as the pinwheel, each panel moved round by one ply thickness, so that the corner strip closes the gap it leaves.
 */
export function plyInterval(section: Side, rule: ShutterRule, face: FaceName): Interval {
  const half = sideOf(section, face) / 2;
  const t = rule.ply.thickness;
  if (rule.joint === "two-over") {
    const lap = isAcross(face) === (rule.overPair === "A-C") ? t : 0;
    return { from: -half - lap, to: half + lap };
  }
  const gap = rule.joint === "fillet-corner" ? t : 0;
  // Clockwise is towards +x on A and −y on B.
  return face === "A" || face === "D" ? { from: -half + gap, to: half + t } : { from: -half - t, to: half - gap };
}

/** Centres of the backing timbers of one face: two at the edges, the rest evenly between. */
export function timberCentres(ply: Interval, rule: ShutterRule, count: number): readonly number[] {
  const { breadth } = laid(rule.backing);
  const first = ply.from - rule.edgeProud + breadth / 2;
  const last = ply.to + rule.edgeProud - breadth / 2;
  const centres: number[] = [];
  for (let index = 0; index < count; index += 1) centres.push(first + ((last - first) * index) / (count - 1));
  return centres;
}

export const filletLeg = (rule: ShutterRule): Millimetres | null => (rule.joint === "fillet-corner" ? rule.ply.thickness : rule.filletLeg);

export const roleOf = (index: number, count: number): TimberRole => (index === 0 || index === count - 1 ? "edge" : "middle");

export function outsideBacking(section: Side, rule: ShutterRule): Side {
  const more = 2 * (rule.ply.thickness + laid(rule.backing).depth);
  return { width: mm(section.width + more), depth: mm(section.depth + more) };
}

export function boundsOf(parts: readonly { readonly rect: Rect }[]): Rect {
  let [left, foot, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { rect: r } of parts) {
    left = Math.min(left, r.x);
    foot = Math.min(foot, r.y);
    right = Math.max(right, r.x + r.w);
    top = Math.max(top, r.y + r.h);
  }
  return rect(left, foot, right - left, top - foot);
}
