import type { Shape } from "../filling/piece.ts";
import { type Branch, depthOf, leaf, measure, other, row } from "./branch.ts";

/**
 * Room for a part, `w` by `h` of it, beside or over `at`. `way` from the root down to `at`, which is measured anew along it.
 * `isLast`: the saw may not turn once more, so the part must be as high as `at` is, the row taken lying.
 */
export type Opening = { readonly w: number; readonly h: number; readonly at: Branch; readonly dir: "down" | "across"; readonly way: readonly Branch[]; readonly isLast: boolean };

/**
 * Every room on a sheet of `w` by `h`: along a row, what the row leaves; beside a member of it, what the member leaves, for
 * both rows may move up. None where the saw would have to turn more than `mostStages` times.
 */
export function openings(root: Branch, w: number, h: number, mostStages: number): Opening[] {
  const found: Opening[] = [];
  const add = (opening: Omit<Opening, "isLast">): void => {
    const stage = opening.way.length + 1;
    if (opening.w > 0 && opening.h > 0 && stage <= mostStages) found.push({ ...opening, isLast: stage === mostStages });
  };
  look(root, w, h, [], add);
  if (root.shape || depthOf(root) + 1 < mostStages) {
    if (root.shape || root.dir === "across") add({ w: w - root.w, h, at: root, dir: "down", way: [] });
    if (root.shape || root.dir === "down") add({ w, h: h - root.h, at: root, dir: "across", way: [] });
  }
  return found;
}

function look(branch: Branch, w: number, h: number, way: readonly Branch[], add: (opening: Omit<Opening, "isLast">) => void): void {
  if (branch.shape) return;
  const isDown = branch.dir === "down";
  const [freeW, freeH] = [w - branch.w, h - branch.h];
  add({ w: isDown ? freeW : w, h: isDown ? h : freeH, at: branch, dir: branch.dir, way });
  const further = [...way, branch];
  for (const member of branch.members) {
    const [itsW, itsH] = isDown ? [member.w + freeW, h] : [w, member.h + freeH];
    if (member.shape) add({ w: isDown ? itsW : w - member.w, h: isDown ? h - member.h : itsH, at: member, dir: other(branch.dir), way: further });
    else look(member, itsW, itsH, further, add);
  }
}

export const fits = ({ w, h, at, dir, isLast }: Opening, shape: Shape): boolean =>
  w >= shape.w && h >= shape.h && (!isLast || (dir === "down" ? shape.h === at.h : shape.w === at.w));

/** Puts the part there and gives the root as it is then. */
export function fill(root: Branch, { at, dir, way }: Opening, shape: Shape): Branch {
  const part = leaf(shape);
  if (!at.shape && at.dir === dir) {
    at.members.push(part);
    measure(at);
    remeasure(way);
    return root;
  }
  const both = row(dir, [at, part]);
  const above = way[way.length - 1];
  if (!above) return both;
  above.members[above.members.indexOf(at)] = both;
  remeasure(way);
  return root;
}

function remeasure(way: readonly Branch[]): void {
  for (let index = way.length - 1; index >= 0; index -= 1) {
    const branch = way[index];
    if (branch) measure(branch);
  }
}
