import { expect, it } from "vitest";
import { askedOnce, NOTHING_COUNTED } from "#app/(work)/projects/[projectId]/gear/count/kept-count.ts";

// Own rule, no source: one count, one id, however often it is sent.
it("gives figures sent again the id they were sent under, and other figures another", () => {
  const lines = [{ itemId: "wedge", counted: 37 }];
  const first = askedOnce(NOTHING_COUNTED, lines, 1_900_000_000_000, new Uint8Array(10).fill(1));
  const kept = { lines: { wedge: 37 }, asked: first };
  expect(askedOnce(kept, lines, 1_900_000_060_000, new Uint8Array(10).fill(2))).toEqual(first);
  expect(askedOnce(kept, [{ itemId: "wedge", counted: 38 }], 1_900_000_060_000, new Uint8Array(10).fill(2)).countId).not.toBe(first.countId);
});
