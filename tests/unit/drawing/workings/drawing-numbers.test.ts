import { describe, expect, it } from "vitest";
import { elevationNumbers, shadeOf } from "#app/_ui/drawing/workings/pressure/clamp-elevation-numbers.ts";
import { envelopeNumbers } from "#app/_ui/drawing/workings/pressure/envelope-numbers.ts";
import { beamLine } from "#app/_ui/drawing/workings/timber/beam-numbers.ts";
import { stripNumbers } from "#app/_ui/drawing/workings/timber/strip-numbers.ts";
import { curveNumbers } from "#app/_ui/drawing/workings/time/curve-numbers.ts";
import { linear, roundSteps } from "#app/_ui/drawing/workings/scale.ts";

/** Every expected place is worked out beside it by proportion; sizes are invented and uneven. */
describe("a scale", () => {
  it("goes straight from one end to the other", () => {
    const toX = linear(0, 40, 100, 500);
    expect([toX(0), toX(10), toX(40)]).toEqual([100, 100 + (10 / 40) * 400, 500]);
  });
  it("steps by 1, 2 or 5 of a decade, ends within what is shown", () => {
    expect(roundSteps(0, 94, 5)).toEqual([0, 20, 40, 60, 80]);
    expect(roundSteps(-3, 7, 5)).toEqual([-2, 0, 2, 4, 6]);
    expect(roundSteps(0, 0.42, 5)).toEqual([0, 0.1, 0.2, 0.3, 0.4]);
  });
});

describe("the pressure envelope", () => {
  const points = [{ depth_m: 0, pressure_kPa: 0 }, { depth_m: 2, pressure_kPa: 50 }, { depth_m: 3.2, pressure_kPa: 50 }];
  const numbers = envelopeNumbers({ points, pourHeightMm: 3200, formHeightMm: 4000, density: 25 }, { left: 100, right: 500, top: 0, foot: 400 });
  it("puts every corner at its height and pressure", () => {
    // 4000 mm on 400 px: 0.1 px to a mm. Liquid head 25 x 3.2 = 80 kPa on 400 px: 5 px to a kPa.
    expect(numbers.corners.map(({ x, y }) => [x, y])).toEqual([[100, 400 - 320], [100 + 50 * 5, 400 - 120], [350, 400]]);
    expect(numbers.corners.map(({ heightMm }) => heightMm)).toEqual([3200, 1200, 0]);
  });
  it("draws the liquid head only where the method allows less", () => {
    expect(numbers.headFoot).toEqual({ x: 500, y: 400 });
    const full = [{ depth_m: 0, pressure_kPa: 0 }, { depth_m: 3.2, pressure_kPa: 80 }];
    expect(envelopeNumbers({ points: full, pourHeightMm: 3200, formHeightMm: 4000, density: 25 }, { left: 100, right: 500, top: 0, foot: 400 }).headFoot).toBeNull();
  });
});

describe("the elevation with its clamps", () => {
  const given = { formHeightMm: 3000, sideMm: 450, wedgeSpanMm: 700, clamps: [{ height_mm: 150, utilisation: 0.8 }, { height_mm: 1200, utilisation: 1.3 }] };
  it("has one scale up and across", () => {
    const { scale, face, bars } = elevationNumbers(given, { left: 50, top: 20, foot: 470, mostWide: 900 });
    // 450 px for 3000 mm
    expect(scale).toBeCloseTo(0.15, 12);
    expect(face.width / face.height).toBeCloseTo(450 / 3000, 12);
    expect(bars[0]?.width).toBeCloseTo(700 * 0.15, 12);
    expect(bars.map(({ y, height }) => y + height / 2)).toEqual([470 - 150 * 0.15, 470 - 1200 * 0.15]);
  });
  it("gives way where the form is wider than there is room", () => {
    expect(elevationNumbers(given, { left: 50, top: 20, foot: 470, mostWide: 70 }).scale).toBeCloseTo(0.1, 12);
  });
  it("shades a bar deeper the harder it works, and no deeper beyond its limit", () => {
    expect([0, 0.4, 1, 2].map(shadeOf)).toEqual([0.15, 0.49, 1, 1]);
  });
});

describe("the strip over its supports", () => {
  it("lays supports at their centres", () => {
    // From -40 (overhang) to 3 x 250 + 20 = 770: 810 mm on 810 px.
    const { supports, from, to } = stripNumbers({ spans: 3, centresMm: 250, supportWidthMm: 40, overhangMm: 40 }, 0, 810);
    expect([from, to]).toEqual([0, 790]);
    expect(supports.map(({ x, width }) => [x, width])).toEqual([[20, 40], [270, 40], [520, 40], [770, 40]]);
  });
});

describe("a line along the beam", () => {
  it("has zero in the middle, and its largest size at the edge, with its sign", () => {
    const samples = [{ at_mm: 0, moment_kN_m: 0, shear_kN: 0, deflection_mm: 0 }, { at_mm: 500, moment_kN_m: 1.5, shear_kN: 0, deflection_mm: 0 }, { at_mm: 1000, moment_kN_m: -3, shear_kN: 0, deflection_mm: 0 }];
    const { zero, points, peak } = beamLine(samples, ({ moment_kN_m }) => moment_kN_m, linear(0, 1000, 300, 100), 0, 120);
    expect(zero).toBe(60);
    expect(points.map(({ x, y }) => [x, y])).toEqual([[60, 300], [90, 200], [0, 100]]);
    expect(peak).toMatchObject({ value: -3, atMm: 1000 });
  });
});

describe("the curve of what has been gathered", () => {
  const numbers = curveNumbers({ hourly: [10, null, 20, 18], progress: [5, 11, 18, 24], required: 20, earliestHours: 3.3 }, { left: 0, right: 400, curve: [200, 0], record: [300, 250] });
  it("marks the moment on the line of what is asked for", () => {
    // 4 h on 400 px; up to 1.05 x 24 = 25.2 on 200 px.
    expect(numbers.reached.x).toBeCloseTo(330, 9);
    expect(numbers.reached.y).toBeCloseTo(200 - (20 / 25.2) * 200, 9);
    expect(numbers.curve[2]?.y).toBeCloseTo(200 - (11 / 25.2) * 200, 9);
  });
  it("breaks the record at a gap", () => {
    expect(numbers.record.map((run) => run.map(({ x }) => x))).toEqual([[0, 100], [200, 300, 300, 400]]);
  });
});
