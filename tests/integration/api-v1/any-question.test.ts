import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { CALCULATORS } from "#app/api/v1/_parts/calculators.ts";
import { aCompany } from "#tests/support/builders/a-company.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask, aToken, published, refusalOf } from "./asked.ts";

ownDatabase();
let token: string;

type Path = readonly (string | number)[];
type Node = Record<string | number, unknown>;
type Change = readonly [Path, unknown];
const isNode = (value: unknown): value is Node => value !== null && typeof value === "object";

const pathsOf = (value: unknown, path: Path = []): readonly Path[] =>
  isNode(value) ? Object.entries(value).flatMap(([key, part]) => [[...path, key], ...pathsOf(part, [...path, key])]) : [];

const LEFT_OUT = Symbol("left out");
function changed(example: unknown, [path, to]: Change): unknown {
  const copy = structuredClone(example);
  const parent = path.slice(0, -1).reduce<unknown>((node, key) => (isNode(node) ? node[key] : undefined), copy);
  const last = path.at(-1);
  if (!isNode(parent) || last === undefined) return copy;
  if (to === LEFT_OUT) delete parent[last];
  else parent[last] = to;
  return copy;
}

const at = (example: unknown, path: Path): unknown => path.reduce<unknown>((node, key) => (isNode(node) ? node[key] : undefined), example);

/** Another number at a place that has one, near enough to be worked out as a rule. */
const near = (example: unknown): fc.Arbitrary<Change> =>
  fc.tuple(fc.constantFrom(...pathsOf(example).filter((path) => typeof at(example, path) === "number")), fc.double({ min: 0.3, max: 3, noNaN: true })).map(([path, factor]) => [path, Number(at(example, path)) * factor]);

const numbers = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }), fc.constantFrom(0, -0, 5e-324, 1e308, 1e-9));
const wild = (example: unknown): fc.Arbitrary<Change> => fc.tuple(fc.constantFrom(...pathsOf(example)), fc.oneof({ weight: 4, arbitrary: numbers }, { weight: 1, arbitrary: fc.jsonValue() }, { weight: 1, arbitrary: fc.constant(LEFT_OUT) }));

const questions = (example: unknown): fc.Arbitrary<unknown> =>
  fc.array(fc.oneof({ weight: 3, arbitrary: near(example) }, { weight: 1, arbitrary: wild(example) }), { minLength: 1, maxLength: 4 }).map((changes) => changes.reduce(changed, example));

/** An answer as published, with every number a number, or a refusal as published; never a failure of the server. */
async function expectHonest(working: string, body: string): Promise<void> {
  const response = await ask(working, { token, body });
  expect([200, 400, 422]).toContain(response.status);
  if (response.status !== 200) {
    expect((await refusalOf(response))["detail"]).not.toMatch(/NaN|Infinity|undefined|null/);
    return;
  }
  const text = await response.text();
  const fits = published(`${working}-answer`);
  fits(JSON.parse(text));
  expect(fits.errors ?? []).toEqual([]);
  expect(text).not.toMatch(/NaN|Infinity/);
}

describe.each(Object.entries(CALCULATORS))("%s", (working, { examples }) => {
  // A person for each: together they ask more in a minute than one is answered.
  beforeAll(async () => {
    token = await aToken((await aCompany(`Burdock ${working}`)).owner);
  });

  it.each(Object.entries(examples))("answers or refuses whatever is made of its example %s", async (_name, { value }) => {
    await fc.assert(fc.asyncProperty(questions(value), (given) => expectHonest(working, JSON.stringify(given))), { numRuns: 80 });
  }, 120_000);

  it("answers or refuses any JSON and any text", async () => {
    await fc.assert(fc.asyncProperty(fc.oneof(fc.json(), fc.string()), (body) => expectHonest(working, body)), { numRuns: 30 });
  }, 60_000);
});
