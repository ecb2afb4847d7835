import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { keepTogether } from "#lib/trade/planning/reuse/keep-together.ts";
import { assign } from "#lib/trade/planning/reuse/assignment.ts";
import { checkReusePlan } from "#lib/trade/planning/reuse/check-reuse-plan.ts";
import { reuseNetwork } from "#lib/trade/planning/reuse/reuse-network.ts";
import { reusePlan } from "#lib/trade/planning/reuse/reuse-plan.ts";
import type { PanelDemand, ReuseOrder, ReusePanel } from "#lib/trade/planning/reuse/reuse-order.ts";
import { spreadUses } from "#lib/trade/planning/reuse/spread-uses.ts";

const FACES = ["A", "B", "C", "D"];
const size = (face: string) => ({ widthMm: face === "A" || face === "C" ? 536 : 500, heightMm: 3000, thicknessMm: 18, place: "site" });
const panelsOf = (set: string, uses: readonly number[]): ReusePanel[] => FACES.map((face, index) => ({ id: `${set} ${face}`, ...size(face), readyDay: 0, usesLeft: uses[index] ?? null, set }));
const facesOf = (column: string, startDay: number): PanelDemand[] => FACES.map((face) => ({ id: `${column} ${face}`, ...size(face), startDay, backDay: startDay + 3, mayTurn: false, set: column }));
const order = (panels: ReusePanel[], demands: PanelDemand[]): ReuseOrder => ({ panels, demands, newPerM2: 4000, recutEach: 500, newPanelUses: 8, carry: [] });

function planned(asked: ReuseOrder) {
  const network = reuseNetwork(asked);
  const free = assign(network.costs, network.columns);
  if (!free) throw new Error("A new panel is open to every face");
  const before = reusePlan(network, spreadUses(network, free.columnOf), 0);
  return { before, plan: reusePlan(network, keepTogether(network, spreadUses(network, free.columnOf)), 0) };
}
const setsOf = (plan: ReturnType<typeof planned>["plan"], column: string) =>
  [...new Set(plan.uses.flatMap(({ demandId, source }) => (demandId.startsWith(`${column} `) ? [source.kind === "panel" ? source.panelId.split(" ")[0] : source.kind === "after" ? source.demandId.split(" ")[0] : "new"] : [])))];

describe("sets that are alike", () => {
  it("stay together, though their panels have been used unevenly", () => {
    const asked = order([...panelsOf("S1", [5, 9, 2, 9]), ...panelsOf("S2", [6, 3, 7, 9])], [...facesOf("K/1", 1), ...facesOf("K/2", 1)]);
    const { before, plan } = planned(asked);
    expect(checkReusePlan(asked, plan)).toEqual([]);
    expect(["K/1", "K/2"].map((column) => setsOf(before, column).length)).toEqual([2, 2]);
    expect(["K/1", "K/2"].map((column) => setsOf(plan, column).length)).toEqual([1, 1]);
  });

  it("go on together from column to column", () => {
    const asked = order([...panelsOf("S1", [9, 8, 7, 6]), ...panelsOf("S2", [6, 7, 8, 9])], ["K/1", "K/2"].flatMap((column) => facesOf(column, 1)).concat(["K/3", "K/4"].flatMap((column) => facesOf(column, 9))));
    const { plan } = planned(asked);
    expect(["K/1", "K/2", "K/3", "K/4"].map((column) => setsOf(plan, column).length)).toEqual([1, 1, 1, 1]);
  });

  it("are split where a panel is used up", () => {
    const asked = order([...panelsOf("S1", [0, 5, 5, 5]), ...panelsOf("S2", [5, 5, 5, 0])], facesOf("K/1", 1));
    const { plan } = planned(asked);
    expect(plan.newPanels).toBe(0);
    expect(checkReusePlan(asked, plan)).toEqual([]);
    expect(setsOf(plan, "K/1")).toHaveLength(2);
  });
});

it("never costs more, never breaks a rule", () => {
  const uses = fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 4, maxLength: 4 });
  fc.assert(fc.property(fc.array(uses, { maxLength: 4 }), fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 6 }), (sets, days) => {
    const asked = order(sets.flatMap((each, index) => panelsOf(`S${index}`, each)), days.flatMap((day, index) => facesOf(`K/${index}`, day)));
    const { before, plan } = planned(asked);
    expect(checkReusePlan(asked, plan)).toEqual([]);
    expect(plan.cost).toBe(before.cost);
  }), { seed: 11, numRuns: 200 });
});
