import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degC, kg, kN, m_per_h, mm, N_per_mm2 } from "#lib/kernel/units.ts";
import type { CubicCentimetres } from "#lib/trade/engineering/clamps/clamp-capacity.ts";
import { kN_m_per_m } from "#lib/trade/engineering/engineering-units.ts";
import { designShutter } from "#lib/trade/shutter/design-shutter.ts";
import { EXAMPLE_CLAMP_KINDS, EXAMPLE_MARK, EXAMPLE_POUR, EXAMPLE_RULE } from "#lib/trade/shutter/example-rule.ts";
import { quantities } from "#lib/trade/shutter/form-set.ts";
import type { ShutterInput } from "#lib/trade/shutter/form-set.ts";
import { anInput, formSetOf, inputs, rectangular } from "./shutter-inputs.ts";

const gapsOf = (heights: readonly number[]) => heights.slice(1).map((height, index) => height - (heights[index] ?? 0));
const failureOf = (input: ShutterInput) => {
  const answer = designShutter(input);
  return answer.ok ? null : answer.failure;
};

describe("an accepted form set", () => {
  it("passes every check, keeps the clamp rule, and its clamps hold the whole load; else it is a refusal with a reason", () =>
    fc.assert(
      fc.property(inputs, (input) => {
        const answer = designShutter(input);
        if (!answer.ok) {
          expect(answer.failure.message).toContain(answer.failure.limit);
          expect(answer.failure.quantities?.volume).toBeGreaterThan(0);
          return;
        }
        const { checks, clamps, formHeight, pressure, section } = answer.value;
        const { module, firstMin, firstMax, topMax, smallestGap, largestGap } = input.rule.clampSpacing;
        expect(checks).toHaveLength(14);
        checks.forEach((check) => expect(check.utilisation).toBeLessThanOrEqual(1));
        const [first = 0, last = 0] = [clamps.heights[0], clamps.heights.at(-1)];
        expect(first).toBeGreaterThanOrEqual(firstMin);
        expect(first).toBeLessThanOrEqual(firstMax);
        expect(formHeight - last).toBeLessThanOrEqual(topMax);
        expect(last).toBeLessThanOrEqual(formHeight);
        clamps.heights.forEach((height) => expect(height % module).toBe(0));
        gapsOf(clamps.heights).forEach((gap) => expect([gap >= smallestGap, gap <= largestGap]).toEqual([true, true]));
        const load = pressure.limit * (pressure.pourHeight - pressure.liquidDepth / 2);
        const held = (pick: "facesAC" | "facesBD") => clamps.forces.reduce((sum, force) => sum + force[pick], 0);
        expect(held("facesAC") / ((load * section.width) / 1000)).toBeCloseTo(1, 9);
        expect(held("facesBD") / ((load * section.depth) / 1000)).toBeCloseTo(1, 9);
        expect(clamps.provenFewest).toBe(clamps.heights.length === clamps.lowerBound);
        expect(clamps.heights.length).toBeGreaterThanOrEqual(clamps.lowerBound);
      }),
      { numRuns: 300 },
    ));
  it("is plain data: it and its input survive JSON, and the same input gives the same answer", () => {
    const input = anInput();
    const again: ShutterInput = JSON.parse(JSON.stringify(input));
    expect(again).toEqual(input);
    const set = formSetOf(input);
    expect(JSON.parse(JSON.stringify(set))).toEqual(set);
    expect(formSetOf(again)).toEqual(set);
  });
  it("a square column in a joint without an over pair works both pairs of faces alike", () => {
    const set = formSetOf(anInput({ section: rectangular(475, 475) }, { joint: "pinwheel" }));
    set.clamps.forces.forEach((force) => expect(force.facesAC).toBe(force.facesBD));
    const uses = (pair: string) => set.checks.filter((check) => check.faces === pair).map((check) => check.utilisation);
    uses("A-C").forEach((use, index) => expect(use).toBeCloseTo(uses("B-D")[index] ?? 0, 12));
  });
  it("turning column and over pair together turns the answer and nothing else", () => {
    const one = formSetOf(anInput({ section: rectangular(325, 575) }, { overPair: "A-C" }));
    const other = formSetOf(anInput({ section: rectangular(575, 325) }, { overPair: "B-D" }));
    expect(other.clamps.heights).toEqual(one.clamps.heights);
    expect(other.panels.map((panel) => panel.width)).toEqual([575, 361, 575, 361]);
    expect(one.panels.map((panel) => panel.width)).toEqual([361, 575, 361, 575]);
    expect(other.weight).toBeCloseTo(one.weight, 9);
  });
  it("holds every clamp to what its hirer lists for the span, to its arm and to its wedges", () => {
    // 450 mm of concrete, 18 mm ply, 95 mm timber on edge: 676 mm between the wedges, so the line of 700 mm counts.
    const stated = { capacityBySpan: [{ span: mm(500), load: kN(23) }, { span: mm(700), load: kN(15) }], arm: { sectionModulus: 40 as CubicCentimetres, stress: N_per_mm2(160) }, wedgeCapacity: kN(9) };
    const kinds = EXAMPLE_CLAMP_KINDS.slice(0, 1).map((kind) => ({ ...kind, ...stated }));
    const { plan, clamps, checks } = formSetOf(anInput({ section: rectangular(450, 450), clampKinds: kinds }, { joint: "pinwheel", backing: { ...EXAMPLE_RULE.backing, orientation: "edge" } }));
    expect(plan.outsideBacking.w).toBe(450 + 2 * 18 + 2 * 95);
    const capacity = (element: string) => checks.find((check) => check.element === element)?.capacity;
    expect([capacity("clamp"), capacity("arm"), capacity("wedge")]).toEqual([15, 6.4, 9]);
    const largest = Math.max(...clamps.forces.map(({ facesAC }) => facesAC));
    // Arm: F (2 × 0.676 − 0.450) / 8 of 6.4 kN·m; wedge: F / 2 of 9 kN; side: F of 15 kN.
    const use = Math.max(largest / 15, (largest * (2 * 0.676 - 0.45)) / 8 / 6.4, largest / 2 / 9);
    expect(Math.max(...clamps.forces.map(({ utilisation }) => utilisation))).toBeCloseTo(use, 9);
    expect(largest).toBeLessThanOrEqual(15);
  });
  it("weights, area and volume by hand: 450 × 450 × 2.4 m", () => {
    const set = formSetOf(anInput({ section: rectangular(450, 450), formHeight: mm(2400) }, { baseCleats: false, jointCleats: false }));
    expect(set.quantities.contactArea).toBeCloseTo(4 * 0.45 * 2.4, 9);
    expect(set.quantities.volume).toBeCloseTo(0.45 * 0.45 * 2.4, 9);
    const panel = set.panels[1];
    expect(panel?.weight).toBeCloseTo(0.45 * 2.4 * 0.018 * 650 + (panel?.timberCount ?? 0) * 2.4 * 0.095 * 0.047 * 480, 6);
  });
  it("prints its working with a source on every line, from pressure to uplift", () => {
    const { working } = formSetOf(anInput());
    expect(working.map((line) => line.title)).toHaveLength(6);
    working.forEach((line) => expect([line.formula, line.source].every((text) => text.length > 3) && line.inputs.length > 0).toBe(true));
  });
  it("tells what concrete under the foot would lift, for each joint: 430 × 520, ply 18, 25 kN/m3, 3 m of head: 75 × (0.466 × 0.556 − 0.43 × 0.52) kN", () => {
    for (const joint of ["two-over", "pinwheel"] as const) {
      const set = formSetOf(anInput({ section: rectangular(430, 520), formHeight: mm(3000), pour: { ...EXAMPLE_POUR, pourHeight: null } }, { joint }));
      expect(set.working.at(-1)?.result.value).toBeCloseTo(75 * (0.466 * 0.556 - 0.43 * 0.52), 9);
    }
  });
  it("warns: heavy panel, long timber, wide panel, example figures, partial pour", () => {
    const codes = (input: ShutterInput) => formSetOf(input).warnings.map((warning) => warning.code);
    expect(codes(anInput({ section: rectangular(600, 1250), formHeight: mm(5000), clampKinds: EXAMPLE_CLAMP_KINDS.map((kind) => ({ ...kind, maxSize: mm(2000), sideCapacity: kN(90) })) }))).toEqual(
      expect.arrayContaining(["heavy-panel", "joint-in-backing", "vertical-ply-joint", "example-figures"]),
    );
    expect(codes(anInput({ pour: { ...EXAMPLE_POUR, pourHeight: mm(2800) } }))).toContain("pour-below-form");
    const own = { ...anInput(), rule: { ...EXAMPLE_RULE, twoPersonLift: kg(90), ply: { ...EXAMPLE_RULE.ply, source: "declared" }, backing: { ...EXAMPLE_RULE.backing, source: "graded" } }, clampKinds: EXAMPLE_CLAMP_KINDS.map((kind) => ({ ...kind, source: "hirer's sheet" })) };
    expect(codes(own)).not.toContain("example-figures");
    expect(codes(own)).not.toContain("heavy-panel");
  });
  it("marks every example figure as one to be replaced", () =>
    [EXAMPLE_RULE.ply.source, EXAMPLE_RULE.backing.source, ...EXAMPLE_CLAMP_KINDS.map((kind) => kind.source)].forEach((source) => {
      expect(source.startsWith(EXAMPLE_MARK)).toBe(true);
      expect(source).toContain("replace");
    }));
});

describe("refusals name the limit and keep area and volume", () => {
  it("a round section: a timber-and-clamp box does not serve", () => {
    const failure = failureOf(anInput({ section: { shape: "round", diameter: mm(520) } }));
    expect(failure?.kind).toBe("round-section");
    expect(failure?.message).toContain("does not serve");
    expect(failure?.quantities?.contactArea).toBeCloseTo(Math.PI * 0.52 * 3.15, 9);
    expect(failure?.quantities?.volume).toBeCloseTo((Math.PI / 4) * 0.52 ** 2 * 3.15, 9);
  });
  it.each([
    ["edge timbers prouder than the ply", anInput({}, { edgeProud: mm(19) }), "invalid-input"],
    ["a side under 100 mm", anInput({ section: rectangular(80, 400) }), "invalid-input"],
    ["no height", anInput({ formHeight: mm(0) }), "invalid-input"],
    ["no timber stress", anInput({}, { backing: { ...EXAMPLE_RULE.backing, bendingStress: N_per_mm2(0) } }), "invalid-input"],
    ["a height that is no number", anInput({ formHeight: mm(Number.NaN) }), "invalid-input"],
    ["cold concrete by formula", anInput({ pour: { ...EXAMPLE_POUR, method: "ciria-108", temperature: degC(1) } }), "pressure-limit"],
    ["a column too large for any clamp", anInput({ section: rectangular(400, 1800) }), "no-clamp-fits"],
    ["no clamps kept", anInput({ clampKinds: [] }), "no-clamp-fits"],
    ["clamps too weak", anInput({ clampKinds: EXAMPLE_CLAMP_KINDS.map((kind) => ({ ...kind, sideCapacity: kN(2) })) }), "no-clamp-layout"],
    ["a first clamp between two steps of the module", anInput({}, { clampSpacing: { ...EXAMPLE_RULE.clampSpacing, firstMin: mm(110), firstMax: mm(120) } }), "no-clamp-layout"],
    ["a top clamp between two steps of the module", anInput({ formHeight: mm(3140) }, { clampSpacing: { ...EXAMPLE_RULE.clampSpacing, topMax: mm(10) } }), "no-clamp-layout"],
    ["clamp gaps that no bar could be wedged in", anInput({}, { clampSpacing: { ...EXAMPLE_RULE.clampSpacing, smallestGap: mm(5), module: mm(1) } }), "invalid-input"],
    ["a slump that is no number", anInput({ pour: { ...EXAMPLE_POUR, slump: mm(Number.NaN) } }), "pressure-limit"],
    ["ply too weak", anInput({}, { ply: { ...EXAMPLE_RULE.ply, momentCapacity: kN_m_per_m(0.001) } }), "ply-span"],
  ] as const)("%s", (_, input, kind) => {
    const failure = failureOf(input);
    expect(failure?.kind).toBe(kind);
    expect(failure?.message).toContain(failure?.limit);
    if (input.formHeight > 0) expect(failure?.quantities).not.toBeNull();
  });
  it("a smaller column than two timbers' width is refused, not drawn with timbers through each other", () => {
    expect(failureOf(anInput({ section: rectangular(180, 180) }, { backing: { ...EXAMPLE_RULE.backing, orientation: "flat" }, joint: "fillet-corner" }))?.kind).toMatch(/ply-span|no-clamp-fits/);
  });
});

describe("common practice, no source", () => {
  it("18 mm ply on a 200 mm column: two faces at 200, two at 236", () => {
    const kinds = EXAMPLE_CLAMP_KINDS.map((kind) => ({ ...kind, minSize: mm(200) }));
    expect(formSetOf(anInput({ section: rectangular(200, 200), clampKinds: kinds })).panels.map((panel) => panel.width)).toEqual([236, 200, 236, 200]);
  });
  it("17 mm ply on a 600 mm column: two of 600, two of 634", () => {
    expect(formSetOf(anInput({ section: rectangular(600, 600) }, { ply: { ...EXAMPLE_RULE.ply, thickness: mm(17) } })).panels.map((panel) => panel.width)).toEqual([634, 600, 634, 600]);
  });
  it("3 m column, timbers flat, heavy clamp: clamps at about 500 mm up to half height (400 to 600), wider above", () => {
    const rule = { backing: { ...EXAMPLE_RULE.backing, orientation: "flat" as const }, clampSpacing: { ...EXAMPLE_RULE.clampSpacing, largestGap: mm(750) } };
    const clampKinds = EXAMPLE_CLAMP_KINDS.map((kind) => ({ ...kind, sideCapacity: kN(80) }));
    for (const side of [300, 350, 400, 450]) {
      const { heights } = formSetOf(anInput({ section: rectangular(side, side), formHeight: mm(3000), clampKinds, pour: { ...EXAMPLE_POUR, method: "aci-347-si", riseRate: m_per_h(2) } }, rule)).clamps;
      const lower = gapsOf(heights.filter((height) => height <= 1500));
      const upper = gapsOf(heights.filter((height) => height >= 1200));
      lower.forEach((gap) => expect([gap >= 400, gap <= 600]).toEqual([true, true]));
      expect(Math.max(...upper)).toBeGreaterThan(Math.max(...lower));
    }
  });
  it("600 × 600 × 3.0 m: 7.2 m2 and 1.08 m3 (arithmetic)", () => {
    const { contactArea, volume } = quantities(rectangular(600, 600), mm(3000));
    expect([contactArea, volume].map((value) => value.toFixed(4))).toEqual(["7.2000", "1.0800"]);
  });
});
