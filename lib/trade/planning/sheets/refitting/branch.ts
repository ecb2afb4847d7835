import type { RandomNumbers } from "#lib/kernel/random-numbers.ts";
import { join, partPiece, type Piece, type Shape, within } from "../filling/piece.ts";

/**
 * How a sheet is cut, without places: a part, or two and more side by side (`down` between them) or one over the other,
 * never the same way again directly inside. Width and height are what it needs; so rests are wherever there is room.
 */
export type Branch = { shape: Shape | null; dir: "down" | "across"; members: Branch[]; w: number; h: number };

const WHOLE_ROW = 0.4;

export const leaf = (shape: Shape): Branch => ({ shape, dir: "down", members: [], w: shape.w, h: shape.h });

export function row(dir: "down" | "across", members: Branch[]): Branch {
  const branch: Branch = { shape: null, dir, members, w: 0, h: 0 };
  measure(branch);
  return branch;
}

export const other = (dir: "down" | "across"): "down" | "across" => (dir === "down" ? "across" : "down");

export function copied(branch: Branch): Branch {
  const { shape, dir, members, w, h } = branch;
  return { shape, dir, members: members.length > 0 ? members.map(copied) : [], w, h };
}

export function measure(branch: Branch): void {
  if (branch.shape) return;
  let [along, beside] = [0, 0];
  const isDown = branch.dir === "down";
  for (const member of branch.members) {
    along += isDown ? member.w : member.h;
    beside = Math.max(beside, isDown ? member.h : member.w);
  }
  branch.w = isDown ? along : beside;
  branch.h = isDown ? beside : along;
}

/** Without a branch of it; null when nothing is left. What is left alone in its row moves up. */
export function without(branch: Branch, gone: Branch): Branch | null {
  if (branch === gone) return null;
  if (branch.shape) return branch;
  const members: Branch[] = [];
  for (const member of branch.members) {
    const kept = without(member, gone);
    if (!kept) continue;
    if (!kept.shape && kept.dir === branch.dir) members.push(...kept.members);
    else members.push(kept);
  }
  if (members.length <= 1) return members[0] ?? null;
  branch.members = members;
  measure(branch);
  return branch;
}

export function parts(branch: Branch, into: Branch[] = []): Branch[] {
  if (branch.shape) into.push(branch);
  for (const member of branch.members) parts(member, into);
  return into;
}

/** Each member cut to the height of its row, so that no cut of a row turns the saw again. */
export function pieceOf(branch: Branch): Piece {
  if (branch.shape) return partPiece(branch.shape);
  const { dir, w, h } = branch;
  const members = branch.members.map((member) => (dir === "down" ? within(pieceOf(member), member.w, h) : within(pieceOf(member), w, member.h)));
  return members.reduceRight((far, near) => join(dir, near, far));
}

/** How many rows lie in one another. */
export const depthOf = (branch: Branch): number => (branch.shape ? 0 : 1 + Math.max(...branch.members.map(depthOf)));

/** A part, or by chance one of the rows on the way to it. */
export function randomBranch(root: Branch, random: RandomNumbers): Branch {
  let branch = root;
  while (!branch.shape) {
    branch = branch.members[Math.floor(random() * branch.members.length)] ?? branch;
    if (random() < WHOLE_ROW) break;
  }
  return branch;
}
