import type { Place, Sheet, SheetCut, SheetLayout } from "./sheet-order.ts";

/** A cut with its turn at the saw: 0 trims the edges, then 1, 2, 3 as the direction changes on the way down to the piece cut. */
export type StagedCut = SheetCut & { readonly stage: number };

/** The cuts in the order of a saw bench: the whole sheet trimmed, then ripped, then the strips cross-cut, and so on down; each piece is there when its turn comes. */
export function cutsByStage(sheet: Sheet, layout: Pick<SheetLayout, "cuts">): StagedCut[] {
  const staged = layout.cuts.map((cut) => ({ ...cut, stage: stageOf(sheet, layout.cuts, cut) }));
  return staged.map((cut, index) => ({ cut, index })).sort((a, b) => a.cut.stage - b.cut.stage || a.index - b.index).map(({ cut }) => cut);
}

/** The direction of the cuts from the whole sheet down to this one, and how often it changes. */
function stageOf(sheet: Sheet, cuts: readonly SheetCut[], cut: SheetCut): number {
  if (isTrim(sheet, cut)) return 0;
  const before = cuts.filter((other) => other !== cut && !isTrim(sheet, other) && holds(other.piece, cut.piece)).sort((a, b) => area(b.piece) - area(a.piece));
  const way = [...before, cut].map(({ dir }) => dir);
  return way.filter((dir, index) => dir !== way[index - 1]).length;
}

const isTrim = ({ widthMm, heightMm, trimMm }: Sheet, { piece: { x, y, w, h } }: SheetCut): boolean =>
  x < trimMm || y < trimMm || x + w > widthMm - trimMm || y + h > heightMm - trimMm;
const holds = (outer: Place, inner: Place): boolean =>
  inner.x >= outer.x && inner.y >= outer.y && inner.x + inner.w <= outer.x + outer.w && inner.y + inner.h <= outer.y + outer.h;
const area = ({ w, h }: Place): number => w * h;
