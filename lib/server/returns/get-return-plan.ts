import "server-only";
import { returnPlanInput, type ReturnSettings } from "#lib/contracts/hire/returns.ts";
import { addDays, type Day, daysBetween } from "#lib/kernel/days.ts";
import { ok } from "#lib/kernel/result.ts";
import { layTerms } from "#lib/trade/hire/terms/terms-in-force.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { termsOf } from "../hire/hire-book.ts";
import { listDockets } from "../hire/store/docket-store.ts";
import { listSuppliers } from "../hire/store/supplier-store.ts";
import { projectHead } from "../projects/project-head.ts";
import { readProject } from "../projects/store.ts";
import { outlook, readSite, supplierNow, type SupplierNow } from "./basis/build-input.ts";
import { findOwnFeed } from "./feed-store.ts";
import type { PlanInput } from "./basis/plan-input.ts";
import { planLines } from "./plan-lines.ts";
import { findPlan, type KeptPlan, listTasks } from "./store.ts";

/** Taken where nobody has said otherwise: common practice, no source. */
const USUAL = { truckKg: 6000, handling: 0, floatPercent: 5, cleaningDays: 1, leadDays: 3, lossPercentMonth: 0, unitKg: {} };

/** The latest plan for a supplier, whether it still holds, and what one would rest on now. */
export const getReturnPlan = projectUseCase("returns.getReturnPlan", "hire.read", returnPlanInput, async (scope, { supplierId }) => {
  const project = projectHead(await readProject(scope));
  const suppliers = (await listSuppliers(scope)).filter(({ isRetired }) => !isRetired).map(({ id, name }) => ({ id, name }));
  const chosen = supplierId ?? (await supplierWithMost(scope)) ?? suppliers[0]?.id ?? null;
  const feed = await findOwnFeed(scope);
  const standing = chosen === null ? ok(null) : await planOf(scope, chosen);
  return standing.ok ? ok({ project, suppliers, supplierId: chosen, feedSince: feed?.createdAt.toISOString() ?? null, standing: standing.value }) : standing;
});

async function planOf(scope: ProjectScope, supplierId: string) {
  const kept = await findPlan(scope, { supplierId });
  const read = supplierNow(await readSite(scope, kept?.input.settings.cleaningDays ?? USUAL.cleaningDays), supplierId);
  if (!read.ok) return read;
  const { book, holders, hired } = read.value;
  const settings = settingsFor(read.value, supplierId, kept);
  const view = outlook(read.value, supplierId, settings);
  return ok({
    today: book.today, settings, unknownColumns: holders.unknown,
    items: book.items.filter(({ id }) => hired.some(({ itemId }) => itemId === id)).map(({ id, name }) => ({ id, name, kg: settings.unitKg[id] ?? holders.kgOf.get(id) ?? 1 })),
    failure: view.ok ? null : view.failure,
    plan: kept && { ...shown(kept), isStale: view.ok ? !stillHolds(kept.input, view.value) : kept.status === "ready" },
    tasks: await listTasks(scope, { supplierId }),
  });
}

/** Whose gear most has come on dockets: the one that is looked at first. */
async function supplierWithMost(scope: ProjectScope): Promise<string | undefined> {
  const delivered = (await listDockets(scope)).filter(({ kind, reversal }) => kind === "delivery" && reversal === null);
  const pieces = new Map<string, number>();
  for (const { supplierId, lines } of delivered) pieces.set(supplierId, lines.reduce((sum, { quantity }) => sum + quantity, pieces.get(supplierId) ?? 0));
  return [...pieces].sort(([one, a], [other, b]) => b - a || (one < other ? -1 : 1))[0]?.[0];
}

function settingsFor({ book }: SupplierNow, supplierId: string, kept: KeptPlan | null): ReturnSettings {
  if (kept) return kept.input.settings;
  const terms = layTerms(termsOf(book, supplierId)).at(-1)?.terms;
  return { ...USUAL, tripCost: Math.max(terms?.deliveryCharge ?? 0, terms?.collectionCharge ?? 0), weekdays: [...(terms?.workingWeekdays ?? [1, 2, 3, 4, 5])] };
}

const shown = ({ id, status, input, result, solver, wallMs, orderedAt, by }: KeptPlan) => ({
  id, status, solver, wallMs, orderedAt, by, settings: input.settings, dates: input.dates, need: input.need, pinned: input.pinned, short: input.short, leftOut: input.leftOut,
  result: result && { cost: result.cost, bound: result.bound, gap: result.gap, proven: result.proven, justInTime: result.justInTime, keepToLast: result.keepToLast, trips: result.trips },
  lines: result ? planLines(input, result) : [],
  stock: result ? stockByDay(input, result.stays) : [],
});

/** Pieces of each item on hire by day from the first date, as the plan has them. */
function stockByDay({ order, dates, need }: PlanInput, stays: NonNullable<KeptPlan["result"]>["stays"]) {
  const first = dates[0];
  const offset = (t: number): number => (first ? daysBetween(first, dates[t] ?? first) : 0);
  return need.map(({ itemId, needed, owned }) => {
    const item = order.items.findIndex(({ id }) => id === itemId);
    const onHire = needed.map((_, day) => stays.reduce((sum, stay) => sum + (stay.item === item && offset(stay.from) <= day && day < offset(stay.to) ? stay.count : 0), 0));
    return { itemId, onHire, owned };
  });
}

type Foreseen = Pick<PlanInput, "dates" | "need">;

/** Whether what the columns need and what is on hire is still what the plan was made for, from today on. */
function stillHolds(kept: Foreseen, now: Foreseen): boolean {
  const [then, today] = [kept.dates[0], now.dates[0]];
  if (!then || !today) return false;
  const past = daysBetween(then, today);
  const key = ({ need }: Foreseen, skip: number, from: Day) => need.map(({ itemId, needed, owned, hired }) => [itemId, owned, hired, changes(needed.slice(skip), from)]);
  return JSON.stringify(key(kept, past, today)) === JSON.stringify(key(now, 0, today));
}

/** The days on which a need changes; how far ahead it was asked for does not matter. */
const changes = (needed: readonly number[], from: Day): [Day, number][] =>
  needed.flatMap((count, index): [Day, number][] => (count === (index === 0 ? 0 : needed[index - 1]) ? [] : [[addDays(from, index), count]]));
