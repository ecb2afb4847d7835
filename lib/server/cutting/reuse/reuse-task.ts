import "server-only";
import { dayIn } from "#lib/kernel/days.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import { wholeLength, wholeWidth } from "#lib/trade/planning/whole-sizes.ts";
import type { PanelDemand, ReuseOrder } from "#lib/trade/planning/reuse/reuse-order.ts";
import { columnForm } from "../../columns/column-form.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listPanels } from "../../gear/panels/panel-store.ts";
import { listReservedLines } from "../../gear/reserved/reserved-lines.ts";
import { listFallen, listHolders } from "../../gear/reserved/reserved-store.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { projectHead, readRules } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { readCuttingRule } from "../read-cutting-rule.ts";
import { faceKey, panelsAtHand, SITE, YARD, yieldsOf } from "./panels-at-hand.ts";
import { reuseDays } from "./reuse-days.ts";
import { listComingLifts, type ComingLift } from "./reuse-store.ts";

/** Further ahead a plan would change before it is used. */
const MOST_COLUMNS = 150;

export type ReuseWanted = { readonly column: string; readonly columnId: string; readonly mark: string; readonly level: string; readonly face: string; readonly start: string; readonly widthMm: number; readonly heightMm: number };

/**
 * Which panels the coming columns ask for, and which are at hand. What was accepted before stays spoken for and yields its
 * panel to later columns; `whole` plans it anew, but for columns that have their set already.
 */
export async function reuseTask(scope: ProjectScope, whole: boolean) {
  const project = await readProject(scope);
  const rules = readRules(project);
  const rule = readCuttingRule(project);
  const lifts = await listComingLifts(scope);
  const accepted = await listReservedLines(scope);
  const withSet = new Set(lifts.flatMap(({ id, setId }) => (setId === null ? [] : [id])));
  const kept = whole ? accepted.filter(({ columnId }) => withSet.has(columnId)) : accepted;
  const open = lifts.filter(({ done, setId }) => done === 0 && setId === null);
  const coming = open.slice(0, MOST_COLUMNS);
  const days = reuseDays(coming, lifts, rules.progressRule.stripAfterHours, dayIn(scope.now, project.timeZone));
  const thicknessMm = Math.round(rules.shutterRule.ply.thickness);
  const taken = new Set(kept.map(({ columnId, face }) => faceKey(columnId, face)));
  const { all, wanted } = demandsOf(coming, await formsOf(scope, coming, rules), days, thicknessMm);
  const demands = all.filter(({ id }) => !taken.has(id));

  const rows = await listPanels(scope, { projectId: scope.projectId });
  const columnsOfSet = new Map([...groupBy(lifts.filter(({ setId, done }) => setId !== null && !hasDone(done, "stripped")), ({ setId }) => setId ?? "")].map(([setId, on]) => [setId, on.map(({ id }) => id)]));
  const known = { lifts, days, rule, columnsOfSet, thicknessMm };
  const free = panelsAtHand(rows, known);
  const elsewhere = (await listHolders(scope, null)).filter(({ projectId }) => projectId !== scope.projectId);
  const spoken = new Set([...kept.flatMap(({ itemId }) => itemId ?? []), ...elsewhere.map(({ itemId }) => itemId)]);
  const panels = [...free.filter(({ id }) => !spoken.has(id)), ...yieldsOf(kept, free, known)];
  const order: ReuseOrder = { panels, demands, newPerM2: pricePerM2(rule.sheets), recutEach: rule.recutEach, newPanelUses: rule.panelUses, carry: [{ from: SITE, to: YARD, each: rule.carryEach }] };
  const names: Record<string, { name: string; place: string | null; isPanel: boolean }> = Object.fromEntries([
    ...rows.map(({ itemId, name, place }) => [itemId, { name, place, isPanel: true }] as const),
    ...kept.map(({ columnId, face, gridRef, level }) => [faceKey(columnId, face), { name: `Off ${gridRef}, face ${face}`, place: level, isPanel: false }] as const),
  ]);
  return {
    project: projectHead(project), order, wanted, names, by: days.kind, source: rule.source, open: open.length, planned: coming.length, whole, accepted, kept: new Set(kept.map(({ columnId }) => columnId)),
    fallen: await listFallen(scope), leftOut: leftOut(coming, wanted), role: scope.member.role,
  };
}
export type ReuseTask = Awaited<ReturnType<typeof reuseTask>>;

async function formsOf(scope: ProjectScope, coming: readonly ComingLift[], rules: ReturnType<typeof readRules>) {
  const clampKinds = await listClampKindRows(scope);
  const alike = groupBy(coming, (lift) => [lift.shape, lift.widthMm, lift.depthMm, lift.formHeightMm, lift.headedBy, lift.fromLevel.id, lift.toLevel.id].join(" "));
  return new Map([...alike.values()].flatMap((same) => {
    const form = same[0] && columnForm(same[0], rules, clampKinds).formSet;
    return form?.ok ? same.map((lift) => [lift.id, form.value] as const) : [];
  }));
}

function demandsOf(coming: readonly ComingLift[], forms: Awaited<ReturnType<typeof formsOf>>, days: ReturnType<typeof reuseDays>, thicknessMm: number) {
  const wanted: Record<string, ReuseWanted> = {};
  const all = coming.flatMap((lift): PanelDemand[] => {
    const form = forms.get(lift.id);
    const span = days.spanOf(lift);
    if (!form || !span) return [];
    return form.panels.map(({ face, width, height }) => {
      const id = faceKey(lift.id, face);
      const [widthMm, heightMm] = [wholeWidth(width), wholeLength(height)];
      wanted[id] = { column: lift.gridRef, columnId: lift.id, mark: lift.mark.name, level: lift.fromLevel.name, face, start: span.said, widthMm, heightMm };
      return { id, widthMm, heightMm, thicknessMm, startDay: span.startDay, backDay: span.backDay, mayTurn: false, place: SITE, set: lift.id };
    });
  });
  return { all, wanted };
}

/** Of the cheapest sheet to buy, in minor units. */
const pricePerM2 = (sheets: readonly { lengthMm: number; widthMm: number; price: number; onHand: number | null }[]): number =>
  Math.round(Math.min(...sheets.filter(({ onHand }) => onHand === null).map(({ lengthMm, widthMm, price }) => (price * 1e6) / (lengthMm * widthMm))));

const leftOut = (coming: readonly ComingLift[], wanted: Readonly<Record<string, ReuseWanted>>): number => {
  const served = new Set(Object.values(wanted).map(({ columnId }) => columnId));
  return coming.filter(({ id }) => !served.has(id)).length;
};
