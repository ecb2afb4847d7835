import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plumbInput } from "#lib/contracts/workings/plumb.ts";
import { mm } from "#lib/kernel/units.ts";
import type { FaceReading, LevelReadings, PlumbFace } from "#lib/trade/engineering/plumb/level-fit.ts";
import { plumbWorking } from "#lib/trade/engineering/workings/plumb.ts";
import type { PlumbInput } from "#lib/trade/engineering/workings/plumb.ts";
import { parseLength } from "#app/_ui/value/feet-inches.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

type Point = readonly [number, number];
/** Where a real box stands at one level: moved, its faces A and C turned by one angle, B and D by another (radians, anticlockwise). */
type Standing = { readonly x: number; readonly y: number; readonly across: number; readonly along: number };
type Size = { readonly width: number; readonly depth: number };

const unit = (angle: number): Point => [Math.cos(angle), Math.sin(angle)];
const cross = ([a, b]: Point, [c, d]: Point): number => a * d - b * c;

/** Corner AB, BC, CD or DA, by the directions of its two faces. */
function cornerOf({ x, y, across, along }: Standing, { width, depth }: Size, right: 1 | -1, up: 1 | -1): Point {
  const [a, b] = [unit(across), unit(along + Math.PI / 2)];
  return [x + (right * width * a[0]) / 2 + (up * depth * b[0]) / 2, y + (right * width * a[1]) / 2 + (up * depth * b[1]) / 2];
}

/** The tape held square to the right line at a place along it, up to the real face: two lines crossed, no small angles. */
function tape(standing: Standing, size: Size, face: PlumbFace, along: number): number {
  const flat = face === "A" || face === "C";
  const side = face === "A" || face === "B" ? 1 : -1;
  const middle = flat ? cornerOf(standing, { width: 0, depth: size.depth }, 1, side) : cornerOf(standing, { width: size.width, depth: 0 }, side, 1);
  const direction = unit(flat ? standing.across : standing.along + Math.PI / 2);
  const [origin, outwards]: [Point, Point] = flat ? [[along, (side * size.depth) / 2], [0, side]] : [[(side * size.width) / 2, along], [side, 0]];
  return cross([middle[0] - origin[0], middle[1] - origin[1]], direction) / cross(outwards, direction);
}

const distance = ([a, b]: Point, [c, d]: Point): number => Math.hypot(a - c, b - d);
function level(height: number, standing: Standing, size: Size, diagonals: boolean): LevelReadings {
  const places: readonly (readonly [PlumbFace, number])[] = [["A", 0.4], ["A", -0.35], ["B", 0.3], ["B", -0.4], ["C", 0.1], ["D", -0.2]];
  const faces = places.map(([face, share]): FaceReading => {
    const along = share * (face === "A" || face === "C" ? size.width : size.depth);
    return { face, along: mm(along), offset: mm(tape(standing, size, face, along)) };
  });
  const corner = (right: 1 | -1, up: 1 | -1) => cornerOf(standing, size, right, up);
  return { height: mm(height), faces, diagonals: diagonals ? { cdToAb: mm(distance(corner(-1, -1), corner(1, 1))), bcToDa: mm(distance(corner(1, -1), corner(-1, 1))) } : null };
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const sizes = fc.record({ width: between(250, 1200), depth: between(250, 1200) });
const turns = between(-0.01, 0.01);
const own = { kind: "own", limit: mm(10) } as const;
const inputOf = (size: Size, bottom: LevelReadings, top: LevelReadings, formHeight = 3400): PlumbInput => ({ width: mm(size.width), depth: mm(size.depth), formHeight: mm(formHeight), bottom, top, tolerance: own });

describe("plumb of a box that really was moved, turned and racked", () => {
  it("is told as it was: lean, twist and out-of-square, to what small angles leave out", () =>
    fc.assert(
      fc.property(sizes, between(-60, 60), between(-60, 60), turns, turns, turns, fc.boolean(), (size, x, y, across, turn, racked, diagonals) => {
        const foot: Standing = { x: 4, y: -7, across, along: across };
        const head: Standing = { x: 4 + x, y: -7 + y, across: across + turn + racked / 2, along: across + turn - racked / 2 };
        const answer = valueOf(plumbWorking(inputOf(size, level(200, foot, size, diagonals), level(3000, head, size, diagonals))));
        const scale = 3400 / 2800;
        // Second order: an angle of 0.025 times 60 mm of movement, half its square times half a side.
        const left = 0.03 * 60 + (0.025 ** 2 / 2) * 1200;
        expect(Math.abs(answer.leanX - x * scale)).toBeLessThanOrEqual(left * scale);
        expect(Math.abs(answer.leanY - y * scale)).toBeLessThanOrEqual(left * scale);
        expect(Math.abs((answer.twist ?? NaN) - turn * 1000 * scale)).toBeLessThanOrEqual(0.9);
        expect(Math.abs((answer.top.outOfSquare ?? NaN) - racked * 1000)).toBeLessThanOrEqual(0.9);
        expect(answer.bottom.outOfSquare).toBeCloseTo(0, 0);
      }),
    ));

  it("is told exactly where it was moved only: no twist, not racked, nothing left over", () =>
    fc.assert(
      fc.property(sizes, between(-200, 200), between(-200, 200), fc.boolean(), (size, x, y, diagonals) => {
        const [foot, head]: [Standing, Standing] = [{ x: 0, y: 0, across: 0, along: 0 }, { x, y, across: 0, along: 0 }];
        const answer = valueOf(plumbWorking(inputOf(size, level(0, foot, size, diagonals), level(3400, head, size, diagonals))));
        expect([answer.leanX, answer.leanY].map((lean, index) => lean - ([x, y][index] ?? 0)).every((off) => Math.abs(off) < 1e-6)).toBe(true);
        expect(Math.abs(answer.twist ?? NaN)).toBeLessThan(1e-6);
        expect(Math.abs(answer.top.outOfSquare ?? NaN)).toBeLessThan(1e-6);
        expect(answer.top.residual).toBeLessThan(1e-6);
      }),
    ));

  it("that is turned about its own middle is turned and not moved; one that is racked only shows no twist", () => {
    const size = { width: 520, depth: 380 };
    const still: Standing = { x: 0, y: 0, across: 0, along: 0 };
    const turned = valueOf(plumbWorking(inputOf(size, level(0, still, size, true), level(3400, { ...still, across: 0.004, along: 0.004 }, size, true))));
    expect(turned.twist).toBeCloseTo(4, 2);
    expect(Math.hypot(turned.leanX, turned.leanY)).toBeLessThan(0.02);
    const racked = valueOf(plumbWorking(inputOf(size, level(0, still, size, true), level(3400, { ...still, across: 0.002, along: -0.002 }, size, true))));
    expect(racked.twist).toBeCloseTo(0, 2);
    expect(racked.top.outOfSquare).toBeCloseTo(4, 2);
  });
});

describe("readings", () => {
  const readings = fc.array(fc.record({ face: fc.constantFrom<PlumbFace>("A", "B", "C", "D"), along: fc.integer({ min: -140, max: 140 }), offset: between(-40, 40) }), { minLength: 2, maxLength: 8 });
  const asLevel = (height: number, faces: readonly { face: PlumbFace; along: number; offset: number }[]): LevelReadings =>
    ({ height: mm(height), diagonals: null, faces: faces.map(({ face, along, offset }) => ({ face, along: mm(along), offset: mm(offset) })) });
  const mirrored = (faces: readonly { face: PlumbFace; along: number; offset: number }[]) => [...faces, ...faces.map((reading) => ({ ...reading, along: -reading.along }))];

  it("that are the same to the left and to the right of the middle show no twist", () =>
    fc.assert(
      fc.property(readings, readings, (foot, head) => {
        const answer = plumbWorking(inputOf({ width: 400, depth: 400 }, asLevel(100, mirrored(foot)), asLevel(3000, mirrored(head))));
        if (answer.ok && answer.value.twist !== null) expect(Math.abs(answer.value.twist)).toBeLessThan(1e-6);
      }),
    ));

  it("all longer by the same part lean by that part more and twist by the same angle: lengths cancel", () => {
    let compared = 0;
    fc.assert(
      fc.property(readings, readings, between(0.5, 3), (foot, head, factor) => {
        const scaled = (faces: typeof foot) => faces.map(({ face, along, offset }) => ({ face, along: along * factor, offset: offset * factor }));
        const once = plumbWorking(inputOf({ width: 400, depth: 300 }, asLevel(100, foot), asLevel(3000, head)));
        const size = { width: 400 * factor, depth: 300 * factor };
        const again = plumbWorking(inputOf(size, asLevel(100 * factor, scaled(foot)), asLevel(3000 * factor, scaled(head)), 3400 * factor));
        // Nearly one place on one pair of faces, or offsets past what is taken: nothing to compare.
        if (!once.ok || !again.ok || Math.abs(once.value.twist ?? 0) > 1000) return;
        compared += 1;
        expect(again.value.lean).toBeCloseTo(once.value.lean * factor, 4);
        expect(again.value.twist ?? 0).toBeCloseTo(once.value.twist ?? 0, 4);
      }),
    );
    expect(compared).toBeGreaterThan(20);
  });

  it("taken in inches tell the same as in millimetres", () => {
    const inches = (text: string) => parseLength(text, "us") ?? Number.NaN;
    const asked = (length: (inch: number) => number) =>
      valueOf(plumbWorking(plumbInput.parse({
        width_mm: length(20.5), depth_mm: length(15), form_height_mm: length(132),
        bottom: { height_mm: length(6), faces: [{ face: "A", along_mm: -length(8), offset_mm: length(0.0625) }, { face: "A", along_mm: length(8), offset_mm: 0 }, { face: "B", along_mm: 0, offset_mm: -length(0.0625) }] },
        top: { height_mm: length(126), faces: [{ face: "A", along_mm: -length(8), offset_mm: length(0.25) }, { face: "A", along_mm: length(8), offset_mm: length(0.125) }, { face: "B", along_mm: 0, offset_mm: -length(0.25) }] },
        tolerance: { kind: "rule", rule: "aci-117-90" },
      })));
    const typed = asked((inch) => inches(`${inch}"`));
    const metric = asked((inch) => inch * 25.4);
    expect(typed).toEqual(metric);
    // By hand: B leans (-1/4 + 1/16) x 132 / 120 = -0.20625 in. in x, A (3/16 - 1/32) x 132 / 120 = 0.171875 in. in y.
    expect(typed.leanX / 25.4).toBeCloseTo(-0.20625, 9);
    expect(typed.leanY / 25.4).toBeCloseTo(0.171875, 9);
  });
});

describe("which way to knock", () => {
  it("is against the lean, by the lean at the top of the form, with the prop on the side it leans to", () => {
    const still: Standing = { x: 0, y: 0, across: 0, along: 0 };
    const size = { width: 500, depth: 400 };
    const { knocks, corners } = valueOf(plumbWorking(inputOf(size, level(0, still, size, false), level(1700, { ...still, x: 6, y: -4 }, size, false))));
    expect(knocks).toEqual([{ towards: "D", by: expect.closeTo(12, 6) as number, propOn: "B" }, { towards: "A", by: expect.closeTo(8, 6) as number, propOn: "C" }]);
    for (const { x, y } of corners) expect([x, y]).toEqual([expect.closeTo(-12, 6), expect.closeTo(8, 6)]);
  });
  it("brings every corner of the top back over its foot, twist and all", () =>
    fc.assert(
      fc.property(sizes, between(-40, 40), between(-40, 40), turns, (size, x, y, turn) => {
        const still: Standing = { x: 0, y: 0, across: 0, along: 0 };
        const head: Standing = { x, y, across: turn, along: turn };
        const { corners } = valueOf(plumbWorking(inputOf(size, level(0, still, size, true), level(3400, head, size, true))));
        for (const [name, right, up] of [["AB", 1, 1], ["BC", 1, -1], ["CD", -1, -1], ["DA", -1, 1]] as const) {
          const [from, to] = [cornerOf(head, size, right, up), cornerOf(still, size, right, up)];
          const move = corners.find(({ corner }) => corner === name);
          expect(Math.hypot(to[0] - from[0] - (move?.x ?? NaN), to[1] - from[1] - (move?.y ?? NaN))).toBeLessThan(0.7);
        }
      }),
    ));
});
