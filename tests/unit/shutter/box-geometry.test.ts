import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mm } from "#lib/kernel/units.ts";
import type { FormSet, Rect } from "#lib/trade/shutter/form-set.ts";
import { designShutter } from "#lib/trade/shutter/design-shutter.ts";
import { anInput, formSetOf, inputs, rectangular } from "./shutter-inputs.ts";

const EPS = 1e-6;
const area = (r: Rect) => r.w * r.h;
const shared = (a: Rect, b: Rect) =>
  Math.max(0, Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x)) * Math.max(0, Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y));
const overlaps = (rects: readonly Rect[]) => rects.some((a, index) => rects.slice(index + 1).some((b) => shared(a, b) > EPS));

const designed = (check: (set: FormSet) => void) =>
  fc.assert(
    fc.property(inputs, (input) => {
      const answer = designShutter(input);
      fc.pre(answer.ok);
      if (answer.ok) check(answer.value);
    }),
    { numRuns: 300 },
  );

/** Length of one side of the concrete that ply lies on, and fillet legs where the ply stops short of the corner. */
function coveredLength(set: FormSet, side: "top" | "right" | "foot" | "left"): number {
  const { concrete: c, ply, fillets } = set.plan;
  const level = side === "top" || side === "foot";
  const line = side === "top" ? c.y + c.h : side === "foot" ? c.y : side === "right" ? c.x + c.w : c.x;
  const [from, to] = level ? [c.x, c.x + c.w] : [c.y, c.y + c.h];
  const touching = ply.filter(({ rect: r }) => (level ? Math.abs((side === "top" ? r.y : r.y + r.h) - line) < EPS : Math.abs((side === "right" ? r.x : r.x + r.w) - line) < EPS));
  const legs = fillets.filter(({ points }) => points.filter(([x, y]) => Math.abs((level ? y : x) - line) < EPS).length === 2);
  const spans = [...touching, ...legs].map(({ rect: r }) => (level ? [r.x, r.x + r.w] : [r.y, r.y + r.h]) as [number, number]);
  let reach: number = from;
  for (const [start, end] of spans.sort((a, b) => a[0] - b[0])) if (start <= reach + EPS) reach = Math.max(reach, end);
  return Math.min(reach, to) - from;
}

describe("the box on plan", () => {
  it("panels close round the column in every joint: no gap along any side, no two plies in one place, none in the concrete", () =>
    designed((set) => {
      const { concrete, ply } = set.plan;
      expect(coveredLength(set, "top")).toBeCloseTo(concrete.w, 6);
      expect(coveredLength(set, "foot")).toBeCloseTo(concrete.w, 6);
      expect(coveredLength(set, "left")).toBeCloseTo(concrete.h, 6);
      expect(coveredLength(set, "right")).toBeCloseTo(concrete.h, 6);
      expect(overlaps([concrete, ...ply.map((part) => part.rect)])).toBe(false);
    }));
  it("the corners are closed: ply fills the whole ring, or all but the four corner gaps that fillets of ply thickness close", () =>
    designed((set) => {
      const { concrete: c, ply, fillets } = set.plan;
      const t = Math.min(...ply.flatMap(({ rect: r }) => [r.w, r.h]));
      const ring = (c.w + 2 * t) * (c.h + 2 * t) - c.w * c.h;
      const outer = { x: mm(c.x - t), y: mm(c.y - t), w: mm(c.w + 2 * t), h: mm(c.h + 2 * t) };
      ply.forEach(({ rect: r }) => expect(shared(r, outer)).toBeCloseTo(area(r), 4));
      const corners = [c.x - t, c.x + c.w].flatMap((x) => [c.y - t, c.y + c.h].map((y) => ({ x: mm(x), y: mm(y), w: mm(t), h: mm(t) })));
      corners.forEach((corner) => expect(ply.reduce((sum, part) => sum + shared(part.rect, corner), 0)).toBeCloseTo(t * t, 4));
      const gaps = set.joint === "fillet-corner" ? 4 * t * t : 0;
      expect(ply.reduce((sum, part) => sum + area(part.rect), 0)).toBeCloseTo(ring - gaps, 4);
      if (set.joint === "fillet-corner") fillets.forEach(({ rect: r }) => expect([r.w, r.h]).toEqual([t, t]));
    }));
  it("timbers lie outside the ply, clear of each other, within what the clamp reaches over; the bars lie outside them", () =>
    designed((set) => {
      const { concrete, ply, timbers, clampBars, outsideBacking } = set.plan;
      expect(overlaps([concrete, ...ply.map((part) => part.rect), ...timbers.map((part) => part.rect)])).toBe(false);
      timbers.forEach(({ rect: r }) => expect(shared(r, outsideBacking)).toBeCloseTo(area(r), 4));
      clampBars.forEach(({ rect: r }) => expect(shared(r, outsideBacking)).toBeLessThanOrEqual(EPS));
    }));
  it("panel sizes by joint: over pair size + 2 × ply, pinwheel size + ply, fillet corner the size itself", () => {
    const widths = (change: Parameters<typeof anInput>[1]) => formSetOf(anInput({}, change)).panels.map((panel) => panel.width);
    expect(widths({ joint: "two-over", overPair: "A-C" })).toEqual([386, 550, 386, 550]);
    expect(widths({ joint: "two-over", overPair: "B-D" })).toEqual([350, 586, 350, 586]);
    expect(widths({ joint: "pinwheel" })).toEqual([368, 568, 368, 568]);
    expect(widths({ joint: "fillet-corner" })).toEqual([350, 550, 350, 550]);
  });
  it("measured ply thickness drives the cut: 17.3 mm gives 384.6 mm", () => {
    const rule = anInput().rule;
    expect(formSetOf(anInput({}, { ply: { ...rule.ply, thickness: mm(17.3) } })).panels[0]?.width).toBeCloseTo(384.6, 9);
  });
});

describe("the faces in elevation", () => {
  it("ply covers each panel exactly, and the cut pieces have the drawn sizes", () =>
    designed((set) =>
      set.elevations.forEach((face, index) => {
        const panel = set.panels[index];
        if (panel === undefined) throw new Error("a face without a panel");
        expect(overlaps(face.ply)).toBe(false);
        expect(face.ply.reduce((sum, r) => sum + area(r), 0)).toBeCloseTo(panel.width * panel.height, 3);
        expect(face.ply.map(area).sort((a, b) => a - b).map(Math.round)).toEqual(panel.pieces.map((piece) => piece.width * piece.height).sort((a, b) => a - b).map(Math.round));
        face.ply.forEach((r) => expect(r.y + r.h).toBeLessThanOrEqual(set.formHeight + EPS));
      }),
    ));
  it("no piece is larger than a sheet", () =>
    designed((set) => set.panels.forEach((panel) => panel.pieces.forEach((piece) => expect([piece.width <= 1220 + EPS, piece.height <= 2440 + EPS]).toEqual([true, true])))));
  it("level ply joints of neighbouring faces are at least 300 mm apart wherever there is one", () =>
    designed((set) => {
      const joints = (face: number) => [...new Set(set.elevations[face]?.ply.map((r) => r.y) ?? [])].filter((y) => y > 0);
      joints(0).forEach((a) => joints(1).forEach((b) => expect(Math.abs(a - b)).toBeGreaterThanOrEqual(300 - EPS)));
    }));
  it("clamps are drawn at the heights that were designed, the same on all four faces", () =>
    designed((set) => set.elevations.forEach((face) => expect(face.clamps.map((clamp) => clamp.height)).toEqual(set.clamps.heights))));
  it("an oblong pinwheel is mirrored rightly: seen from outside, every face laps its neighbour on the same hand", () => {
    const set = formSetOf(anInput({}, { joint: "pinwheel" }));
    const beyond = set.elevations.map((face, index) => {
      const side = set.panels[index]?.side ?? 0;
      const left = Math.min(...face.ply.map((r) => r.x));
      return left < -side / 2 - EPS ? "left" : "right";
    });
    expect(new Set(beyond).size).toBe(1);
  });
});

describe("level ply joints", () => {
  const rowsOf = (height: number) => formSetOf(anInput({ formHeight: mm(height) })).elevations.map((face) => face.ply.map((r) => r.h));
  it("3150 mm in 2440 mm sheets: full sheet below on A and C, above on B and D", () => expect(rowsOf(3150)).toEqual([[2440, 710], [710, 2440], [2440, 710], [710, 2440]]));
  it("4880 mm, two full sheets: B and D begin with half a sheet, so that the joints do not meet", () => expect(rowsOf(4880).slice(0, 2)).toEqual([[2440, 2440], [1220, 2440, 1220]]));
  it("2500 mm: no sliver of 60 mm, the top piece is 300", () => expect(rowsOf(2500)[0]).toEqual([2200, 300]));
  it("no piece is lower than 300 mm", () => designed((set) => set.panels.forEach((panel) => panel.pieces.forEach((piece) => expect(piece.height).toBeGreaterThanOrEqual(300 - EPS)))));
});

describe("the cutting list", () => {
  it("counts every piece once: ply as drawn, timbers as on plan, cleats as in elevation", () =>
    designed((set) => {
      const count = (part: string) => set.cutting.filter((line) => line.part === part).reduce((sum, line) => sum + line.count, 0);
      const cleats = (role: string) => set.elevations.flatMap((face) => face.cleats).filter((cleat) => cleat.role === role).length;
      expect(count("ply")).toBe(set.elevations.flatMap((face) => face.ply).length);
      expect(count("backing")).toBe(set.plan.timbers.length);
      expect(count("base-cleat")).toBe(cleats("base"));
      expect(count("joint-cleat")).toBe(cleats("joint"));
    }));
  it("is in cutting order, without two lines of one size", () =>
    designed((set) => {
      const keys = set.cutting.map((line) => `${line.part} ${line.length} ${line.width} ${line.thickness}`);
      expect(new Set(keys).size).toBe(keys.length);
      const lengths = set.cutting.filter((line) => line.part === "ply").map((line) => line.length);
      expect([...lengths].sort((a, b) => b - a)).toEqual(lengths);
    }));
  it("a square column in one sheet height needs two sizes of ply, two of each", () => {
    const { cutting } = formSetOf(anInput({ section: rectangular(425, 425), formHeight: mm(2400) }));
    expect(cutting.filter((line) => line.part === "ply").map(({ count, length, width }) => ({ count, length, width }))).toEqual([
      { count: 2, length: 2400, width: 461 },
      { count: 2, length: 2400, width: 425 },
    ]);
  });
});
