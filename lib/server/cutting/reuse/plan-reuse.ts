import "server-only";
import type { z } from "zod";
import { projectInput } from "#lib/contracts/projects.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { ok, type Result } from "#lib/kernel/result.ts";
import type { PanelDemand, ReuseOrder, ReusePlan } from "#lib/trade/planning/reuse/reuse-order.ts";
import { columnForm } from "../../columns/column-form.ts";
import { readCuttingRule } from "../read-cutting-rule.ts";
import { worked } from "../planner.ts";
import type { Caller } from "../../gate/caller.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { listPanels } from "../../gear/panels/panel-store.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { projectHead, readRules } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { panelsAtHand, SITE, YARD } from "./panels-at-hand.ts";
import { reuseDays } from "./reuse-days.ts";
import { listComingLifts, type ComingLift } from "./reuse-store.ts";

/** Further ahead a plan would change before it is used. */
const MOST_COLUMNS = 150;
const LIMIT_MS = 6_000;

export type ReuseWanted = { readonly column: string; readonly columnId: string; readonly mark: string; readonly level: string; readonly face: string; readonly start: string; readonly widthMm: number; readonly heightMm: number };

/** Which panels the coming columns ask for, and which are at hand. */
export const getReuseOrder = projectUseCase("cutting.getReuseOrder", "gear.read", projectInput, async (scope) => {
  const project = await readProject(scope);
  const rules = readRules(project);
  const rule = readCuttingRule(project);
  const lifts = await listComingLifts(scope);
  const open = lifts.filter(({ done, hasSet }) => done === 0 && !hasSet);
  const coming = open.slice(0, MOST_COLUMNS);
  const days = reuseDays(coming, lifts, rules.progressRule.stripAfterHours);
  const clampKinds = await listClampKindRows(scope);
  const alike = groupBy(coming, (lift) => [lift.shape, lift.widthMm, lift.depthMm, lift.formHeightMm, lift.headedBy, lift.toLevel.id].join(" "));
  const formOf = new Map([...alike.values()].flatMap((same) => {
    const form = same[0] && columnForm(same[0], rules, clampKinds).formSet;
    return form ? same.map((lift) => [lift.id, form] as const) : [];
  }));
  const wanted: Record<string, ReuseWanted> = {};
  const thicknessMm = Math.round(rules.shutterRule.ply.thickness);
  const demands = coming.flatMap((lift): PanelDemand[] => {
    const form = formOf.get(lift.id);
    const span = days.spanOf(lift);
    if (!form?.ok || !span) return [];
    return form.value.panels.map(({ face, width, height }) => {
      const id = `${lift.id} ${face}`;
      const [widthMm, heightMm] = [Math.ceil(width - 1e-6), Math.ceil(height - 1e-6)];
      wanted[id] = { column: lift.gridRef, columnId: lift.id, mark: lift.mark.name, level: lift.fromLevel.name, face, start: span.said, widthMm, heightMm };
      return { id, widthMm, heightMm, thicknessMm, startDay: span.startDay, backDay: span.backDay, mayTurn: false, place: SITE };
    });
  });
  const rows = await listPanels(scope, { projectId: scope.projectId });
  const panels = panelsAtHand(rows, lifts, days, rule);
  const order: ReuseOrder = { panels, demands, newPerM2: pricePerM2(rule.sheets), recutEach: rule.recutEach, newPanelUses: rule.panelUses, carry: [{ from: SITE, to: YARD, each: rule.carryEach }] };
  const names = Object.fromEntries(rows.map(({ itemId, name, place }) => [itemId, { name, place }]));
  return ok({ project: projectHead(project), order, wanted, names, by: days.kind, source: rule.source, open: open.length, planned: coming.length, leftOut: leftOut(coming, wanted) });
});
export type ReuseTask = Extract<Awaited<ReturnType<typeof getReuseOrder>>, { ok: true }>["value"];

/** Of the cheapest sheet to buy, in minor units. */
const pricePerM2 = (sheets: readonly { lengthMm: number; widthMm: number; price: number; onHand: number | null }[]): number =>
  Math.round(Math.min(...sheets.filter(({ onHand }) => onHand === null).map(({ lengthMm, widthMm, price }) => (price * 1e6) / (lengthMm * widthMm))));

const leftOut = (coming: readonly ComingLift[], wanted: Readonly<Record<string, ReuseWanted>>): number => {
  const served = new Set(Object.values(wanted).map(({ columnId }) => columnId));
  return coming.filter(({ id }) => !served.has(id)).length;
};

/** Outside the transaction that read the order. */
export async function planReuseOf(caller: Caller | null, input: z.input<typeof projectInput>): Promise<Result<{ task: ReuseTask; plan: ReusePlan }>> {
  const asked = await getReuseOrder(caller, input);
  if (!asked.ok) return asked;
  const plan = await worked("reuse", asked.value.order, LIMIT_MS);
  return plan.ok ? ok({ task: asked.value, plan: plan.value }) : plan;
}
