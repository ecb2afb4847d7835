/** The example in each formula's comment, worked by hand from its inputs. */
import { describe, expect, it } from "vitest";
import { degC, kN, kN_m, kN_per_m, kN_per_m3, kPa, m, m2, m_per_h, mm, N_per_mm2 } from "#lib/kernel/units.ts";
import type { Result } from "#lib/kernel/result.ts";
import { aciUnitWeightCoefficientSi, aciUnitWeightCoefficientUs } from "#lib/trade/engineering/pressure/aci-347-coefficients.ts";
import { aciColumnPressureSi, aciColumnPressureUs } from "#lib/trade/engineering/pressure/aci-347-column.ts";
import { timberCapacity, widestTimberShare } from "#lib/trade/engineering/backing/timber-capacity.ts";
import { ciriaPressure, ciriaTemperatureCoefficient } from "#lib/trade/engineering/pressure/ciria-108.ts";
import { clampDemands } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import { degF, ft, ft_per_h, kN_m2, kN_m2_per_m, kN_m_per_m, pcf } from "#lib/trade/engineering/engineering-units.ts";
import type { PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import { pressureAt } from "#lib/trade/engineering/pressure-envelope.ts";
import { footUplift } from "#lib/trade/engineering/pressure/resultant.ts";
import { fullHead } from "#lib/trade/engineering/pressure/full-head.ts";
import { sheathing } from "#lib/trade/engineering/sheathing/sheathing.ts";
import { allowableSpans, spanActions, spanAtDeflection, spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";

function valueOf<T, F extends { message: string }>(answer: Result<T, F>): T {
  if (!answer.ok) throw new Error(answer.failure.message);
  return answer.value;
}
const envelopeOf = (change: Partial<PressureEnvelope>): PressureEnvelope => ({
  method: "full-head", edition: "by hand", valueKind: "service", withdrawn: false, points: [], pourHeight: m(1), limit: kPa(1), liquidDepth: m(1), governs: "liquid head", working: [], ...change,
});

describe("worked examples in the comments", () => {
  it("ACI 347", () => {
    expect(aciUnitWeightCoefficientUs(pcf(120))).toBeCloseTo(0.9138, 4);
    expect(aciUnitWeightCoefficientSi(kN_per_m3(25))).toBeCloseTo(1.0988, 4);
    expect(valueOf(aciColumnPressureUs({ riseRate: ft_per_h(6.3), temperature: degF(57), density: pcf(148), pourHeight: ft(11.5), chemistry: 1.2 })).limit).toBeCloseTo(1373.7, 1);
    expect(valueOf(aciColumnPressureSi({ riseRate: m_per_h(2.3), temperature: degC(17), density: kN_per_m3(23.5), pourHeight: m(3.6), chemistry: 1.2 })).limit).toBeCloseTo(70.9, 2);
  });
  it("CIRIA 108", () => {
    expect(ciriaTemperatureCoefficient(degC(12.5))).toBeCloseTo(1.5956, 4);
    const answer = ciriaPressure({ density: kN_per_m3(24.5), shape: 1.5, material: 0.45, riseRate: m_per_h(1.7), temperature: degC(13), formHeight: m(4.3), pourHeight: m(4.1) });
    expect(valueOf(answer).limit).toBeCloseTo(73.93, 2);
  });
  it("head and envelope", () => {
    expect(fullHead(kN_per_m3(24.6), m(3.35), false).limit).toBeCloseTo(82.41, 2);
    expect(footUplift(kPa(80.4), m2(0.466 * 0.556 - 0.43 * 0.52))).toBeCloseTo(2.854, 3);
    expect(pressureAt(envelopeOf({ pourHeight: m(3.6), limit: kPa(70.9), liquidDepth: m(2.9) }), mm(1450))).toBeCloseTo(52.56, 2);
  });
  it("spans", () => {
    const actions = spanActions({ coefficients: spanCoefficients(3), load: kN_per_m(68.4), span: m(0.231), shearSpan: m(0.146), stiffness: kN_m2(2.9) });
    expect([actions.moment.toFixed(4), actions.shear.toFixed(3), (actions.deflection * 1000).toFixed(3)]).toEqual(["0.3650", "5.992", "0.463"]);
    const spans = allowableSpans({ coefficients: spanCoefficients(3), load: kN_per_m(12.7), momentCapacity: kN_m(1.93), shearCapacity: kN(11.6), stiffness: kN_m2(97), ratio: 270, shearRelief: m(0) });
    expect([spans.bending.toFixed(3), spans.shear.toFixed(3), spans.deflection.toFixed(3)]).toEqual(["1.233", "1.522", "1.601"]);
    expect(spans.governing).toBe(spans.bending);
    expect(spanAtDeflection({ coefficients: spanCoefficients(3), load: kN_per_m(12.7), stiffness: kN_m2(97), deflection: m(0.0016) })).toBeCloseTo(1.154, 3);
  });
  it("board", () => {
    const board = { bendingStiffness: kN_m2_per_m(2.9), momentCapacity: kN_m_per_m(0.46), shearCapacity: kN_per_m(6.9) };
    const answer = valueOf(sheathing({ board, pressure: kPa(68.4), centres: m(0.231), spans: 3, supportWidth: m(0.085), overhang: m(0.042), ratio: 270 }));
    expect([answer.bendingUse.toFixed(3), answer.shearUse.toFixed(3), answer.deflectionUse.toFixed(3)]).toEqual(["0.793", "0.868", "0.541"]);
    expect(answer.use).toBe(answer.shearUse);
  });
  it("a board far beyond its outer timber is worked by the overhang: 68.4 x 0.13^2 / 2 = 0.578 kN.m, 68.4 x (0.13 - 0.0425) = 5.985 kN", () => {
    const board = { bendingStiffness: kN_m2_per_m(2.9), momentCapacity: kN_m_per_m(0.46), shearCapacity: kN_per_m(6.9) };
    const answer = valueOf(sheathing({ board, pressure: kPa(68.4), centres: m(0.2), spans: 3, supportWidth: m(0.085), overhang: m(0.13), ratio: 270 }));
    expect([answer.moment.toFixed(3), answer.shear.toFixed(3)]).toEqual(["0.578", "5.985"]);
  });
  it("board refusals: no values, timbers that touch", () => {
    const board = { bendingStiffness: kN_m2_per_m(2.9), momentCapacity: kN_m_per_m(0.46), shearCapacity: kN_per_m(6.9) };
    const given = { board, pressure: kPa(50), centres: m(0.2), spans: 2, supportWidth: m(0.09), overhang: m(0), ratio: 270 };
    expect(sheathing({ ...given, board: { ...board, shearCapacity: kN_per_m(0) } }).ok).toBe(false);
    expect(sheathing({ ...given, centres: m(0.09) }).ok).toBe(false);
  });
  it("backing timber", () => {
    const section = { breadth: mm(94), depth: mm(44), modulus: N_per_mm2(7300), bendingStress: N_per_mm2(11.2), shearStress: N_per_mm2(2) };
    const { moment, shear, stiffness } = valueOf(timberCapacity(section));
    expect([moment.toFixed(4), shear.toFixed(3), stiffness.toFixed(3)]).toEqual(["0.3397", "5.515", "4.871"]);
    expect(timberCapacity({ ...section, shearStress: N_per_mm2(0) }).ok).toBe(false);
    expect(valueOf(widestTimberShare([m(-0.21), m(0), m(0.21)], m(0.42)))).toBeCloseTo(0.2625, 9);
    expect(widestTimberShare([m(0)], m(0.42)).ok).toBe(false);
  });
  it("clamps", () => {
    const even = envelopeOf({ points: [{ depth: m(0), pressure: kPa(40) }, { depth: m(2.6), pressure: kPa(40) }], pourHeight: m(2.6), limit: kPa(40), liquidDepth: m(1e-9) });
    const demands = valueOf(clampDemands(even, mm(2600), [mm(0), mm(1300), mm(2600)], m(0.05)));
    expect(demands.moment.value).toBeCloseTo(8.45, 9);
    expect(demands.moment.at).toBe(1300);
    expect(demands.reactions[1]).toBeCloseTo(65, 9);
    expect(demands.shear.value).toBeCloseTo(30.5, 9);
    expect(clampDemands(even, mm(2600), [mm(900)], m(0.05)).ok).toBe(false);
  });
  it("a clamp never pulls: high over a low pour it carries nothing", () => {
    const low = envelopeOf({ points: [{ depth: m(0), pressure: kPa(0) }, { depth: m(1), pressure: kPa(25) }], pourHeight: m(1), limit: kPa(25) });
    const { reactions } = valueOf(clampDemands(low, mm(3000), [mm(150), mm(600), mm(1600), mm(2800)], m(0.05)));
    expect(Math.min(...reactions)).toBe(0);
    expect(reactions.reduce((sum, reaction) => sum + reaction, 0)).toBeCloseTo(12.5, 9);
  });
});
