import { dirname } from "node:path";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filesBelow } from "./source-tree.ts";

const MOST_LINES = 250;
const MOST_ENTRIES = 12;
/** Grows by nature, one entry for each step of the database. */
const MAY_GROW = "prisma/migrations";
const CODE = /\.(ts|tsx|mjs|css|prisma)$/;

const ours = (): string[] => ["app", "lib", "prisma", "tests"].flatMap(filesBelow);

const tooLong = (files: readonly { path: string; text: string }[]): string[] =>
  files.map(({ path, text }) => ({ path, lines: text.trimEnd().split("\n").length })).filter(({ lines }) => lines > MOST_LINES).map(({ path, lines }) => `${path}: ${lines} lines`);

function tooFull(paths: readonly string[]): string[] {
  const entries = new Map<string, Set<string>>();
  for (const path of paths) {
    for (let [entry, folder] = [path, dirname(path)]; folder !== "."; [entry, folder] = [folder, dirname(folder)]) {
      entries.set(folder, (entries.get(folder) ?? new Set()).add(entry));
    }
  }
  return [...entries].filter(([folder, within]) => folder !== MAY_GROW && within.size > MOST_ENTRIES).map(([folder, within]) => `${folder}: ${within.size} entries`);
}

describe("the size of the house", () => {
  it(`has no file over ${MOST_LINES} lines`, () => {
    const files = ours().filter((path) => CODE.test(path));
    expect(tooLong(files.map((path) => ({ path, text: readFileSync(path, "utf8") })))).toEqual([]);
  });
  it("notices a file that is", () => {
    expect(tooLong([{ path: "long.ts", text: "//\n".repeat(MOST_LINES + 1) }, { path: "short.ts", text: "//\n".repeat(MOST_LINES) }])).toEqual(["long.ts: 251 lines"]);
  });

  it(`has no folder over ${MOST_ENTRIES} entries`, () => expect(tooFull(ours())).toEqual([]));
  it("notices a folder that is", () => {
    const twelve = Array.from({ length: MOST_ENTRIES }, (_, index) => `lib/a/${index}.ts`);
    expect(tooFull(twelve)).toEqual([]);
    expect(tooFull([...twelve, "lib/a/b/one.ts"])).toEqual(["lib/a: 13 entries"]);
  });
});
