import { type Asking, askFor } from "#lib/kernel/linear-model.ts";
import { ok, type Result } from "#lib/kernel/result.ts";
import { assign } from "./assignment.ts";
import { followServings } from "./limited-uses/follow-servings.ts";
import { keepTogether } from "./keep-together.ts";
import { limitedUsesModel } from "./limited-uses/limited-uses-model.ts";
import { checkReuseOrder, type ReuseOrder, type ReusePlan } from "./reuse-order.ts";
import { costOfColumns, type ReuseNetwork, reuseNetwork } from "./reuse-network.ts";
import { reusePlan } from "./reuse-plan.ts";
import { spreadUses } from "./spread-uses.ts";
import { useClasses } from "./limited-uses/use-classes.ts";

/**
 * Which panel serves which coming column at least cost of new ply, cutting and carrying. Without a limit on uses this is an
 * assignment, solved exactly; its cost bounds the limited case, which is settled by sharing uses among panels alike where
 * that is enough, and by whole numbers otherwise. Where plans cost the same, sets are kept together.
 */
export function* planReuse(order: ReuseOrder): Asking<Result<ReusePlan>> {
  const checked = checkReuseOrder(order);
  if (!checked.ok) return checked;
  const network = reuseNetwork(order);
  const free = assign(network.costs, network.columns);
  // Cannot be: a new panel is open to every demand.
  if (!free) throw new Error("A demand has no panel and no new one either");
  const shared = spreadUses(network, free.columnOf);
  const cost = costOfColumns(network, shared);
  if (cost <= free.cost) return ok(reusePlan(network, keepTogether(network, shared), cost));
  const { columnOf, bound } = yield* withinUses(network, shared, free.cost);
  return ok(reusePlan(network, keepTogether(network, columnOf), bound));
}

type Bounded = { readonly columnOf: readonly number[]; readonly bound: number };

function* withinUses(network: ReuseNetwork, known: readonly number[], freeCost: number): Asking<Bounded> {
  const cost = costOfColumns(network, known);
  const classes = useClasses(network);
  const { model, servings } = limitedUsesModel(classes, network.order.newPanelUses);
  const answer = yield* askFor({ model });
  const bound = Math.max(freeCost, Math.min(cost, Math.ceil(answer.bound - 1e-6)));
  if (answer.values.length === 0) return { columnOf: known, bound };
  const columnOf = followServings(network, classes, servings, answer.values);
  return costOfColumns(network, columnOf) < cost ? { columnOf, bound } : { columnOf: known, bound };
}
