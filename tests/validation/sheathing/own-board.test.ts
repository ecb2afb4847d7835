/** A board by its supplier's values per metre of width, worked by hand from the two-span coefficients 1/8, 5/8, 1/185 (beam tables, from memory). */
import { describe, expect, it } from "vitest";
import { sheathingInput } from "#lib/contracts/workings/sheathing.ts";
import { sheathingWorking } from "#lib/trade/engineering/workings/sheathing.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

const board = { kind: "own", bending_stiffness_kN_m2_per_m: 3.1, moment_capacity_kN_m_per_m: 0.7, shear_capacity_kN_per_m: 9.5 } as const;
const strip = { board, pressure_kPa: 60, centres_mm: 300, spans: 2, support_width_mm: 50, overhang_mm: 100, deflection_ratio: 270 } as const;
const used = (change: object) => {
  const { uses, ...rest } = valueOf(sheathingWorking(sheathingInput.parse({ ...strip, ...change })));
  return { ...rest, bending: uses[0], shear: uses[1], deflection: uses[2] };
};

describe("a board of one's own", () => {
  it("60 kPa over two spans of 300 mm, timbers 50 mm wide, 100 mm beyond the outer one", () => {
    const answer = used({});
    // M = 60 x 0.3^2 / 8 = 0.675, over the overhang 60 x 0.1^2 / 2 = 0.3 kN.m; of 0.7.
    expect(answer.bending?.utilisation).toBeCloseTo(0.675 / 0.7, 9);
    // V = 5/8 x 60 x 0.25 = 9.375, over the overhang 60 x (0.1 - 0.025) = 4.5 kN; of 9.5.
    expect(answer.shear?.utilisation).toBeCloseTo(9.375 / 9.5, 9);
    // d = 60 x 0.3^4 / (185 x 3.1) = 0.8474 mm, of 300 / 270 = 1.1111 mm.
    expect(answer.deflection?.utilisation).toBeCloseTo(0.486 / 573.5 / (0.3 / 270), 9);
    expect(answer).toMatchObject({ passes: true, governs: "shear" });
    expect(answer.allowedPressure).toBeCloseTo((60 * 9.5) / 9.375, 9);
  });
  it("turned by a quarter the same board has other values: EI 1.1, fZ 0.4, 7.5 kN/m fail in deflection before bending", () => {
    const answer = used({ board: { ...board, bending_stiffness_kN_m2_per_m: 1.1, moment_capacity_kN_m_per_m: 0.4, shear_capacity_kN_per_m: 7.5 } });
    expect(answer).toMatchObject({ passes: false, governs: "deflection" });
    // 0.486 / (185 x 1.1) = 2.388 mm of 1.111 mm; 0.675 / 0.4 = 1.6875.
    expect(answer.deflection?.utilisation).toBeCloseTo(0.486 / 203.5 / (0.3 / 270), 9);
    expect(answer.bending?.utilisation).toBeCloseTo(1.6875, 9);
  });
  it("an F22 board of I 255.7 mm4/mm and E 16000 N/mm2 (a supplier's table to AS/NZS 2269): EI 4.091 kN.m2/m, CASE-M21", () => {
    const stiffness = (16_000 * 255.7) / 1e6;
    expect(Math.abs(stiffness - 4.091)).toBeLessThanOrEqual(0.001);
    const answer = used({ board: { ...board, bending_stiffness_kN_m2_per_m: stiffness } });
    expect(answer.deflection?.utilisation).toBeCloseTo(0.486 / (185 * 4.0912) / (0.3 / 270), 9);
  });
  it("refuses timbers as wide as their centres, naming both", () => {
    const answer = sheathingWorking(sheathingInput.parse({ ...strip, centres_mm: 50 }));
    expect(answer.ok ? null : answer.failure.limit).toBe("centres of backing timbers (m)");
  });
});
