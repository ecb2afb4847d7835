import { describe, expect, it } from "vitest";
import { deviationsOf, publishedSources } from "#tests/support/figures/published-figures.ts";

const sources = await publishedSources();

describe.each(sources)("$source ($topic)", ({ source, topic, cases }) => {
  it.each(cases.map((one) => [one.id, one.what, one.at, one] as const))("[%s] %s (%s)", (_id, _what, _at, one) => {
    const deviations = deviationsOf(source, topic, one);
    expect(deviations.length).toBeGreaterThan(0);
    expect(deviations.filter(({ agrees }) => !agrees)).toEqual([]);
  });
});

it("no case stands twice", () => {
  const ids = sources.flatMap(({ cases }) => cases.map(({ id }) => id));
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});
