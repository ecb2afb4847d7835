import type { Millimetres } from "#lib/kernel/units.ts";
import { boundsOf, laid, rect, roleOf } from "./box-plan.ts";
import type { FaceElevation, Rect } from "./form-set.ts";
import type { PanelLayout } from "./panels.ts";
import type { ClampKind, FaceName, ShutterRule } from "./shutter-rule.ts";

/** From outside, the viewer's right is +x only before C and +y only before B. */
const turn = (face: FaceName): 1 | -1 => (face === "A" || face === "D" ? -1 : 1);

const upright = (face: FaceName, from: number, to: number, foot: number, height: number): Rect =>
  rect(turn(face) === 1 ? from : -to, foot, to - from, height);

function plyRects(layout: PanelLayout): Rect[] {
  const rects: Rect[] = [];
  let foot = 0;
  for (const row of layout.rows) {
    let from = layout.ply.from;
    for (const strip of layout.strips) {
      rects.push(upright(layout.panel.face, from, from + strip, foot, row));
      from += strip;
    }
    foot += row;
  }
  return rects;
}

function cleatRects(layout: PanelLayout, rule: ShutterRule): FaceElevation["cleats"] {
  const { breadth } = laid(rule.backing);
  const bays = layout.centres.slice(1).map((centre, index) => ({ from: (layout.centres[index] ?? 0) + breadth / 2, to: centre - breadth / 2 }));
  return layout.cleatRows.flatMap(({ role, at }) => bays.map((bay) => ({ role, rect: upright(layout.panel.face, bay.from, bay.to, at - breadth / 2, breadth) })));
}

/** One face from outside, drawn by the same panel that is cut. */
export function faceElevation(layout: PanelLayout, rule: ShutterRule, kind: ClampKind, heights: readonly Millimetres[], pourHeight: Millimetres): FaceElevation {
  const { face, height } = layout.panel;
  const { breadth } = laid(rule.backing);
  const ply = plyRects(layout);
  const timbers = layout.centres.map((centre, index) => ({
    role: roleOf(index, layout.centres.length),
    rect: upright(face, centre - breadth / 2, centre + breadth / 2, 0, height),
  }));
  const clamps = heights.map((at) => ({ height: at, rect: rect(-kind.barLength / 2, at - kind.barThickness / 2, kind.barLength, kind.barThickness) }));
  return {
    face,
    ply,
    timbers,
    cleats: cleatRects(layout, rule),
    clamps,
    concreteTop: pourHeight,
    bounds: boundsOf([...ply, ...timbers.map((timber) => timber.rect), ...clamps.map((clamp) => clamp.rect)]),
  };
}
