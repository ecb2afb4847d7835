import type { FormSet } from "#lib/trade/shutter/form-set.ts";

/** How the four panels meet at the corners. */
export function jointWords({ joint, overPair }: Pick<FormSet, "joint" | "overPair">): string {
  switch (joint) {
    case "two-over":
      return overPair === "B-D" ? "two over two: B and D lap A and C" : "two over two: A and C lap B and D";
    case "pinwheel":
      return "pinwheel: each panel laps the next, clockwise";
    case "fillet-corner":
      return "fillet corners: panels meet on the corner strips";
    default:
      return joint satisfies never;
  }
}
