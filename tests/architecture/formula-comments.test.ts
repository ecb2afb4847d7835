import { describe, expect, it } from "vitest";
import { FORMULA_ROOM, formulasOf, unsaid, type Formula } from "./formulas.ts";
import { theTree } from "./source-tree.ts";

/** Exported, answer in numbers, and are no formulas: they give a number its unit, or take it over into another by the factors of lib/kernel/us-units.ts. */
const LEFT_OUT = "engineering-units.ts";

/** Beside the branded units: bare numbers, inputs of the US tables, terms of the beam, and what has the unit its caller gives it. */
const PLAIN_UNITS = ["-", "in", "in2", "in3", "in4", "psi", "cm3", "kN/m2", "kN.m3", "d", "K", "kJ/mol", "as given"];
const UNITS = new Set([...PLAIN_UNITS, ...theTree().flatMap(({ text }) => [...text.matchAll(/Quantity<"([^"]+)">/g)].map(([, unit = ""]) => unit))]);

const TOLD = {
  Formula: "p = w h.", Parameters: "density w [kN/m3]; depth h [m].", Result: "p [kPa].", Limits: "a depth under 0 is refused.", Example: "24 x 2 = 48 kPa.", Source: "statics of a liquid.",
};
type Told = Partial<typeof TOLD>;
const comment = (parts: Told): string => `/**\n * Head of a liquid.\n *\n${Object.entries(parts).map(([part, text]) => ` * ${part}: ${text}\n`).join("")} */\n`;
const without = (part: string): Told => Object.fromEntries(Object.entries(TOLD).filter(([name]) => name !== part));
const HEAD = "export declare function head(density: KilonewtonsPerCubicMetre, depth: Metres): Result<Kilopascals, Refusal>;\n";
const head = (change: Told): string => comment({ ...TOLD, ...change }) + HEAD;

/** What is planted, and what must be said of it. */
const PLANTED: Readonly<Record<string, readonly [string, readonly string[]]>> = {
  "says everything": [head({}), []],
  "has no comment": [HEAD, ["head has no comment"]],
  ...Object.fromEntries(Object.keys(TOLD).map((part) => [`lacks its part ${part}`, [comment(without(part)) + HEAD, [`head says no ${part.toLowerCase()}`]] as const])),
  "has its parts in another order": [
    comment({ ...without("Limits"), Limits: TOLD.Limits }) + HEAD,
    ["head has its parts in another order than formula, parameters, result, limits, example, source"],
  ],
  "gives its parameters no unit": [head({ Parameters: "density and depth." }), ["head gives its parameters no unit"]],
  "gives its result no unit": [head({ Result: "pressure." }), ["head gives its result no unit"]],
  "answers in another unit than its type": [head({ Result: "p [kN]." }), ["head answers in kPa and does not say so"]],
  "uses a unit that nobody knows": [head({ Parameters: "density w [stone]; depth h [m]." }), ["head names the unit stone, which nobody here knows"]],
  "leaves a parameter out": [head({ Parameters: "density w [kN/m3]." }), ["head does not name its parameter depth"]],
  "does not say when it refuses": [head({ Limits: "none." }), ["head may refuse and does not say when"]],
  "has a source of no edition": [head({ Source: "a good book." }), ["head names no edition of its source, and does not say that it has none"]],
  "stands behind a constant": ["export const one = (depth: Metres): Metres => depth;\nexport const two: typeof one = one;\n", ["one has no comment", "two has no comment"]],
  "answers with a list in an object": ["export const rows = (depth: Metres): { readonly rows: readonly (Metres | null)[] } => ({ rows: [depth] });\n", ["rows has no comment"]],
  "hands a function back": ["export const later = (depth: Metres): (() => Metres) => () => depth;\n", ["later has no comment"]],
  "only says yes, no or why not": ["export const deep = (depth: Metres): boolean => depth > 2;\nexport declare function outside(depth: Metres): Refusal | null;\n", []],
};
const IMPORTS = [
  'import type { Kilopascals, KilonewtonsPerCubicMetre, Metres } from "#lib/kernel/units.ts";',
  'import type { Result } from "#lib/kernel/result.ts";',
  'import type { Refusal } from "../working.ts";',
];
const fileOf = (case_: string): string => `planted/${case_.replaceAll(/\W+/g, "-")}.ts`;

const everything = formulasOf(Object.fromEntries(Object.entries(PLANTED).map(([name, [text]]) => [`${FORMULA_ROOM}/${fileOf(name)}`, `${IMPORTS.join("\n")}\n\n${text}`])));
const ours = everything.filter(({ file }) => !file.startsWith("planted/"));
const breaches = (formulas: readonly Formula[]): readonly string[] => formulas.flatMap((formula) => unsaid(formula, UNITS).map((what) => `${formula.name} ${what}`));

describe("every formula of the engineering room", () => {
  it("says formula, parameters, result, limits, example and source in that order, with its units, its refusals and the edition", () =>
    expect(breaches(ours.filter(({ file }) => file !== LEFT_OUT))).toEqual([]));
  it("is found: more than eighty of them", () => expect(ours.length).toBeGreaterThan(80));
  it("would be missed in the one file that is left out", () => expect(breaches(ours.filter(({ file }) => file === LEFT_OUT)).length).toBeGreaterThan(0));
});

describe("a planted formula", () => {
  it.each(Object.entries(PLANTED))("that %s is seen for what it is", (name, [, said]) => expect(breaches(everything.filter(({ file }) => file === fileOf(name)))).toEqual(said));
});
