import type { Millimetres } from "#lib/kernel/units.ts";
import { mm } from "#lib/kernel/units.ts";
import { filletLeg } from "./box-plan.ts";
import type { CuttingLine, CuttingPart } from "./form-set.ts";
import type { PanelLayout } from "./panels.ts";
import { FACES } from "./shutter-rule.ts";
import type { FaceName, ShutterRule } from "./shutter-rule.ts";

const ORDER: readonly CuttingPart[] = ["ply", "backing", "fillet", "base-cleat", "joint-cleat"];
type Piece = Omit<CuttingLine, "faces" | "count"> & { readonly count: number; readonly face: FaceName | null };

function piecesOf(layout: PanelLayout, rule: ShutterRule): Piece[] {
  const { face, height, timberCount } = layout.panel;
  const { ply, backing } = rule;
  const timber = { material: backing.label, width: backing.width, thickness: backing.depth, face };
  const pieces: Piece[] = layout.panel.pieces.map((piece) => ({ part: "ply", material: ply.label, count: 1, length: piece.height, width: piece.width, thickness: ply.thickness, face }));
  pieces.push({ part: "backing", ...timber, count: timberCount, length: height });
  for (const { role } of layout.cleatRows)
    pieces.push({ part: role === "base" ? "base-cleat" : "joint-cleat", ...timber, count: timberCount - 1, length: mm(layout.cleatLength) });
  return pieces;
}

/** Sizes are cut to a tenth of a millimetre at best; finer differences are the same piece. */
const tenth = (value: Millimetres): Millimetres => mm(Math.round(value * 10) / 10);

/** All pieces of a form set, identical ones counted together: ply first, the longest and widest of each part first. */
export function cuttingList(layouts: readonly PanelLayout[], rule: ShutterRule, formHeight: Millimetres): readonly CuttingLine[] {
  const leg = filletLeg(rule);
  const pieces = layouts.flatMap((layout) => piecesOf(layout, rule));
  if (leg !== null) pieces.push({ part: "fillet", material: `Fillet ${leg} × ${leg} mm`, count: 4, length: formHeight, width: leg, thickness: leg, face: null });
  const lines = new Map<string, CuttingLine>();
  for (const piece of pieces) {
    const { face, ...line } = piece;
    const sized = { ...line, length: tenth(line.length), width: tenth(line.width) };
    const key = `${sized.part} ${sized.length} ${sized.width} ${sized.thickness}`;
    const known = lines.get(key);
    const faces = known?.faces ?? [];
    const more = face === null ? FACES : faces.includes(face) ? faces : [...faces, face];
    lines.set(key, { ...sized, count: sized.count + (known?.count ?? 0), faces: more });
  }
  return [...lines.values()].sort((a, b) => ORDER.indexOf(a.part) - ORDER.indexOf(b.part) || b.length - a.length || b.width - a.width);
}
