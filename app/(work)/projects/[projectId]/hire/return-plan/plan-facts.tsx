import type { PageFact } from "#app/_ui/page/page.tsx";
import { percentText, planMoney } from "./plan-money.ts";

type Cost = { readonly hire: number; readonly handling: number; readonly trips: number; readonly total: number };
export type PlanResult = {
  readonly cost: Cost; readonly bound: number; readonly gap: number; readonly proven: boolean; readonly justInTime: Cost | null; readonly keepToLast: Cost | null;
};

/** What the plan costs from today on, how sure that is the least, and what the two habits would cost. */
export function planFacts({ cost, gap, proven, bound, justInTime, keepToLast }: PlanResult, currency: string): PageFact[] {
  const saved = (habit: Cost | null): string => {
    if (habit === null) return "–";
    return habit.total === cost.total ? "nothing: the same" : `${planMoney(habit.total - cost.total, currency)} (${percentText(habit.total === 0 ? 0 : 1 - cost.total / habit.total)})`;
  };
  return [
    { label: "From today on", value: planMoney(cost.total, currency) },
    { label: "of it hire · handling · trips", value: [cost.hire, cost.handling, cost.trips].map((part) => planMoney(part, currency)).join(" · ") },
    { label: "How good", value: proven ? "The cheapest there is, proven" : bound > 0 ? `At most ${percentText(gap)} over the cheapest` : "No bound was reached" },
    { label: "Saved against returning when idle", value: saved(justInTime) },
    { label: "Saved against keeping to the last use", value: saved(keepToLast) },
  ];
}
