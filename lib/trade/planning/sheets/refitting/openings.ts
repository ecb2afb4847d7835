import type { Shape } from "../filling/piece.ts";
import { type Branch, leaf, measure, other, row } from "./branch.ts";

/** Room for a part, `w` by `h` of it, beside or over `at`. `way` from the root down to `at`, which is measured anew along it. */
export type Opening = { readonly w: number; readonly h: number; readonly at: Branch; readonly dir: "down" | "across"; readonly way: readonly Branch[] };

/** Every room on a sheet of `w` by `h`: along a row, what the row leaves; beside a member of it, what the member leaves, for both rows may move up. */
export function openings(root: Branch, w: number, h: number): Opening[] {
  const found: Opening[] = [];
  look(root, w, h, [], found);
  if (root.shape || root.dir === "across") addOpening(found, w - root.w, h, root, "down", []);
  if (root.shape || root.dir === "down") addOpening(found, w, h - root.h, root, "across", []);
  return found;
}

function look(branch: Branch, w: number, h: number, way: readonly Branch[], found: Opening[]): void {
  if (branch.shape) return;
  const isDown = branch.dir === "down";
  const [freeW, freeH] = [w - branch.w, h - branch.h];
  addOpening(found, isDown ? freeW : w, isDown ? h : freeH, branch, branch.dir, way);
  const further = [...way, branch];
  for (const member of branch.members) {
    const [itsW, itsH] = isDown ? [member.w + freeW, h] : [w, member.h + freeH];
    if (member.shape) addOpening(found, isDown ? itsW : w - member.w, isDown ? h - member.h : itsH, member, other(branch.dir), further);
    else look(member, itsW, itsH, further, found);
  }
}

function addOpening(found: Opening[], w: number, h: number, at: Branch, dir: "down" | "across", way: readonly Branch[]): void {
  if (w > 0 && h > 0) found.push({ w, h, at, dir, way });
}

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
