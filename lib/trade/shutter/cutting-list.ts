import { inchFigure, sixteenths } from "#lib/kernel/inches.ts";
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

type Line = { readonly part: CuttingPart; readonly material: string; readonly length: Millimetres; readonly width: Millimetres; readonly thickness: Millimetres; readonly on: number[] };

function addPieces(lines: Line[], part: CuttingPart, material: string, count: number, length: number, width: number, thickness: Millimetres, face: number): void {
  const long = tenth(length);
  const wide = tenth(width);
  for (const line of lines) {
    if (line.part !== part || line.length !== long || line.width !== wide || line.thickness !== thickness) continue;
    line.on[face] = (line.on[face] ?? 0) + count;
    return;
  }
  const on = [0, 0, 0, 0];
  on[face] = count;
  lines.push({ part, material, length: long, width: wide, thickness, on });
}

function toCuttingLine({ part, material, length, width, thickness, on }: Line): CuttingLine {
  const faces: FaceName[] = [];
  const countOn: Partial<Record<FaceName, number>> = {};
  let count = 0;
  for (let face = 0; face < FACES.length; face += 1) {
    const name = FACES[face];
    const pieces = on[face] ?? 0;
    if (name === undefined || pieces === 0) continue;
    faces.push(name);
    countOn[name] = pieces;
    count += pieces;
  }
  return { part, material, count, length, width, thickness, faces, countOn };
}

/** A leg that is no whole millimetre was stated in inches. */
function filletName(leg: Millimetres): string {
  const [said, unit] = Number.isInteger(leg) ? [String(leg), "mm"] : [inchFigure(sixteenths(leg)), "in"];
  return `Fillet ${said} × ${said} ${unit}`;
}

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
    const face = FACES.indexOf(panel.face);
    for (const piece of panel.pieces) addPieces(lines, "ply", ply.label, 1, piece.height, piece.width, ply.thickness, face);
    addPieces(lines, "backing", backing.label, panel.timberCount, formHeight, backing.width, backing.depth, face);
    for (const { role } of cleatRows)
      addPieces(lines, role === "base" ? "base-cleat" : "joint-cleat", backing.label, panel.timberCount - 1, cleatLength, backing.width, backing.depth, face);
  }
  const leg = filletLeg(rule);
  if (leg !== null) lines.push({ part: "fillet", material: filletName(leg), length: tenth(formHeight), width: leg, thickness: leg, on: [1, 1, 1, 1] });
  return lines.map(toCuttingLine).sort((a, b) => ORDER.indexOf(a.part) - ORDER.indexOf(b.part) || b.length - a.length || b.width - a.width);
}

/** What is left of a cutting list when only these faces are made: a corner strip for each, the rest as the faces take it. */
export function forFaces(cutting: readonly CuttingLine[], faces: readonly FaceName[]): readonly CuttingLine[] {
  return cutting.flatMap((line) => {
    const count = faces.reduce((sum, face) => sum + (line.countOn[face] ?? 0), 0);
    return count === 0 ? [] : [{ ...line, count, faces: line.faces.filter((face) => faces.includes(face)) }];
  });
}
