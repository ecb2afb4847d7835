import { isValidElement, type ReactNode } from "react";
import { describe, expect, it } from "vitest";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { columnSignPaths } from "#app/_ui/drawing/sign/column-sign-paths.ts";
import { signWords } from "#app/_ui/drawing/sign/sign-words.ts";
import { bitOf, STAGES, type Stage } from "#lib/trade/progress/stages.ts";

const column = { shape: "rectangle", width_mm: 400, depth_mm: 600, flagged: false, size: 40 } as const;
const upTo = (stage: Stage): number => STAGES.slice(0, STAGES.indexOf(stage) + 1).reduce((mask, each) => mask + bitOf(each), 0);
const namesAt = (done: number, flagged = false): string[] => columnSignPaths({ ...column, done, flagged }).parts.map(({ name }) => name);

describe("the sign of a column", () => {
  it.each([
    ["nothing yet", 0, ["dashed"]],
    ["cut", upTo("cut"), ["dashed", "strips"]],
    ["stood", upTo("stood"), ["outline", "ply"]],
    ["clamped", upTo("clamped"), ["outline", "ply", "clamps"]],
    ["plumbed", upTo("plumbed"), ["outline", "ply", "clamps", "cross-halo", "cross"]],
    ["poured", upTo("poured"), ["outline", "hatch", "ply", "clamps", "cross-halo", "cross"]],
    ["stripped", upTo("stripped"), ["solid"]],
  ])("draws %s by its own element", (_, done, names) => {
    expect(namesAt(done)).toEqual(names);
  });

  it("tells a pour that was not plumbed from one that was", () => {
    expect(namesAt(upTo("poured") - bitOf("plumbed"))).not.toContain("cross");
  });

  it("puts the red corner on any stage, over everything else", () => {
    for (const done of [0, ...STAGES.map(upTo)]) expect(namesAt(done, true).at(-1)).toBe("flag");
  });

  it("draws every set of stages without a broken number, at every size and shape", () => {
    for (const size of [20, 33, 56]) for (const shape of ["rectangle", "circle"] as const) for (let done = 0; done < 64; done += 1) {
      const { parts } = columnSignPaths({ ...column, shape, size, done, flagged: done % 2 === 0 });
      for (const { d } of parts) expect(d).toMatch(/^M[-MmLlHhVvAaZz\d. ]+$/);
    }
  });

  it.each([20, 28, 40, 56])("keeps the column's proportions and stays inside a square of %i px", (size) => {
    const { concrete, parts } = columnSignPaths({ ...column, size, done: upTo("clamped"), flagged: true });
    expect(concrete.h / concrete.w).toBeCloseTo(600 / 400, 9);
    for (const { d } of parts) for (const [, x, y] of d.matchAll(/M(-?[\d.]+) (-?[\d.]+)/g)) {
      expect(Math.max(Math.abs(Number(x)), Math.abs(Number(y)))).toBeLessThanOrEqual(size / 2 + 0.01);
    }
  });

  it("never draws a blade so thin that nothing inside can be seen", () => {
    const { concrete } = columnSignPaths({ ...column, width_mm: 150, depth_mm: 3000, size: 20, done: 0 });
    expect(concrete.w).toBeGreaterThanOrEqual(2.4);
  });

  it("is hidden from a screen reader unless it is given words", () => {
    const silent: ReactNode = ColumnSign({ ...column, done: 0 });
    const named: ReactNode = ColumnSign({ ...column, done: 0, label: "B4, not started" });
    expect(isValidElement(silent) && silent.props).toMatchObject({ "aria-hidden": true });
    expect(isValidElement(named) && named.props).toMatchObject({ role: "img", "aria-label": "B4, not started" });
  });

  it("says in words what it shows", () => {
    expect(signWords(0, false)).toBe("not started");
    expect(signWords(upTo("clamped"), true)).toBe("clamped, queried or held");
    expect(signWords(upTo("poured") - bitOf("plumbed"), false)).toBe("poured, not plumbed");
  });
});
