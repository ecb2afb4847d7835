import type { FacePanel } from "./set-fit.ts";

/** A face of a coming column spoken for: by a panel, by what comes off a face of an earlier column, or by a new one. */
export type Reserved = {
  readonly id: string; readonly columnId: string; readonly face: string; readonly widthMm: number; readonly heightMm: number;
  readonly source: "panel" | "after" | "new"; readonly itemId: string | null;
  readonly afterColumnId: string | null; readonly afterFace: string | null; readonly cutDown: boolean;
};
export type ReservedPanel = {
  readonly itemId: string; readonly name: string; readonly widthMm: number; readonly heightMm: number;
  /** On site where a crew takes it from, in the company's yard, on a column, or in none of these. */
  readonly where: "site" | "yard" | "column" | "gone";
  /** The column it stands on or was brought to. */
  readonly columnId: string | null;
  /** Why it serves no more: "scrapped: film worn". */
  readonly outOfUse: string | null;
  /** The panel it was cut from, and whether that one is whole again. */
  readonly cutFrom: { readonly itemId: string; readonly isWhole: boolean } | null;
};
export type ReservedColumn = {
  readonly id: string; readonly isRemoved: boolean; readonly isStood: boolean; readonly isStripped: boolean;
  /** Panels of the set assigned to it, by face. */
  readonly setItems: Readonly<Record<string, string>> | null;
};
export type Ending = { readonly id: string; readonly as: "served" | "unused" | "fallen"; readonly reason: string | null };
export type Binding = { readonly id: string; readonly itemId: string };

/** On site, or brought to the column it is for. */
const isHere = (line: Reserved, { where, columnId }: Pick<ReservedPanel, "where" | "columnId">): boolean => where === "site" || (where === "column" && columnId === line.columnId);

/** It lies there, but is larger than its face asks for. */
export const waitsForSaw = (line: Reserved, panel: Pick<ReservedPanel, "widthMm" | "heightMm">): boolean =>
  line.cutDown && (Math.floor(panel.widthMm) > line.widthMm || Math.floor(panel.heightMm) > line.heightMm);

/** What is cut for it: never larger than the panel is, where that lies a hair under the whole millimetre asked for. */
export const pieceFor = (line: Pick<Reserved, "widthMm" | "heightMm">, panel: Pick<ReservedPanel, "widthMm" | "heightMm">): { readonly widthMm: number; readonly heightMm: number } =>
  ({ widthMm: Math.min(line.widthMm, panel.widthMm), heightMm: Math.min(line.heightMm, panel.heightMm) });

type Known = { readonly column: (id: string) => ReservedColumn | undefined; readonly panel: (id: string) => ReservedPanel | undefined; readonly cameOff: (columnId: string, face: string) => string | null };

/** What a line comes to as things stand; null where it goes on as it is. */
export function outcomeOf(line: Reserved, { column, panel, cameOff }: Known): { readonly ending: Ending } | { readonly binding: Binding } | null {
  const own = column(line.columnId);
  const end = (as: Ending["as"], reason: string | null) => ({ ending: { id: line.id, as, reason } });
  if (!own || own.isRemoved) return end("unused", "The column was taken out of the schedule");
  if (own.isStood) return own.setItems !== null && line.itemId !== null && own.setItems[line.face] === line.itemId ? end("served", null) : end("unused", "The column was stood without it");
  if (line.itemId !== null) {
    const bound = panel(line.itemId);
    if (!bound) return end("fallen", "The panel is not in the ledger");
    // The cut that made it was taken back, so the panel it came from is meant again.
    if (bound.where === "gone" && bound.cutFrom?.isWhole) return { binding: { id: line.id, itemId: bound.cutFrom.itemId } };
    if (bound.outOfUse !== null) return end("fallen", `${bound.name} ${bound.outOfUse}`);
    return bound.where === "gone" ? end("fallen", `${bound.name} is not at hand any more`) : null;
  }
  if (line.afterColumnId === null || line.afterFace === null) return null;
  const earlier = column(line.afterColumnId);
  if (!earlier || earlier.isRemoved) return end("fallen", "The column it was to come off was taken out of the schedule");
  if (!earlier.isStood) return null;
  const itemId = cameOff(line.afterColumnId, line.afterFace);
  if (itemId !== null) return { binding: { id: line.id, itemId } };
  return earlier.isStripped ? end("fallen", "No panel of the ledger came off the earlier column") : null;
}

/** What closes a column: every face has its panel on site, cut to size. Null where one is still missing. */
export function setAtHand(lines: readonly Reserved[], panel: Known["panel"]): readonly FaceItem[] | null {
  const set = lines.flatMap((line) => {
    const bound = line.itemId === null ? undefined : panel(line.itemId);
    return bound && isHere(line, bound) && bound.outOfUse === null && !waitsForSaw(line, bound) ? [{ face: line.face, itemId: bound.itemId, widthMm: bound.widthMm, heightMm: bound.heightMm }] : [];
  });
  return set.length === FACES_OF_A_SET && set.length === lines.length ? set : null;
}
type FaceItem = FacePanel & { readonly itemId: string };
const FACES_OF_A_SET = 4;

/** Where a face spoken for stands with its panel: to be made, still to come off a column, to be brought from the yard, to be cut down, or here. */
export type Standing = "make" | "comes-off" | "bring" | "cut-down" | "here";

export function standingOf(line: Reserved, panel: Pick<ReservedPanel, "widthMm" | "heightMm" | "where" | "columnId"> | undefined): Standing {
  if (!panel) return line.source === "new" ? "make" : "comes-off";
  if (panel.where === "column" && !isHere(line, panel)) return "comes-off";
  if (panel.where === "yard") return "bring";
  return waitsForSaw(line, panel) ? "cut-down" : "here";
}
