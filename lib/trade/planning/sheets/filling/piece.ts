/** A part one way round, grown by a kerf. */
export type Shape = { readonly type: number; readonly turned: boolean; readonly w: number; readonly h: number };


/** A sheet or what a cut makes of it, in lengths grown by one kerf: a part, a rest, or cut once more. */
export type Piece =
  | { readonly kind: "rest"; readonly w: number; readonly h: number }
  | { readonly kind: "part"; readonly w: number; readonly h: number; readonly shape: Shape }
  | { readonly kind: "cut"; readonly w: number; readonly h: number; readonly dir: "down" | "across"; readonly near: Piece; readonly far: Piece };

export const rest = (w: number, h: number): Piece => ({ kind: "rest", w, h });
export const partPiece = (shape: Shape): Piece => ({ kind: "part", w: shape.w, h: shape.h, shape });

/** Two pieces side by side (`down` between them) or one over the other; the shorter is filled up with rest. */
export function join(dir: "down" | "across", near: Piece, far: Piece): Piece {
  const [w, h] = dir === "down" ? [near.w + far.w, Math.max(near.h, far.h)] : [Math.max(near.w, far.w), near.h + far.h];
  return dir === "down" ? { kind: "cut", dir, w, h, near: within(near, near.w, h), far: within(far, far.w, h) } : { kind: "cut", dir, w, h, near: within(near, w, near.h), far: within(far, w, far.h) };
}

/** The piece in the corner of a larger one, cut so that the larger rest stays whole. */
export function within(piece: Piece, w: number, h: number): Piece {
  if (piece.w === w && piece.h === h) return piece;
  if (piece.kind === "rest") return rest(w, h);
  const [beside, above] = [w - piece.w, h - piece.h];
  if (beside === 0) return { kind: "cut", dir: "across", w, h, near: piece, far: rest(w, above) };
  if (above === 0) return { kind: "cut", dir: "down", w, h, near: piece, far: rest(beside, h) };
  return beside * h >= w * above
    ? { kind: "cut", dir: "down", w, h, near: within(piece, piece.w, h), far: rest(beside, h) }
    : { kind: "cut", dir: "across", w, h, near: within(piece, w, piece.h), far: rest(w, above) };
}

/** The piece in the corner of a larger one without a further change of direction: the rest beside is shared out among its strips. */
export function withinAlong(piece: Piece, w: number, h: number): Piece {
  return piece.kind === "cut" ? within(stretched(piece, piece.dir, piece.dir === "across" ? w : h), w, h) : within(piece, w, h);
}

function stretched(piece: Piece, dir: "down" | "across", to: number): Piece {
  const [w, h] = dir === "across" ? [to, piece.h] : [piece.w, to];
  return piece.kind === "cut" && piece.dir === dir ? { ...piece, w, h, near: stretched(piece.near, dir, to), far: stretched(piece.far, dir, to) } : within(piece, w, h);
}

/** In the corner of a larger piece with the larger rest whole, or, where that would turn the saw too often, along its own first cuts; null where both would. */
export function withinStages(piece: Piece, w: number, h: number, mostStages: number): Piece | null {
  return [within, withinAlong].map((put) => put(piece, w, h)).find((whole) => stagesOf(whole) <= mostStages) ?? null;
}

/** The same piece without the parts beyond `left`, which is counted down, and with rests that touch made one where a cut falls away. */
export function keepOnly(piece: Piece, left: number[]): Piece {
  if (piece.kind === "rest") return piece;
  if (piece.kind === "part") {
    const type = piece.shape.type;
    if ((left[type] ?? 0) <= 0) return rest(piece.w, piece.h);
    left[type] = (left[type] ?? 0) - 1;
    return piece;
  }
  const near = keepOnly(piece.near, left);
  const far = keepOnly(piece.far, left);
  return near.kind === "rest" && far.kind === "rest" ? rest(piece.w, piece.h) : { ...piece, near, far };
}

export function countParts(piece: Piece, counts = new Map<number, number>()): Map<number, number> {
  if (piece.kind === "part") counts.set(piece.shape.type, (counts.get(piece.shape.type) ?? 0) + 1);
  if (piece.kind === "cut") {
    countParts(piece.near, counts);
    countParts(piece.far, counts);
  }
  return counts;
}

/** How often the cuts change direction on the way to the part or rest furthest down, the first way counted. */
export function stagesOf(piece: Piece, before: "down" | "across" | null = null): number {
  if (piece.kind !== "cut") return 0;
  return (piece.dir === before ? 0 : 1) + Math.max(stagesOf(piece.near, piece.dir), stagesOf(piece.far, piece.dir));
}
