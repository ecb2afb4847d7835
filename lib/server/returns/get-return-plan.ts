import "server-only";
import { returnPlanInput, type ReturnSettings } from "#lib/contracts/hire/returns.ts";
import { daysBetween } from "#lib/kernel/days.ts";
import { ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { outlook } from "./basis/outlook.ts";
import type { PlanInput } from "./basis/plan-input.ts";
import { pieceKg, readSite, type Standing } from "./basis/site-now.ts";
import { stillHolds } from "./basis/still-holds.ts";
import { findOwnFeed } from "./feed-store.ts";
import { planLines } from "./plan-lines.ts";
import { findPlan, type KeptPlan, listTasks } from "./store.ts";

/** Taken where nobody has said otherwise: common practice, no source. */
const USUAL = { handling: 0, floatPercent: 5, cleaningDays: 1, lossPercentMonth: 0, unitKg: {} };
const USUAL_TRUCK = { truckKg: 6000, leadDays: 3 };

/** The latest plan, whether it still holds, and what one would rest on now. */
export const getReturnPlan = projectUseCase("returns.getReturnPlan", "hire.read", returnPlanInput, async (scope) => {
  const kept = await findPlan(scope);
  const site = await readSite(scope, kept?.input.settings.cleaningDays ?? USUAL.cleaningDays);
  const { book: { project, today, items, suppliers }, holders } = site;
  const withGear = site.standing.filter(({ hired }) => hired.length > 0);
  const settings = settingsFor(withGear, kept);
  const view = withGear.length > 0 ? outlook(site, settings) : null;
  const feed = await findOwnFeed(scope);
  return ok({
    project, today, settings, hasSuppliers: suppliers.length > 0, feedSince: feed?.createdAt.toISOString() ?? null,
    yards: withGear.map(({ supplierId, supplier, hired, terms }) => ({ supplierId, supplier, pieces: hired.reduce((sum, { quantity }) => sum + quantity, 0), hasTerms: terms !== null })),
    columns: { unknown: holders.unknown, endless: holders.endless, stripDays: holders.stripDays },
    items: items.filter(({ id }) => withGear.some(({ hired }) => hired.some(({ itemId }) => itemId === id))).map(({ id, name }) => ({ id, name, kg: pieceKg(site, settings, id) })),
    failure: view && !view.ok ? view.failure : null,
    plan: kept && { ...shown(kept), isStale: view?.ok ? !stillHolds(kept.input, view.value) : kept.status === "ready" },
    tasks: await listTasks(scope),
  });
});

/** As they were for the last plan; a supplier who has come since is in it with what its terms say. */
function settingsFor(withGear: readonly Standing[], kept: KeptPlan | null): ReturnSettings {
  const before = kept?.input.settings;
  const inPlan = before?.suppliers ?? [];
  const suppliers = withGear.map((yard) => inPlan.find(({ supplierId }) => supplierId === yard.supplierId) ?? {
    supplierId: yard.supplierId, isIn: yard.terms !== null, ...USUAL_TRUCK, tripCost: Math.max(yard.terms?.deliveryCharge ?? 0, yard.terms?.collectionCharge ?? 0),
  });
  const weekdays = withGear.find(({ terms }) => terms)?.terms?.workingWeekdays ?? [1, 2, 3, 4, 5];
  return { ...(before ?? { ...USUAL, weekdays: [...weekdays] }), suppliers };
}

const shown = ({ id, status, input, result, solver, wallMs, orderedAt, by }: KeptPlan) => ({
  id, status, solver, wallMs, orderedAt, by, dates: input.dates, need: input.need, pinned: input.pinned, short: input.short, leftOut: input.leftOut,
  suppliers: input.suppliers.map(({ supplierId, supplier }) => ({ supplierId, supplier })),
  result: result && { cost: result.cost, bound: result.bound, gap: result.gap, proven: result.proven, justInTime: result.justInTime, keepToLast: result.keepToLast },
  lines: result ? planLines(input, result) : [],
  stock: result ? stockByDay(input, result.stays) : [],
});

/** Pieces of each item on hire from all the suppliers by day from the first date, as the plan has them. */
function stockByDay({ order, dates, need }: PlanInput, stays: NonNullable<KeptPlan["result"]>["stays"]) {
  const first = dates[0];
  const offset = (t: number): number => (first ? daysBetween(first, dates[t] ?? first) : 0);
  return need.map(({ itemId, needed, owned }) => {
    const own = stays.filter(({ item }) => order.items[item]?.id === itemId);
    return { itemId, owned, onHire: needed.map((_, day) => own.reduce((sum, { from, to, count }) => sum + (offset(from) <= day && day < offset(to) ? count : 0), 0)) };
  });
}
