import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degC, kN_per_m3, m_per_h, mm } from "#lib/kernel/units.ts";
import { CEMENT_GROUPS, PRESSURE_METHODS } from "#lib/trade/engineering/pour-conditions.ts";
import type { PourConditions } from "#lib/trade/engineering/pour-conditions.ts";
import { pressureAt, pressureEnvelope } from "#lib/trade/engineering/pressure-envelope.ts";

const pourOf = (change: Partial<PourConditions> = {}): PourConditions => ({
  method: "aci-347-si",
  concreteDensity: kN_per_m3(24.5),
  temperature: degC(17),
  riseRate: m_per_h(2.3),
  cement: "portland",
  retarder: false,
  slump: mm(130),
  vibrationDepth: mm(900),
  selfCompacting: false,
  externalVibration: false,
  placing: "from-top",
  pourHeight: null,
  ...change,
});
const form = { height: mm(3600), largestSide: mm(650) };

const pours = fc.record({
  method: fc.constantFrom(...PRESSURE_METHODS),
  concreteDensity: fc.double({ min: 18, max: 28, noNaN: true }).map(kN_per_m3),
  temperature: fc.double({ min: 5, max: 30, noNaN: true }).map(degC),
  riseRate: fc.double({ min: 0.1, max: 20, noNaN: true }).map(m_per_h),
  cement: fc.constantFrom(...CEMENT_GROUPS),
  retarder: fc.boolean(),
});
const limitOf = (pour: PourConditions, height: number) => {
  const answer = pressureEnvelope(pour, { height: mm(height), largestSide: mm(650) });
  if (!answer.ok) throw new Error(answer.failure.message);
  return answer.value;
};

describe("pressure envelope", () => {
  it("more height never lowers the pressure, at the foot or anywhere above it", () =>
    fc.assert(
      fc.property(pours, fc.integer({ min: 400, max: 9000 }), fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 0, max: 9000 }), (pour, height, more, at) => {
        const low = limitOf(pourOf(pour), height);
        const high = limitOf(pourOf(pour), height + more);
        expect(high.limit).toBeGreaterThanOrEqual(low.limit - 1e-9);
        expect(pressureAt(high, mm(at))).toBeGreaterThanOrEqual(pressureAt(low, mm(at)) - 1e-9);
      }),
    ));
  it("a faster or colder pour never lowers it", () =>
    fc.assert(
      fc.property(pours, fc.double({ min: 0, max: 5, noNaN: true }), (pour, more) => {
        const slow = limitOf(pourOf(pour), 5000).limit;
        expect(limitOf(pourOf({ ...pour, riseRate: m_per_h(pour.riseRate + more) }), 5000).limit).toBeGreaterThanOrEqual(slow - 1e-9);
        expect(limitOf(pourOf({ ...pour, temperature: degC(Math.max(5, pour.temperature - more)) }), 5000).limit).toBeGreaterThanOrEqual(slow - 1e-9);
      }),
    ));
  it("never goes over the liquid head, starts at 0 and never falls with depth", () =>
    fc.assert(
      fc.property(pours, fc.integer({ min: 400, max: 9000 }), (pour, height) => {
        const { points, limit, pourHeight } = limitOf(pourOf(pour), height);
        expect(points[0]).toEqual({ depth: 0, pressure: 0 });
        expect(points.at(-1)).toEqual({ depth: pourHeight, pressure: limit });
        expect(limit).toBeLessThanOrEqual(pour.concreteDensity * pourHeight + 1e-9);
        expect(points.every((point, index) => index === 0 || point.pressure >= (points[index - 1]?.pressure ?? 0))).toBe(true);
      }),
    ));
  it("both unit families of ACI 347 agree within half a per cent where neither steps", () =>
    fc.assert(
      fc.property(fc.double({ min: 1, max: 6, noNaN: true }), fc.double({ min: 6, max: 30, noNaN: true }), (rate, temperature) => {
        const pour = { riseRate: m_per_h(rate), temperature: degC(temperature), concreteDensity: kN_per_m3(23) };
        const si = limitOf(pourOf({ ...pour, method: "aci-347-si" }), 8000);
        const us = limitOf(pourOf({ ...pour, method: "aci-347-us" }), 8000);
        if (si.governs === "formula" && us.governs === "formula") expect(Math.abs(us.limit / si.limit - 1)).toBeLessThanOrEqual(0.005);
      }),
    ));
  it("a partial pour leaves the top of the form without pressure", () => {
    const envelope = limitOf(pourOf({ method: "full-head", pourHeight: mm(2150) }), 3600);
    expect([pressureAt(envelope, mm(2150)), pressureAt(envelope, mm(3000))]).toEqual([0, 0]);
    expect(pressureAt(envelope, mm(1050))).toBeCloseTo(24.5 * 1.1, 9);
  });
});

describe("CIRIA 108 from the pour's conditions, worked by hand at R 1.44 m/h (sqrt 1.2) and 20 degC (K 1)", () => {
  const pour = pourOf({ method: "ciria-108", riseRate: m_per_h(1.44), temperature: degC(20) });
  const limit = (change: Partial<PourConditions>, height: number, largestSide: number) => {
    const answer = pressureEnvelope({ ...pour, ...change }, { height: mm(height), largestSide: mm(largestSide) });
    return answer.ok ? answer.value.limit : null;
  };
  it("column: 24.5 (1.8 + 0.3 sqrt(4.05 - 1.8)) = 55.125 kPa", () => expect(limit({}, 4050, 2000)).toBeCloseTo(55.125, 9));
  it("a side over 2 m makes it a wall: 24.5 (1.2 + 0.3 sqrt(2.85)) kPa", () => expect(limit({}, 4050, 2001)).toBeCloseTo(24.5 * (1.2 + 0.3 * Math.sqrt(2.85)), 9));
  it("form and pour height are kept apart: a pour of 3 m in the same form keeps H = 4.05 m", () => expect(limit({ pourHeight: mm(3000) }, 4050, 2000)).toBeCloseTo(55.125, 9));
  it("a retarder makes C2 0.45: 24.5 (1.8 + 0.45 x 1.5) = 60.6375 kPa", () => expect(limit({ retarder: true }, 4050, 600)).toBeCloseTo(60.6375, 9));
});

describe("limits are code", () => {
  const refused = (change: Partial<PourConditions>, size = form) => {
    const answer = pressureEnvelope(pourOf(change), size);
    return answer.ok ? null : answer.failure;
  };
  it.each([
    ["concrete at 3 degC by ACI 347", { temperature: degC(3) }, form, "temperature", 3],
    ["concrete at 35 degC by ACI 347", { temperature: degC(35) }, form, "temperature", 35],
    ["concrete at 2 degC by CIRIA 108", { method: "ciria-108", temperature: degC(2) }, form, "temperature", 2],
    ["self-compacting concrete by CIRIA 108", { method: "ciria-108", selfCompacting: true }, form, "concrete", "self-compacting"],
    ["pumping from the base by a formula", { placing: "pumped-from-base" }, form, "placing", "pumped from the base"],
    ["external vibration by a formula", { externalVibration: true }, form, "vibration", "external"],
    ["a pour over its form", { pourHeight: mm(3601) }, form, "pour height", 3601],
    ["no rise rate", { riseRate: m_per_h(0) }, form, "rise rate", 0],
    ["a density that is no concrete", { concreteDensity: kN_per_m3(2400) }, form, "density", 2400],
    ["a height that is no number", {}, { height: mm(Number.NaN), largestSide: mm(500) }, "form height", Number.NaN],
  ] as const)("refuses %s and names limit and value", (_, change, size, limit, given) => {
    const failure = refused(change, size);
    expect(failure?.limit).toContain(limit);
    expect(failure?.given).toBe(given);
    expect(failure?.message).toContain(failure?.allowed ?? "absent");
    expect(failure?.source).not.toBe("");
  });
  it.each([{ slump: mm(180) }, { vibrationDepth: mm(1250) }, { selfCompacting: true }])("ACI 347 answers %o with the full head and says why", (change) => {
    const envelope = limitOf(pourOf(change), 3600);
    expect(envelope.limit).toBeCloseTo(24.5 * 3.6, 9);
    expect(envelope.governs).toBe("liquid head");
    expect(envelope.working[0]?.steps[0]?.name).toContain("full head");
  });
  it("the bounds themselves still pass", () => {
    expect(refused({ slump: mm(175), vibrationDepth: mm(1200) }, { height: mm(3600), largestSide: mm(2000) })).toBeNull();
  });
  it("pumping from the base adds a quarter to the head", () => expect(limitOf(pourOf({ method: "full-head", placing: "pumped-from-base" }), 3600).limit).toBeCloseTo(1.25 * 24.5 * 3.6, 9));
  it("shows the edition with every answer", () => PRESSURE_METHODS.forEach((method) => expect(limitOf(pourOf({ method }), 3600).edition).not.toBe("")));
});
