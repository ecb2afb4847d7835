import { type Answer, type Asking, askFor, NO_ANSWER, type Question } from "#lib/kernel/linear-model.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import { dive } from "./search/dive.ts";
import { justInTime, keepToLast } from "./habits.ts";
import { type DraftedModel, linearModel } from "./model/model-draft.ts";
import { pinch } from "./search/pinch.ts";
import { whereTheyAgree, windowsOf, within } from "./search/polish.ts";
import { priceStays } from "./price-stays.ts";
import { columnValues, readStays } from "./model/read-stays.ts";
import { returnModel, type ReturnModel } from "./model/return-model.ts";
import { checkReturnOrder, type PricedStays, type ReturnOrder, type ReturnPlan } from "./return-order.ts";
import { joinStays, type OrderPart, splitOrder } from "./split-order.ts";
import { tighten, type Tightened } from "./search/tighten.ts";

type Search = { readonly order: ReturnOrder; readonly model: ReturnModel; best: PricedStays | null; bound: number };
type Found = { readonly priced: PricedStays; readonly bound: number };

/** What to send back when to whom, and what to hire again, at least cost. Whatever is reached when time is up carries its bound. */
export function* planReturns(order: ReturnOrder): Asking<Result<ReturnPlan>> {
  const checked = checkReturnOrder(order);
  if (!checked.ok) return checked;
  const parts = splitOrder(order);
  const planned: (OrderPart & Found)[] = [];
  for (const [index, part] of parts.entries()) {
    const found = yield* planPart(part.order, 1 / (parts.length - index));
    if (!found.ok) return found;
    planned.push({ ...part, ...found.value });
  }
  const best = joinStays(order, planned);
  const bound = planned.reduce((sum, part) => sum + part.bound, 0);
  const { total } = best.cost;
  return ok({ ...best, justInTime: justInTime(order), keepToLast: keepToLast(order), bound, gap: total === 0 ? 0 : (total - bound) / total, proven: bound === total });
}

/** So long the proof is tried before the plan is polished for it: small orders need no more. */
const FIRST_TRY_MS = 2_500;

/**
 * The trucks tie the items together: first the model is tightened by rows of whole trucks, then rounded down from there for a
 * good plan, that plan bettered nearby, and only then solved for the proof, in this share of the time left. The cheaper the
 * plan in hand, the less is left to be ruled out: a proof that takes minutes from a plan 0.1 % over takes seconds from the best.
 */
function* planPart(order: ReturnOrder, timeShare: number): Asking<Result<Found>> {
  const search: Search = { order, model: returnModel(order), best: cheaper(justInTime(order), keepToLast(order)), bound: 0 };
  const tightened = yield* tighten(order, search.model);
  search.bound = wholeBound(tightened.bound);
  const values = yield* dive(search.model, tightened);
  take(search, values ?? new Float64Array());
  const isNearlyThere = values !== null;
  yield* better(search, (plan) => whereTheyAgree(tightened, plan, timeShare));
  let answer = yield* prove(search, tightened, { timeShare: timeShare / 4, timeShareMs: FIRST_TRY_MS, isNearlyThere });
  if (!isProven(search) && answer.status !== "infeasible") {
    for (const span of windowsOf(order.dates)) yield* better(search, (plan) => within(search.model, tightened.drafted, plan, span, timeShare));
    answer = yield* prove(search, tightened, { timeShare, isNearlyThere });
  }
  if (answer.status === "infeasible" && !isProven(search)) return brokenRule("return-trips-too-few", { trips: Math.max(...order.trucks.map(({ mostTrips }) => mostTrips ?? 0)) });
  const { best } = search;
  return best ? ok({ priced: best, bound: Math.min(search.bound, best.cost.total) }) : brokenRule("no-return-plan-in-time");
}

function* prove(search: Search, tightened: Tightened, how: Pick<Question, "timeShare" | "timeShareMs" | "isNearlyThere">): Asking<Answer> {
  if (isProven(search)) return NO_ANSWER;
  const hint = search.best ? { hint: columnValues(search.model, search.best) } : {};
  const answer = yield* askFor({ model: linearModel(narrowed(search, tightened), true), ...hint, ...how });
  take(search, answer.values);
  search.bound = Math.max(search.bound, wholeBound(answer.bound));
  return answer;
}

function* better(search: Search, look: (plan: Float64Array) => Asking<Float64Array | null>): Asking<void> {
  if (search.best && !isProven(search)) take(search, (yield* look(columnValues(search.model, search.best))) ?? new Float64Array());
}

function take(search: Search, values: Float64Array): void {
  if (values.length > 0) search.best = cheaper(search.best, priceStays(search.order, readStays(search.order, search.model, values)));
}

const narrowed = ({ best }: Search, { drafted, answer }: Tightened): DraftedModel => (best && answer ? pinch(drafted, answer, best.cost.total) : drafted);
const cheaper = (one: PricedStays | null, other: PricedStays | null): PricedStays | null => (!one || (other && other.cost.total < one.cost.total) ? other : one);
/** Costs are whole minor units. */
const wholeBound = (bound: number): number => Math.max(0, Math.ceil(bound - 1e-3));
const isProven = ({ best, bound }: Search): boolean => best !== null && best.cost.total <= bound;
