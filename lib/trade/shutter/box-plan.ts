import { boundsOf, filletLeg, isAcross, laid, outsideBacking, rect, roleOf } from "./face-geometry.ts";
import type { Interval, Side } from "./face-geometry.ts";
import type { Corner, PlanGeometry, Rect } from "./form-set.ts";
import type { PanelLayout } from "./panels.ts";
import { FACES } from "./shutter-rule.ts";
import type { ClampKind, FaceName, ShutterRule } from "./shutter-rule.ts";

/** A strip along a face, `off` away from the concrete and `thick` thick. */
function alongFace(section: Side, face: FaceName, along: Interval, off: number, thick: number): Rect {
  const length = along.to - along.from;
  switch (face) {
    case "A": return rect(along.from, section.depth / 2 + off, length, thick);
    case "C": return rect(along.from, -section.depth / 2 - off - thick, length, thick);
    case "B": return rect(section.width / 2 + off, along.from, thick, length);
    case "D": return rect(-section.width / 2 - off - thick, along.from, thick, length);
  }
}

const CORNERS: readonly { corner: Corner; x: 1 | -1; y: 1 | -1 }[] = [
  { corner: "AB", x: 1, y: 1 },
  { corner: "BC", x: 1, y: -1 },
  { corner: "CD", x: -1, y: -1 },
  { corner: "DA", x: -1, y: 1 },
];

function fillets(section: Side, leg: number | null): PlanGeometry["fillets"] {
  if (leg === null) return [];
  return CORNERS.map(({ corner, x, y }) => {
    const cx = (x * section.width) / 2;
    const cy = (y * section.depth) / 2;
    return { corner, rect: rect(Math.min(cx, cx - x * leg), Math.min(cy, cy - y * leg), leg, leg), points: [[cx, cy], [cx - x * leg, cy], [cx, cy - y * leg]] };
  });
}

export function boxPlan(section: Side, rule: ShutterRule, layouts: readonly PanelLayout[], kind: ClampKind): PlanGeometry {
  const t = rule.ply.thickness;
  const { breadth, depth } = laid(rule.backing);
  const ply = layouts.map((layout) => ({ face: layout.panel.face, rect: alongFace(section, layout.panel.face, layout.ply, 0, t) }));
  const timbers: PlanGeometry["timbers"][number][] = [];
  for (const { panel: { face }, centres } of layouts)
    centres.forEach((centre, index) => timbers.push({ face, role: roleOf(index, centres.length), rect: alongFace(section, face, { from: centre - breadth / 2, to: centre + breadth / 2 }, t, depth) }));
  const bar = { from: -kind.barLength / 2, to: kind.barLength / 2 };
  const clampBars = FACES.map((face) => ({ face, over: isAcross(face), rect: alongFace(section, face, bar, t + depth, kind.barDepth) }));
  const outside = outsideBacking(section, rule);
  return {
    concrete: rect(-section.width / 2, -section.depth / 2, section.width, section.depth),
    ply,
    timbers,
    fillets: fillets(section, filletLeg(rule)),
    clampBars,
    outsideBacking: rect(-outside.width / 2, -outside.depth / 2, outside.width, outside.depth),
    bounds: boundsOf([...ply, ...timbers, ...clampBars]),
  };
}
