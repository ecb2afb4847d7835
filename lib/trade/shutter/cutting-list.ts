import type { Millimetres } from "#lib/kernel/units.ts";
import { mm } from "#lib/kernel/units.ts";
import { filletLeg } from "./face-geometry.ts";
import type { CuttingLine, CuttingPart } from "./form-set.ts";
import type { PanelLayout } from "./panels.ts";
import { FACES } from "./shutter-rule.ts";
import type { FaceName, ShutterRule } from "./shutter-rule.ts";

const ORDER: readonly CuttingPart[] = ["ply", "backing", "fillet", "base-cleat", "joint-cleat"];

/** Sizes are cut to a tenth of a millimetre at best; finer differences are the same piece. */
const tenth = (value: number): Millimetres => mm(Math.round(value * 10) / 10);

type Line = { -readonly [Key in keyof CuttingLine]: CuttingLine[Key] };

function addPieces(lines: Line[], part: CuttingPart, material: string, count: number, length: number, width: number, thickness: Millimetres, face: FaceName): void {
  const long = tenth(length);
  const wide = tenth(width);
  for (const line of lines) {
    if (line.part !== part || line.length !== long || line.width !== wide || line.thickness !== thickness) continue;
    line.count += count;
    line.countOn = { ...line.countOn, [face]: (line.countOn[face] ?? 0) + count };
    if (!line.faces.includes(face)) line.faces = [...line.faces, face];
    return;
  }
  lines.push({ part, material, count, length: long, width: wide, thickness, faces: [face], countOn: { [face]: count } });
}

const filletName = (leg: Millimetres): string => `Fillet ${leg} × ${leg} mm`;

/** What its timbers are called, as a cutting list names them; no fillet where the arris stays sharp. */
export function timberNames(rule: ShutterRule): { readonly backing: string; readonly fillet: string | null } {
  const leg = filletLeg(rule);
  return { backing: rule.backing.label, fillet: leg === null ? null : filletName(leg) };
}

/** All pieces of a form set, identical ones counted together: ply first, the longest and widest of each part first. */
export function cuttingList(layouts: readonly PanelLayout[], rule: ShutterRule, formHeight: Millimetres): readonly CuttingLine[] {
  const { ply, backing } = rule;
  const lines: Line[] = [];
  for (const { panel, cleatRows, cleatLength } of layouts) {
    for (const piece of panel.pieces) addPieces(lines, "ply", ply.label, 1, piece.height, piece.width, ply.thickness, panel.face);
    addPieces(lines, "backing", backing.label, panel.timberCount, formHeight, backing.width, backing.depth, panel.face);
    for (const { role } of cleatRows)
      addPieces(lines, role === "base" ? "base-cleat" : "joint-cleat", backing.label, panel.timberCount - 1, cleatLength, backing.width, backing.depth, panel.face);
  }
  const leg = filletLeg(rule);
  if (leg !== null) lines.push({ part: "fillet", material: filletName(leg), count: 4, length: tenth(formHeight), width: leg, thickness: leg, faces: FACES, countOn: { A: 1, B: 1, C: 1, D: 1 } });
  return lines.sort((a, b) => ORDER.indexOf(a.part) - ORDER.indexOf(b.part) || b.length - a.length || b.width - a.width);
}

/** What is left of a cutting list when only these faces are made: a corner strip for each, the rest as the faces take it. */
export function forFaces(cutting: readonly CuttingLine[], faces: readonly FaceName[]): readonly CuttingLine[] {
  return cutting.flatMap((line) => {
    const count = faces.reduce((sum, face) => sum + (line.countOn[face] ?? 0), 0);
    return count === 0 ? [] : [{ ...line, count, faces: line.faces.filter((face) => faces.includes(face)) }];
  });
}
