import type { Millimetres } from "#lib/kernel/units.ts";
import { kg, mm } from "#lib/kernel/units.ts";
import { laid, plyInterval, sideOf, timberCentres } from "./face-geometry.ts";
import type { Interval, Side } from "./face-geometry.ts";
import type { CleatRole, Panel } from "./form-set.ts";
import type { FaceName, ShutterRule } from "./shutter-rule.ts";

/** No ply piece is cut lower than this, and joints of neighbouring faces stay this far apart where the sheet allows. */
const SHORTEST_PIECE = 300;
/** Between timbers closer than this there is no room for a cleat. */
const SHORTEST_CLEAT = 40;

/** One panel with what its drawing and its cutting list both need. */
export type PanelLayout = {
  readonly panel: Panel;
  readonly ply: Interval;
  readonly centres: readonly number[];
  /** Widths of the ply strips, in the direction of the plan axis; more than one where the panel is wider than a sheet. */
  readonly strips: readonly number[];
  /** Heights of the ply pieces, from the foot. */
  readonly rows: readonly number[];
  /** Rows of cleats, one between each two timbers, by the height of their middle. */
  readonly cleatRows: readonly { readonly role: CleatRole; readonly at: number }[];
  /** Clear width between timbers, which a cleat fills. */
  readonly cleatLength: number;
};

function fromFullSheets(height: number, sheet: number): number[] {
  const rows: number[] = [];
  let rest = height;
  while (rest > sheet) {
    const short = rest - sheet;
    rows.push(short < SHORTEST_PIECE ? rest - SHORTEST_PIECE : sheet);
    rest -= rows[rows.length - 1] ?? rest;
  }
  return [...rows, rest];
}

function jointsOf(rows: readonly number[]): number[] {
  const joints: number[] = [];
  let top = 0;
  for (let index = 0; index < rows.length - 1; index += 1) {
    top += rows[index] ?? 0;
    joints.push(top);
  }
  return joints;
}

function apart(a: readonly number[], b: readonly number[]): number {
  const others = jointsOf(b);
  let least = Infinity;
  for (const one of jointsOf(a)) for (const other of others) least = Math.min(least, Math.abs(one - other));
  return least;
}

/** Heights of the ply pieces from the foot: full sheets first on A and C; on B and D turned over, or begun with half a sheet where turning leaves the joints level. */
export function plyRows(height: Millimetres, sheet: Millimetres): { readonly across: readonly number[]; readonly along: readonly number[] } {
  const plain = fromFullSheets(height, sheet);
  return { across: plain, along: plain.length === 1 ? plain : broken(plain, height, sheet) };
}

/** Rows whose joints stand clear of those of the plain ones. */
function broken(plain: readonly number[], height: Millimetres, sheet: Millimetres): readonly number[] {
  const turned = [...plain].reverse();
  if (apart(plain, turned) >= SHORTEST_PIECE) return turned;
  const half = Math.round(sheet / 2);
  const begun = [half, ...fromFullSheets(height - half, sheet)];
  return apart(plain, begun) > apart(plain, turned) ? begun : turned;
}

/** Upright ply joints lie on timbers, each strip as wide as a sheet allows. */
function plyStrips(ply: Interval, centres: readonly number[], sheetWidth: number): readonly number[] {
  if (ply.to - ply.from <= sheetWidth) return [ply.to - ply.from];
  const strips: number[] = [];
  let from = ply.from;
  while (ply.to - from > sheetWidth) {
    const joint = centres.slice(1, -1).filter((centre) => centre > from && centre - from <= sheetWidth).pop() ?? from + sheetWidth;
    strips.push(joint - from);
    from = joint;
  }
  return [...strips, ply.to - from];
}

export function layOutPanel(section: Side, rule: ShutterRule, formHeight: Millimetres, face: FaceName, timberCount: number, rows: readonly number[]): PanelLayout {
  const ply = plyInterval(section, rule, face);
  const centres = timberCentres(ply, rule, timberCount);
  const strips = plyStrips(ply, centres, rule.ply.sheetWidth);
  const pitch = (centres[1] ?? 0) - (centres[0] ?? 0);
  const cleatLength = pitch - laid(rule.backing).breadth;
  const width = ply.to - ply.from;
  const cleatRows = cleatLength < SHORTEST_CLEAT ? [] : cleatRowsOf(rule, rows);
  const timberLength = timberCount * formHeight + (timberCount - 1) * cleatRows.length * cleatLength;
  const weight = (width * formHeight * rule.ply.thickness * rule.ply.density + timberLength * rule.backing.width * rule.backing.depth * rule.backing.density) / 1e9;
  return {
    panel: {
      face,
      width: mm(width),
      height: formHeight,
      side: sideOf(section, face),
      pieces: piecesOf(rows, strips),
      timberCount,
      timberCentres: mm(pitch),
      weight: kg(weight),
    },
    ply,
    centres,
    strips,
    rows,
    cleatRows,
    cleatLength,
  };
}

function piecesOf(rows: readonly number[], strips: readonly number[]): Panel["pieces"] {
  const pieces: Panel["pieces"][number][] = [];
  for (const height of rows) for (const strip of strips) pieces.push({ width: mm(strip), height: mm(height) });
  return pieces;
}

function cleatRowsOf(rule: ShutterRule, rows: readonly number[]): PanelLayout["cleatRows"] {
  const base = rule.baseCleats ? [{ role: "base" as const, at: laid(rule.backing).breadth / 2 }] : [];
  const joints = rule.jointCleats ? jointsOf(rows).map((at) => ({ role: "joint" as const, at })) : [];
  return [...base, ...joints];
}
