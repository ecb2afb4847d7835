/**
 * CIRIA Report 108, Concrete pressure on formwork, 1985.
 * CASE-M9, CASE-M10 and the table: computed from the published formula, not published figures.
 */
import { describe, expect, it } from "vitest";
import { degC, kN_per_m3, m, m_per_h } from "#lib/kernel/units.ts";
import { ciriaMaterialCoefficient, ciriaPressure, ciriaShapeCoefficient, ciriaTemperatureCoefficient } from "#lib/trade/engineering/pressure/ciria-108.ts";

const column = (rate: number, temperature: number, height: number, material: number) => {
  const answer = ciriaPressure({ density: kN_per_m3(25), shape: 1.5, material, riseRate: m_per_h(rate), temperature: degC(temperature), formHeight: m(height), pourHeight: m(height) });
  if (!answer.ok) throw new Error(answer.failure.message);
  return answer.value.limit;
};

describe("CIRIA Report 108", () => {
  it("CASE-M9: K from 5 to 30 degC within 0.001", () =>
    [2.939, 1.917, 1.349, 1.0, 0.771, 0.612].forEach((expected, index) => expect(Math.abs(ciriaTemperatureCoefficient(degC(5 + 5 * index)) - expected)).toBeLessThanOrEqual(0.001)));
  it("CASE-M10: R 3 m/h, 15 degC, 4 m, C2 0.45: 82.9 kPa within 0.1", () => expect(Math.abs(column(3, 15, 4, 0.45) - 82.9)).toBeLessThanOrEqual(0.1));
  it.each([
    [1, [72.3, 60.2, 53.5, 49.4, 46.6]],
    [2, [83.2, 72.7, 66.9, 63.3, 61.0]],
    [3, [91.0, 82.0, 76.9, 73.8, 71.8]],
  ])("table for a column of 4 m at R %d m/h, 5 to 25 degC, within 0.06 kPa", (rate, row) =>
    row.forEach((expected, index) => expect(Math.abs(column(rate, 5 + 5 * index, 4, 0.3) - expected)).toBeLessThanOrEqual(0.06)));
  it("liquid head alone where C1 sqrt(R) reaches the form height", () => expect(column(9, 15, 4, 0.3)).toBe(100));
  it("C1: column up to 2 m a side, wall beyond (coefficient sheet to the report)", () => {
    expect([ciriaShapeCoefficient(m(2)), ciriaShapeCoefficient(m(2.01))]).toEqual([1.5, 1.0]);
  });
  it("C2: 0.30 plain Portland, 0.45 retarded or blended, 0.60 both or heavily blended (grouping from memory)", () => {
    const row = (group: "portland" | "blend-low" | "blend-high") => [ciriaMaterialCoefficient(group, false), ciriaMaterialCoefficient(group, true)];
    expect([row("portland"), row("blend-low"), row("blend-high")]).toEqual([[0.3, 0.45], [0.45, 0.6], [0.6, 0.6]]);
  });
});
