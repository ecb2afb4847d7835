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
  look(root, w, h, [], mostStages, found);
  if (root.shape || depthOf(root) + 1 < mostStages) {
    if (root.shape || root.dir === "across") add(found, mostStages, w - root.w, h, root, "down", []);
    if (root.shape || root.dir === "down") add(found, mostStages, w, h - root.h, root, "across", []);
  }
  return found;
}

function look(branch: Branch, w: number, h: number, way: readonly Branch[], mostStages: number, found: Opening[]): void {
  if (branch.shape) return;
  const isDown = branch.dir === "down";
  const [freeW, freeH] = [w - branch.w, h - branch.h];
  add(found, mostStages, isDown ? freeW : w, isDown ? h : freeH, branch, branch.dir, way);
  const further = [...way, branch];
  for (const member of branch.members) {
    const itsW = isDown ? member.w + freeW : w;
    const itsH = isDown ? h : member.h + freeH;
    if (member.shape) add(found, mostStages, isDown ? itsW : w - member.w, isDown ? h - member.h : itsH, member, other(branch.dir), further);
    else look(member, itsW, itsH, further, mostStages, found);
  }
}

function add(found: Opening[], mostStages: number, w: number, h: number, at: Branch, dir: "down" | "across", way: readonly Branch[]): void {
  const stage = way.length + 1;
  if (w > 0 && h > 0 && stage <= mostStages) found.push({ w, h, at, dir, way, isLast: stage === mostStages });
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
