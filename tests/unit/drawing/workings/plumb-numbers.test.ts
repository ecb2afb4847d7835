import { describe, expect, it } from "vitest";
import { cornerOffsets, exaggeration, plumbNumbers } from "#app/_ui/drawing/workings/plumb/plumb-numbers.ts";

const upright = { x_mm: 0, y_mm: 0, turn_mm_per_m: null, out_of_square_mm_per_m: null };

/** Small turns of a rigid box: a point at (x, y) metres turned by t mm/m moves by (−t y, t x) mm. */
describe("where the corners stand", () => {
  it("moves them all alike where the box only moves", () => {
    expect(cornerOffsets({ ...upright, x_mm: 3, y_mm: -2 }, 600, 400)).toEqual(Array.from({ length: 4 }, () => ({ x: 3, y: -2 })));
  });
  it("turns them about the middle, anticlockwise", () => {
    // Corner AB at (0.3, 0.2) m, 10 mm/m: (−2, 3) mm; CD lies opposite.
    const [ab, bc, cd, da] = cornerOffsets({ ...upright, turn_mm_per_m: 10 }, 600, 400);
    expect([ab, bc, cd, da]).toEqual([{ x: -2, y: 3 }, { x: 2, y: 3 }, { x: 2, y: -3 }, { x: -2, y: -3 }]);
  });
  it("closes the angle at AB where it is under a right angle, so that this diagonal is the longer one", () => {
    const offsets = cornerOffsets({ ...upright, out_of_square_mm_per_m: 8 }, 600, 400);
    const corner = (index: number, x: number, y: number) => [x + (offsets[index]?.x ?? 0), y + (offsets[index]?.y ?? 0)] as const;
    const far = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]) => Math.hypot(ax - bx, ay - by);
    const longer = far(corner(0, 300, 200), corner(2, -300, -200));
    const shorter = far(corner(1, 300, -200), corner(3, -300, 200));
    // 2 w d g / diagonal = 2 x 0.6 x 400 x 8 / 721.1 = 5.325 mm
    expect(longer - shorter).toBeCloseTo((2 * 0.6 * 400 * 8) / Math.hypot(600, 400), 2);
  });
});

describe("the exaggeration", () => {
  it("is the largest round factor that stays within the room", () => {
    expect(exaggeration(9, 120)).toBe(10);
    expect(exaggeration(13, 120)).toBe(5);
    expect(exaggeration(200, 120)).toBe(1);
  });
  it("draws sizes true and offsets times the factor", () => {
    const { factor, right, foot, head, headCentre, allowed } = plumbNumbers({ widthMm: 400, depthMm: 300, foot: { ...upright, x_mm: 1 }, lean: { x: 5, y: -2 }, twist_mm_per_m: null, allowedMm: 8 });
    expect(factor).toBe(10);
    expect(right[0]).toEqual({ x: 200, y: 150 });
    expect(foot[0]).toEqual({ x: 200 + 10, y: 150 });
    expect(head[0]).toEqual({ x: 200 + 60, y: 150 - 20 });
    expect(headCentre).toEqual({ x: 60, y: -20 });
    expect(allowed).toBe(80);
  });
});
