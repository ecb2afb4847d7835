import "server-only";
import { TIMBER_USES, type CuttingRule, type TimberUse } from "#lib/contracts/planning/cutting.ts";
import type { CuttingLine } from "#lib/trade/shutter/form-set.ts";
import type { SheetOrder } from "#lib/trade/planning/sheets/sheet-order.ts";
import type { TimberOrder } from "#lib/trade/planning/timber/timber-order.ts";
import { wholeLength, wholeWidth } from "#lib/trade/planning/whole-sizes.ts";
import type { RackOffcut, RackOffcuts, SheetOffcut } from "./cut/rack-offcuts.ts";
import type { SetGroup } from "./set-groups.ts";

/** What is written on a piece, and its size as it is cut. */
export type CutPiece = { readonly marks: string; readonly part: CuttingLine["part"]; readonly faces: string; readonly lengthMm: number; readonly widthMm: number };
type Part = { readonly id: string; readonly quantity: number; readonly piece: CutPiece };

export type CuttingOrders = {
  readonly sheets: SheetOrder;
  readonly timbers: readonly { readonly use: TimberUse; readonly material: string; readonly order: TimberOrder }[];
  readonly pieces: Readonly<Record<string, CutPiece>>;
};

/** Ripped, cross-cut and ripped once more: what a saw bench does without losing its way. */
const STAGES = 3;
const USE_OF: Readonly<Record<Exclude<CuttingLine["part"], "ply">, TimberUse>> = { "backing": "backing", "base-cleat": "backing", "joint-cleat": "backing", "fillet": "fillet" };

export function cuttingOrders(groups: readonly (SetGroup & { readonly sets: number })[], rule: CuttingRule, offcuts: RackOffcuts): CuttingOrders {
  const lines = groups.flatMap((group) => group.cutting.map((line, index) => ({ line, part: asPart(group, line, index) })));
  const ply = lines.filter(({ line }) => line.part === "ply").map(({ part }) => part);
  const timbers = TIMBER_USES.flatMap((use) => {
    const own = lines.filter(({ line }) => line.part !== "ply" && USE_OF[line.part] === use);
    const [first] = own;
    const parts = own.map(({ part }) => part).flatMap((part) => (use === "fillet" ? jointed(part, longestOf(rule, use)) : [part]));
    return first ? [{ use, material: first.line.material, parts, order: timberOrder(rule, use, parts, offcuts.timbers[use]) }] : [];
  });
  const pieces = [...ply, ...timbers.flatMap(({ parts }) => parts)].map((part) => [part.id, part.piece] as const);
  return { sheets: sheetOrder(rule, ply, offcuts.sheets), timbers: timbers.map(({ use, material, order }) => ({ use, material, order })), pieces: Object.fromEntries(pieces) };
}

const longestOf = (rule: CuttingRule, use: TimberUse): number =>
  Math.max(0, ...rule.timbers.filter((timber) => timber.use === use).map((timber) => timber.lengthMm - rule.endTrimMm));

/** A fillet carries nothing, so a longer one is made up from full lengths and a rest, butted (common practice, no source). A backing timber never is. */
function jointed(part: Part, longest: number): Part[] {
  const { lengthMm } = part.piece;
  const full = longest > 0 ? Math.floor(lengthMm / longest) : 0;
  if (full === 0 || lengthMm === longest) return [part];
  const rest = lengthMm - full * longest;
  return [
    { id: `${part.id} full`, quantity: part.quantity * full, piece: { ...part.piece, lengthMm: longest } },
    ...(rest > 0 ? [{ id: `${part.id} rest`, quantity: part.quantity, piece: { ...part.piece, lengthMm: rest } }] : []),
  ];
}

function asPart({ size, marks, sets }: SetGroup & { readonly sets: number }, line: CuttingLine, index: number): Part {
  const piece = { marks: marks.join("/"), part: line.part, faces: line.faces.join(""), lengthMm: line.length, widthMm: line.width };
  return { id: `${size} ${index}`, quantity: line.count * sets, piece };
}

/** Offcuts of the ledger are paid for, so they cost nothing more and go first. Trimmed they were before. */
const sheetOrder = (rule: CuttingRule, parts: readonly Part[], offcuts: readonly SheetOffcut[]): SheetOrder => ({
  kerfMm: rule.kerfMm,
  mostStages: STAGES,
  keepFrom: { longMm: rule.keepLongMm, shortMm: rule.keepShortMm },
  sheets: [
    ...rule.sheets.map(({ lengthMm, widthMm, price, onHand }, index) => ({ id: `s${index}`, widthMm: lengthMm, heightMm: widthMm, trimMm: rule.trimMm, quantity: onHand, cost: price })),
    ...offcuts.map(({ itemId, lengthMm, widthMm, quantity }) => ({ id: `o${itemId}`, widthMm: lengthMm, heightMm: widthMm, trimMm: 0, quantity, cost: 0 })),
  ],
  parts: parts.map(({ id, quantity, piece }) => ({ id, quantity, widthMm: wholeLength(piece.lengthMm), heightMm: wholeWidth(piece.widthMm), mayTurn: rule.mayTurn })),
});

const timberOrder = (rule: CuttingRule, use: TimberUse, parts: readonly Part[], offcuts: readonly RackOffcut[]): TimberOrder => ({
  kerfMm: rule.kerfMm,
  endTrimMm: rule.endTrimMm,
  keepFromMm: rule.keepTimberMm,
  stock: [
    ...rule.timbers.flatMap(({ lengthMm, price, onHand, ...row }, index) => (row.use === use ? [{ id: `t${index}`, lengthMm, quantity: onHand, cost: price }] : [])),
    ...offcuts.map(({ itemId, lengthMm, quantity }) => ({ id: `o${itemId}`, lengthMm, quantity, cost: 0, isTrimmed: true })),
  ],
  parts: parts.map(({ id, quantity, piece }) => ({ id, quantity, lengthMm: wholeLength(piece.lengthMm) })),
});
