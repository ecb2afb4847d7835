import { existsSync, readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { allowedDistance, publishedSources, type PublishedCase } from "#tests/support/figures/published-figures.ts";

// The list of worked cases gathered from public sources: which of them must be held, and how closely. Figures are kept in the tests, not here.
const LIST = resolve("../shared/references/check-cases.json");

const Tolerance = z.union([z.object({ abs: z.number() }), z.object({ rel: z.number() })]).nullable();
const List = z.object({
  cases: z.array(
    z.object({
      id: z.string(),
      role: z.enum(["assert", "contrast", "derived"]),
      expected: z.record(z.string(), z.object({ value: z.unknown() })),
      tolerance: z.object({ per_key: z.record(z.string(), Tolerance) }),
    }),
  ),
});
type Listed = z.infer<typeof List>["cases"][number];

const tests = readdirSync("tests/validation", { recursive: true, encoding: "utf8" }).filter((file) => /\.(test|figures)\.ts$/.test(file)).map((file) => readFileSync(resolve("tests/validation", file), "utf8"));
const named = (id: string): boolean => tests.some((text) => new RegExp(`${id}(?![0-9a-z])`).test(text));

const rowOf = (value: unknown): readonly number[] => z.union([z.number().transform((one) => [one]), z.array(z.number())]).catch([]).parse(value);

/** Where a figure of ours is another number than the listed one, or is held less closely. Listed words have no figure. */
function loosened(listed: Listed, figures: PublishedCase["figures"]): readonly string[] {
  return Object.entries(listed.expected).flatMap(([key, { value }]) => {
    const tolerance = listed.tolerance.per_key[key];
    const [ours, theirs] = [figures[key], rowOf(value)];
    if (theirs.length === 0 || tolerance === undefined || tolerance === null) return [];
    if (ours === undefined) return [`${key} is not held`];
    if (rowOf(ours.expected).join() !== theirs.join()) return [`${key} is ${String(ours.expected)}, listed ${theirs.join()}`];
    return theirs.every((one) => allowedDistance(one, ours.within) <= allowedDistance(one, tolerance) + 1e-12) ? [] : [`${key} is held less closely than listed`];
  });
}

if (!existsSync(LIST)) {
  it(`not run: ${LIST.replace(resolve(".."), "..")} absent`, () => expect(existsSync(LIST)).toBe(false));
} else {
  const { cases } = List.parse(JSON.parse(readFileSync(LIST, "utf8")));
  const held = new Map((await publishedSources()).flatMap((source) => source.cases.map((one) => [one.id, one.figures] as const)));

  describe("the list of worked cases", () => {
    it("every case that must agree has a test", () => expect(cases.filter(({ role, id }) => role === "assert" && !named(id)).map(({ id }) => id)).toEqual([]));
    it("every case that shows a contrast has a test that says why", () => expect(cases.filter(({ role, id }) => role === "contrast" && !named(id)).map(({ id }) => id)).toEqual([]));
    it("no figure differs from the listed one or is held less closely", () => {
      const loose = cases.flatMap((listed) => {
        const figures = held.get(listed.id);
        return figures === undefined || listed.role === "contrast" ? [] : loosened(listed, figures).map((why) => `${listed.id}: ${why}`);
      });
      expect(loose).toEqual([]);
    });
  });
}
