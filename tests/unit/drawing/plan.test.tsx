import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boundsOf, columnsOnAxis, neighbourOf, type PlanColumn } from "#app/_ui/drawing/level-plan/plan-model.ts";
import { bringIntoSight, fitView, toScreen, zoomAt } from "#app/_ui/drawing/level-plan/plan-view.ts";
import { spread } from "#app/_ui/drawing/sheet/spread.ts";

const at = (id: string, x_mm: number, y_mm: number): PlanColumn =>
  ({ id, name: id, x_mm, y_mm, shape: "rectangle", width_mm: 450, depth_mm: 450, done: 0, flagged: false });
const bay = 7000;
const grid = ["A", "B", "C"].flatMap((letter, i) => [1, 2, 3].map((number, j) => at(`${letter}${number}`, i * bay, j * bay)));
const find = (id: string): PlanColumn => grid.find((column) => column.id === id) ?? at("none", 0, 0);

describe("walking a level plan", () => {
  it("goes to the next column straight ahead", () => {
    expect(neighbourOf(grid, find("B2"), "right")?.id).toBe("C2");
    expect(neighbourOf(grid, find("B2"), "left")?.id).toBe("A2");
    expect(neighbourOf(grid, find("B2"), "up")?.id).toBe("B3");
    expect(neighbourOf(grid, find("B2"), "down")?.id).toBe("B1");
  });

  it("stays at the edge", () => {
    expect(neighbourOf(grid, find("A1"), "left")).toBeUndefined();
  });

  it("reaches a column set off its grid line", () => {
    expect(neighbourOf([...grid, at("off", 2 * bay + 900, 800)], find("C1"), "up")?.id).toBe("C2");
    expect(neighbourOf([...grid, at("off", 2 * bay + 900, 800)], find("C1"), "right")?.id).toBe("off");
    expect(neighbourOf([at("a", 0, 0), at("b", bay, 1200)], at("a", 0, 0), "right")?.id).toBe("b");
  });

  it("picks the columns a grid line cuts or nearly touches", () => {
    const near = at("near", bay + 400, 3500);
    const ids = columnsOnAxis([...grid, near], { name: "B", direction: "x", offset_mm: bay }).map(({ id }) => id);
    expect(ids).toEqual(["B1", "B2", "B3", "near"]);
  });
});

describe("looking at a level plan", () => {
  const frame = { width: 800, height: 500 };
  const bounds = boundsOf(grid, []);
  const fitted = fitView(bounds, frame);

  it("shows every column when fitted", () => {
    for (const { x_mm, y_mm } of grid) {
      const { x, y } = toScreen(fitted, frame, { x: x_mm, y: y_mm });
      expect(x > 40 && x < frame.width && y > 40 && y < frame.height).toBe(true);
    }
  });

  it("draws up the sheet what lies up the site", () => {
    expect(toScreen(fitted, frame, { x: 0, y: bay }).y).toBeLessThan(toScreen(fitted, frame, { x: 0, y: 0 }).y);
  });

  it("keeps the place under the fingers while zooming", () => {
    fc.assert(fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), fc.integer({ min: 0, max: 800 }), fc.integer({ min: 0, max: 500 }), (factor, px, py) => {
      const before = { x: fitted.x + (px - 400) / fitted.scale, y: fitted.y - (py - 250) / fitted.scale };
      const after = toScreen(zoomAt(fitted, frame, { x: px, y: py }, factor, fitted.scale), frame, before);
      expect(after.x).toBeCloseTo(px, 4);
      expect(after.y).toBeCloseTo(py, 4);
    }));
  });

  it("brings a column out of sight back into the frame", () => {
    const close = { ...fitted, scale: fitted.scale * 6 };
    const { x, y } = toScreen(bringIntoSight(close, frame, { x: 0, y: 0 }), frame, { x: 0, y: 0 });
    expect(x >= 40 && x <= frame.width && y >= 40 && y <= frame.height).toBe(true);
  });
});

describe("texts beside dimension lines", () => {
  it("stay where they are when there is room", () => {
    expect(spread([0, 20, 60], 14)).toEqual([0, 20, 60]);
  });

  it("give way evenly when crowded", () => {
    expect(spread([10, 10], 14)).toEqual([3, 17]);
  });

  it("never overlap, never change order, never leave the drawing that has room for them", () => {
    fc.assert(fc.property(fc.array(fc.double({ min: 0, max: 500, noNaN: true }), { minLength: 1, maxLength: 30 }), (wished) => {
      const places = spread([...wished].sort((a, b) => a - b), 14, 0, 500);
      for (const [index, place] of places.entries()) {
        const before = places[index - 1];
        if (before !== undefined) expect(place - before).toBeGreaterThanOrEqual(14 - 1e-9);
        expect(place >= -1e-9 && place <= 500 + 1e-9).toBe(true);
      }
    }));
  });
});
