import type { Millimetres } from "#lib/kernel/units.ts";
import { boundsOf, laid, rect, roleOf } from "./face-geometry.ts";
import type { CleatRole, FaceElevation, Rect } from "./form-set.ts";
import type { PanelLayout } from "./panels.ts";
import type { ClampKind, FaceName, ShutterRule } from "./shutter-rule.ts";

/** From outside, the viewer's right is +x only before C and +y only before B. */
const turn = (face: FaceName): 1 | -1 => (face === "A" || face === "D" ? -1 : 1);

const upright = (face: FaceName, from: number, to: number, foot: number, height: number): Rect =>
  rect(turn(face) === 1 ? from : -to, foot, to - from, height);

function plyRects({ panel: { face }, ply, rows, strips }: PanelLayout): { rect: Rect }[] {
  const pieces: { rect: Rect }[] = [];
  let foot = 0;
  for (const row of rows) {
    let from = ply.from;
    for (const strip of strips) {
      pieces.push({ rect: upright(face, from, from + strip, foot, row) });
      from += strip;
    }
    foot += row;
  }
  return pieces;
}

function cleatRects(layout: PanelLayout, rule: ShutterRule): FaceElevation["cleats"] {
  const { breadth } = laid(rule.backing);
  const { centres, cleatRows, cleatLength, panel } = layout;
  const cleats: { role: CleatRole; rect: Rect }[] = [];
  for (const { role, at } of cleatRows)
    for (let bay = 0; bay < centres.length - 1; bay += 1) {
      const from = (centres[bay] ?? 0) + breadth / 2;
      cleats.push({ role, rect: upright(panel.face, from, from + cleatLength, at - breadth / 2, breadth) });
    }
  return cleats;
}

type Bars = FaceElevation["clamps"];

/** The clamp bars as every face shows them. */
export const clampBarsUp = (kind: ClampKind, heights: readonly Millimetres[]): Bars =>
  heights.map((at) => ({ height: at, rect: rect(-kind.barLength / 2, at - kind.barThickness / 2, kind.barLength, kind.barThickness) }));

/** One face from outside, drawn by the same panel that is cut. */
export function faceElevation(layout: PanelLayout, rule: ShutterRule, clamps: Bars, pourHeight: Millimetres): FaceElevation {
  const { face, height } = layout.panel;
  const { breadth } = laid(rule.backing);
  const ply = plyRects(layout);
  const timbers = layout.centres.map((centre, index) => ({
    role: roleOf(index, layout.centres.length),
    rect: upright(face, centre - breadth / 2, centre + breadth / 2, 0, height),
  }));
  return {
    face,
    ply: ply.map((piece) => piece.rect),
    timbers,
    cleats: cleatRects(layout, rule),
    clamps,
    concreteTop: pourHeight,
    bounds: boundsOf([...ply, ...timbers, ...clamps]),
  };
}
