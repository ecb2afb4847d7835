import { beforeAll, describe, expect, it } from "vitest";
import * as unknown from "#app/api/v1/[...unknown]/route.ts";
import { MOST_BYTES } from "#app/api/v1/_parts/read-json.ts";
import * as document from "#app/api/v1/openapi.json/route.ts";
import * as workings from "#app/api/v1/workings/[working]/route.ts";
import { MOST_QUESTIONS_A_MINUTE } from "#lib/contracts/people.ts";
import { clampLayoutExample } from "#lib/contracts/workings/clamp-layout.ts";
import { pressureExample } from "#lib/contracts/workings/pressure.ts";
import { stripTimeExample } from "#lib/contracts/workings/strip-time.ts";
import { aCompany } from "#tests/support/builders/a-company.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { aRequest, ask, askFor, aToken, refusalOf, send } from "./asked.ts";

ownDatabase();
let token: string;
beforeAll(async () => {
  token = await aToken((await aCompany("Teasel Boxing")).office);
});

async function expectRefused(response: Response, status: number, code: string): Promise<Record<string, unknown>> {
  expect([response.status, response.headers.get("content-type"), response.headers.get("cache-control")]).toEqual([status, "application/problem+json", "no-store"]);
  const body = await refusalOf(response);
  expect([body["code"], body["status"]]).toEqual([code, status]);
  return body;
}

describe("an address or a method that is none", () => {
  it.each(["concrete", "constructor", "__proto__", "Pressure", ""])("%j is not found, with a token or without", async (working) => {
    await expectRefused(await ask(working, {}), 404, "not-found");
    await expectRefused(await ask(working, { token }), 404, "not-found");
  });

  it("elsewhere under the API is not found", async () => {
    await expectRefused(unknown.GET(), 404, "not-found");
  });

  it("names the method that is taken (RFC 9110 section 15.5.6)", async () => {
    for (const method of ["GET", "PUT", "PATCH", "DELETE"] as const) {
      const response = await workings[method](new Request("http://hut.example"), { params: Promise.resolve({ working: "plumb" }) });
      expect(response.headers.get("allow")).toBe("POST");
      await expectRefused(response, 405, "wrong-method");
    }
    const posted = document.POST();
    expect(posted.headers.get("allow")).toBe("GET");
    await expectRefused(posted, 405, "wrong-method");
  });
});

describe("a body that is none", () => {
  it.each(["text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "application/jsonp", ""])("is refused as %j", async (type) => {
    await expectRefused(await ask("plumb", { token, headers: { "content-type": type } }), 415, "not-json");
  });

  it.each(["", "{", "{'a': 1}", "[1,]", "NaN", "\u{feff}{}extra"])("is refused as broken: %j", async (body) => {
    await expectRefused(await ask("plumb", { token, body, headers: { "content-type": "Application/JSON; charset=utf-8" } }), 400, "broken-json");
  });

  it("is refused where it is not UTF-8 (RFC 8259 section 8.1)", async () => {
    await expectRefused(await ask("plumb", { token, body: new Uint8Array([0x7b, 0xff, 0x7d]) }), 400, "broken-json");
  });

  it("is refused over the limit by what it says and by what it is, and not read on", async () => {
    await expectRefused(await ask("plumb", { token, headers: { "content-length": String(MOST_BYTES + 1) } }), 413, "body-too-large");
    let sent = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull: (controller) => {
        sent += 16_384;
        controller.enqueue(new Uint8Array(16_384).fill(0x20));
      },
    });
    await expectRefused(await send("plumb", aRequest("plumb", { token, body: endless })), 413, "body-too-large");
    expect(sent).toBeLessThanOrEqual(MOST_BYTES + 4 * 16_384);
  });

  it("fits ninety days of hourly temperatures, one to a line", async () => {
    const question = { ...stripTimeExample, hourly_degC: Array.from({ length: 90 * 24 }, (_, hour) => Math.round(1000 * Math.sin(hour)) / 100) };
    const response = await ask("strip-time", { token, body: JSON.stringify(question, null, 4) });
    expect([200, 422]).toContain(response.status);
  });
});

describe("a body of another shape", () => {
  it("is refused key by key, each with what to do", async () => {
    const { temperature_degC: _left, ...pour } = pressureExample.pour;
    const given = { ...pressureExample, pour: { ...pour, method: "guess", slump_mm: "110", retarder: 1 }, colour: "blue" };
    const { errors } = await expectRefused(await askFor("pressure", token, given), 400, "wrong-shape");
    expect(errors).toEqual(expect.arrayContaining([
      { pointer: "/pour/temperature_degC", detail: "Give a number from -50 to 100." },
      { pointer: "/pour/method", detail: expect.stringMatching(/^Give one of: "full-head", /) },
      { pointer: "/pour/slump_mm", detail: "Give a number from 0 to 1000." },
      { pointer: "/pour/retarder", detail: "Give true or false." },
      { pointer: "", detail: 'Leave out "colour": no such name is known here. Units are part of a name.' },
    ]));
    expect(errors).toHaveLength(5);
  });

  it("points into lists, and names the kinds there are", async () => {
    const layout = { kind: "measured", heights_mm: [150, "600"] };
    const { errors } = await expectRefused(await askFor("clamp-layout", token, { ...clampLayoutExample, layout, format: { kind: "none" } }), 400, "wrong-shape");
    expect(errors).toEqual([
      { pointer: "/format/kind", detail: 'Give one of: "permissible-stress", "partial-factor".' },
      { pointer: "/layout/heights_mm/1", detail: "Give a number from 0 to 30000." },
    ]);
  });

  it.each(["null", "[]", "3", '"text"', "{}"])("is refused: %s", async (body) => {
    await expectRefused(await ask("backing", { token, body }), 400, "wrong-shape");
  });

  it("names fifty entries of a body that is wrong throughout", async () => {
    const body = await expectRefused(await askFor("strip-time", token, { ...stripTimeExample, hourly_degC: Array(2000).fill("warm") }), 400, "wrong-shape");
    expect(body["errors"]).toHaveLength(50);
    expect(body["detail"]).toContain("2000 entries");
  });

  it("takes no number that JSON cannot tell: 1e999 is infinite to whoever reads it", async () => {
    await expectRefused(await ask("pressure", { token, body: JSON.stringify(pressureExample).replace("4150", "1e999") }), 400, "wrong-shape");
  });
});

describe("a question outside a limit", () => {
  it("is refused with the limit, what was given and what would be allowed", async () => {
    const response = await askFor("clamp-layout", token, { ...clampLayoutExample, layout: { kind: "measured", heights_mm: [150, 600, 500] } });
    const { detail, values } = await expectRefused(response, 422, "engineering-limit");
    expect(values).toMatchObject({ limit: "height of clamp 3 (mm)", given: 500, allowed: "601 to 4150" });
    expect(detail).toBe("height of clamp 3 (mm) is 500; allowed: 601 to 4150. Correct the layout.");
  });
});

describe("a person whose programs ask without end", () => {
  it("is told when to ask again, whichever token they ask with; others are answered", async () => {
    const { owner, office } = await aCompany("Burdock Boxing");
    const [first, second] = [await aToken(owner), await aToken(owner)];
    for (let turn = 0; turn < MOST_QUESTIONS_A_MINUTE; turn += 1) expect((await ask("plumb", { token: first })).status).toBe(400);
    const response = await ask("plumb", { token: second });
    expect(Number(response.headers.get("retry-after"))).toBeGreaterThan(0);
    await expectRefused(response, 429, "too-many-questions");
    expect((await ask("plumb", { token: await aToken(office) })).status).toBe(400);
  });
});
