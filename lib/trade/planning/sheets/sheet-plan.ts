import type { Search } from "../patterns/dive.ts";
import { keepOnly, type Piece } from "./filling/piece.ts";
import type { Offcut, Place, PlacedPart, SheetCut, SheetLayout, SheetOrder, SheetPlan } from "./sheet-order.ts";
import type { SheetPattern, SheetProblem } from "./sheet-problem.ts";

type Waiting = { id: string; quantity: number }[][];
type Draft = { cuts: SheetCut[]; parts: PlacedPart[]; offcuts: Offcut[] };

/** From types to named parts at their places in millimetres, cut by cut; parts beyond the demand are not cut. Equal sheets are listed once. */
export function sheetPlan(order: SheetOrder, problem: SheetProblem, search: Search<SheetPattern>, areaBound: number): SheetPlan {
  const waiting: Waiting = problem.partsOf.map((parts) => parts.map((part) => ({ ...part })));
  const left = [...problem.demand];
  const layouts = new Map<string, SheetLayout>();
  for (const { pattern, copies } of [...search.chosen].sort((a, b) => a.pattern.stock - b.pattern.stock)) {
    for (let copy = 0; copy < copies; copy += 1) {
      const layout = layOut(order, problem, pattern.stock, keepOnly(pattern.piece, left), waiting);
      const key = JSON.stringify([layout.sheetId, layout.parts, layout.cuts]);
      layouts.set(key, { ...layout, count: (layouts.get(key)?.count ?? 0) + 1 });
    }
  }
  const all = [...layouts.values()];
  const bound = Math.min(search.bound, search.cost);
  const gap = search.cost > 0 ? (search.cost - bound) / search.cost : 0;
  return { layouts: all, cost: search.cost, bound, areaBound, gap, proven: gap < 1e-9, ...leftOver(order, all) };
}

function layOut(order: SheetOrder, problem: SheetProblem, stock: number, piece: Piece, waiting: Waiting): SheetLayout {
  const sheet = order.sheets.find((candidate) => candidate.id === problem.stock[stock]?.id);
  if (!sheet) throw new RangeError(`No sheet ${stock}`);
  const { widthMm: w, heightMm: h, trimMm: trim } = sheet;
  const draft: Draft = { cuts: trim > 0 ? trimCuts(order.kerfMm, w, h, trim) : [], parts: [], offcuts: [] };
  cutUp(order, piece, { x: trim, y: trim, w: w - 2 * trim, h: h - 2 * trim }, waiting, draft);
  return { sheetId: sheet.id, count: 1, ...draft };
}

/** The four rough edges. At the near ones the kerf lies within the trim; where it is wider, the saw overhangs the edge. */
function trimCuts(kerf: number, w: number, h: number, trim: number): SheetCut[] {
  return [
    { dir: "down", at: trim - kerf, piece: { x: 0, y: 0, w, h } },
    { dir: "down", at: w - trim, piece: { x: trim, y: 0, w: w - trim, h } },
    { dir: "across", at: trim - kerf, piece: { x: trim, y: 0, w: w - 2 * trim, h } },
    { dir: "across", at: h - trim, piece: { x: trim, y: trim, w: w - 2 * trim, h: h - trim } },
  ];
}

function cutUp(order: SheetOrder, piece: Piece, place: Place, waiting: Waiting, draft: Draft): void {
  const { x, y, w, h } = place;
  if (piece.kind === "rest") {
    if (w > 0 && h > 0) draft.offcuts.push({ ...place, kept: Math.max(w, h) >= order.keepFrom.longMm && Math.min(w, h) >= order.keepFrom.shortMm });
    return;
  }
  if (piece.kind === "part") {
    const part = waiting[piece.shape.type]?.find((candidate) => candidate.quantity > 0);
    if (!part) throw new RangeError("More parts on the sheets than asked for");
    part.quantity -= 1;
    draft.parts.push({ partId: part.id, x, y, w, h, turned: piece.shape.turned });
    return;
  }
  const kerf = order.kerfMm;
  if (piece.dir === "down") {
    const near = piece.near.w - kerf;
    draft.cuts.push({ dir: "down", at: x + near, piece: place });
    cutUp(order, piece.near, { x, y, w: near, h }, waiting, draft);
    cutUp(order, piece.far, { x: x + near + kerf, y, w: w - near - kerf, h }, waiting, draft);
    return;
  }
  const near = piece.near.h - kerf;
  draft.cuts.push({ dir: "across", at: y + near, piece: place });
  cutUp(order, piece.near, { x, y, w, h: near }, waiting, draft);
  cutUp(order, piece.far, { x, y: y + near + kerf, w, h: h - near - kerf }, waiting, draft);
}

function leftOver(order: SheetOrder, layouts: readonly SheetLayout[]): { wasteMm2: number; keptMm2: number } {
  let [sheets, parts, kept] = [0, 0, 0];
  for (const layout of layouts) {
    const sheet = order.sheets.find((candidate) => candidate.id === layout.sheetId);
    sheets += layout.count * (sheet ? sheet.widthMm * sheet.heightMm : 0);
    parts += layout.count * layout.parts.reduce((sum, part) => sum + part.w * part.h, 0);
    kept += layout.count * layout.offcuts.reduce((sum, offcut) => sum + (offcut.kept ? offcut.w * offcut.h : 0), 0);
  }
  return { wasteMm2: sheets - parts - kept, keptMm2: kept };
}
