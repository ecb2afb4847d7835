import { beforeAll, describe, expect, it } from "vitest";
import { CALCULATORS } from "#app/api/v1/_parts/calculators.ts";
import { pressureExample } from "#lib/contracts/workings/pressure.ts";
import { aCompany } from "#tests/support/builders/a-company.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { askFor, aToken, published } from "./asked.ts";

ownDatabase();
let token: string;
beforeAll(async () => {
  token = await aToken((await aCompany("Reed Boxing")).leadingHand);
});

const EXAMPLES = Object.entries(CALCULATORS).flatMap(([working, { examples }]) => Object.entries(examples).map(([name, { value }]) => [working, name, value] as const));

describe.each(EXAMPLES)("%s, the example %s", (working, _name, example) => {
  it("fits the published question, and its answer the published answer", async () => {
    expect(published(`${working}-question`)(example)).toBe(true);
    const response = await askFor(working, token, example);
    expect([response.status, response.headers.get("content-type"), response.headers.get("cache-control")]).toEqual([200, "application/json", "no-store"]);
    const fits = published(`${working}-answer`);
    fits(await response.json());
    expect(fits.errors ?? []).toEqual([]);
  });
});

// Hydrostatics: p = 24.5 kN/m3 x 4.15 m = 101.675 kPa; resultant p h / 2 = 101.675 x 4.15 / 2 = 210.975625 kN/m, a third of 4.15 m up.
it("tells the full liquid head as it is worked out by hand", async () => {
  const response = await askFor("pressure", token, { ...pressureExample, pour: { ...pressureExample.pour, method: "full-head" } });
  const answer = (await response.json()) as Record<string, number>;
  expect(answer["limit_kPa"]).toBeCloseTo(24.5 * 4.15, 9);
  expect(answer["resultant_kN_per_m"]).toBeCloseTo((24.5 * 4.15 ** 2) / 2, 9);
  expect(answer["resultant_height_m"]).toBeCloseTo(4.15 / 3, 9);
});
