import { describe, expect, it } from "vitest";
import { purityBreaches, scopeBreaches } from "./rooms.ts";
import { planted, theTree } from "./source-tree.ts";

describe("the pure rooms", () => {
  it("depend on nothing but what they are given", () => expect(purityBreaches(theTree())).toEqual([]));

  it.each([
    "export const later = async () => 1;", "export const at = Date.now();", "export const on = new Date();", "export const dice = Math.random();",
    "export const here = process.env;", `import { useState } from "react";`, `import type { NextRequest } from "next/server";`, "export const wait = () => fetch('x');",
  ])("notice %s", (text) => expect(planted(purityBreaches, { "lib/trade/progress/planted.ts": text })).not.toEqual([]));

  it("may speak of a process, or turn an instant into a date", () => {
    const text = `export const spoken = { process: 1 };\nexport const day = new Date(0).toISOString();`;
    expect(planted(purityBreaches, { "lib/trade/progress/planted.ts": text })).toEqual([]);
  });
});

describe("a scope", () => {
  it("is made in the gate alone", () => expect(scopeBreaches(theTree().filter(({ path }) => !path.startsWith("tests/architecture/")))).toEqual([]));

  it.each([
    `import { sealProject } from "../gate/scope.ts";`, "export const stolen = {} as CompanyScope;", "export const stolen = ({} as unknown) as Readonly<ProjectScope>;",
  ])("is not made by %s", (text) => expect(planted(scopeBreaches, { "lib/server/people/planted.ts": text })).toHaveLength(1));
});
