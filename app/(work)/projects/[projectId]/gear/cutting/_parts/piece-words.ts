import type { CuttingPlan } from "#lib/server/cutting/plan-cutting.ts";

export type Pieces = CuttingPlan["task"]["orders"]["pieces"];
export type CutPiece = Pieces[string];

const PART_WORDS = { "ply": "", "backing": "backing", "base-cleat": "base cleat", "joint-cleat": "joint cleat", "fillet": "fillet" } as const;

/** What is written on the piece: column mark, what it is, and the faces it may go to. */
export const pieceLabel = ({ marks, part, faces }: CutPiece): string =>
  [marks, PART_WORDS[part], part === "fillet" ? "" : faces.split("").join("·")].filter((word) => word !== "").join(" ");

export const labelOfPart = (pieces: Pieces) => (partId: string): string => {
  const piece = pieces[partId];
  return piece ? pieceLabel(piece) : partId;
};
