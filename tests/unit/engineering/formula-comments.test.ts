import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const ROOM = join(import.meta.dirname, "../../../lib/trade/engineering");
/**
 * No formulas: shapes and unit makers; the inner arithmetic of the beam, whose formula stands at `continuousBeam`; choosing between formulas;
 * the search for a layout, whose proof stands at `searchCount` and `clampLayout`.
 */
const NOT_FORMULAS = new Set([
  "working.ts", "engineering-units.ts", "pour-conditions.ts", "backing/beam-pieces.ts", "pressure/limit-by-method.ts", "strip-time/counting.ts",
  "clamps/load-sums.ts", "clamps/even-layout.ts", "clamps/count-search.ts", "clamps/clamp-layout.ts",
]);
/** Questions whether a value is within a formula's limits, and a table that `countBound` reads. */
const GUARDS = new Set(["outsideAciTemperatureUs", "outsideAciTemperatureSi", "isDin2010Class", "latticeSums"]);
const PARTS = ["Formula:", "Parameters:", "Result:", "Limits:", "Example:", "Source:"];
const EXPORTED = /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*)?^export (?:function (\w+)|const (\w+)(?:: [^=]+)? = \([^)]*\)(?::[^=]+)? =>)/gm;

const formulas = readdirSync(ROOM, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !NOT_FORMULAS.has(file) && !file.startsWith("workings/"))
  .flatMap((file) => [...readFileSync(join(ROOM, file), "utf8").matchAll(EXPORTED)].map((match) => ({ file, name: match[2] ?? match[3] ?? "", comment: match[1] ?? "" })))
  .filter((formula) => !GUARDS.has(formula.name));

describe("every exported formula of the engineering room", () => {
  it("is found", () => expect(formulas.length).toBeGreaterThanOrEqual(15));
  it.each(formulas.map((formula) => [`${formula.file} ${formula.name}`, formula.comment] as const))("%s tells formula, units, limits, an example and its source, in that order", (_, comment) => {
    const places = PARTS.map((part) => comment.indexOf(` ${part} `));
    expect(PARTS.filter((_part, index) => (places[index] ?? -1) < 0)).toEqual([]);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    const section = (from: string, to: string) => comment.slice(comment.indexOf(from), comment.indexOf(to));
    expect(section("Parameters:", "Result:")).toMatch(/\[[^\]]+\]/);
    expect(section("Result:", "Limits:")).toMatch(/\[[^\]]+\]|\(depth \[m\]/);
    expect(comment.slice(comment.indexOf("Source:"))).toMatch(/\d{4}|\d-\d\d|Report \d+|theory|handed over|equations/);
  });
});
