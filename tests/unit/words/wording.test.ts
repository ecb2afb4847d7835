import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { wordFailure } from "#app/_ui/wording.ts";
import { wordFinding } from "#app/_ui/wording-findings.ts";
import { RULE_WORDING } from "#app/_ui/wording/rules.ts";
import { ENGINEERING_LIMIT } from "#lib/contracts/workings/answer-parts.ts";
import { finding, FINDINGS, type FindingCode } from "#lib/trade/progress/finding.ts";

const serverSource = readdirSync("lib/server", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts"))
  .map((name) => readFileSync(`lib/server/${name}`, "utf8"))
  .join("\n");
const brokenRules = [ENGINEERING_LIMIT, ...new Set([...serverSource.matchAll(/brokenRule\(\s*"([^"]+)"/g)].map(([, code]) => code ?? ""))];

describe("words for what was refused", () => {
  it.each(brokenRules)("exist for the rule %s", (code) => {
    expect(Object.keys(RULE_WORDING)).toContain(code);
  });

  it("carry the values of the rule", () => {
    const { title } = wordFailure({ kind: "rule", code: "level-not-above", values: { from: "Level 3", to: "Level 2" } });
    expect(title).toBe("Level 2 does not lie above Level 3.");
  });

  it("stay readable for a rule without words of its own", () => {
    const { title, todo } = wordFailure({ kind: "rule", code: "set-already-at-column", values: { column: "B4" } });
    expect(`${title} ${todo}`).toBe("Not possible: set already at column. It rests on: column B4.");
  });
});

describe("words for a finding", () => {
  it.each(Object.keys(FINDINGS) as FindingCode[])("%s leave no gap unfilled", (code) => {
    const values = Object.fromEntries(FINDINGS[code].map((name) => [name, name === "minutes" ? 90 : "2031-04-17T06:30:00Z"]));
    const { title, todo } = wordFinding({ code, values }, "Australia/Hobart");
    expect(`${title} ${todo}`).not.toMatch(/[{}]|undefined|T06:30/);
  });

  // tz database: Hobart is back on AEST, UTC+10, in mid-April.
  it("tell times in the project's zone", () => {
    const { title } = wordFinding(finding("while-held", { heldAt: "2031-04-17T06:30:00Z" }), "Australia/Hobart");
    expect(title).toBe("The column has been held since Thu 17 Apr 2031, 16:30 AEST.");
  });
});
