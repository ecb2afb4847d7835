import type { ClampLayoutTold } from "#lib/contracts/workings/clamp-layout.ts";

export type LayoutCheck = ClampLayoutTold["checks"][number];
export const ELEMENTS: Readonly<Record<LayoutCheck["element"], string>> = { backing: "Backing", clamp: "Clamp", arm: "Clamp arm", wedge: "Wedge" };
export const SIDES = { across: "faces A, C", along: "faces B, D" } as const;

export const worstOf = (checks: readonly LayoutCheck[]): LayoutCheck => checks.reduce((a, b) => (b.utilisation > a.utilisation ? b : a));

/** "backing in bending", "clamp on faces A, C". */
export function checkName({ element, what, side }: LayoutCheck): string {
  const name = ELEMENTS[element].toLowerCase();
  return side === null ? `${name} in ${what}` : `${name} on ${SIDES[side]}`;
}
