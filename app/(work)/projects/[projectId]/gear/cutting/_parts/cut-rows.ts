import type { StagedCut } from "#lib/trade/planning/sheets/cut-stages.ts";

/** Cuts one after the other with the same setting of the fence. */
export type CutRow = { readonly first: number; readonly last: number; readonly what: string; readonly fenceMm: number };

/** Along the sheet's length is a rip; a trim only takes the rough edge off. */
export function cutRows(cuts: readonly StagedCut[]): CutRow[] {
  const rows: CutRow[] = [];
  for (const [index, cut] of cuts.entries()) {
    const what = cut.stage === 0 ? "Trim" : cut.dir === "across" ? "Rip" : "Cross-cut";
    const fenceMm = cut.at - (cut.dir === "down" ? cut.piece.x : cut.piece.y);
    const last = rows[rows.length - 1];
    if (last && last.what === what && last.fenceMm === fenceMm) rows[rows.length - 1] = { ...last, last: index + 1 };
    else rows.push({ first: index + 1, last: index + 1, what, fenceMm });
  }
  return rows;
}
