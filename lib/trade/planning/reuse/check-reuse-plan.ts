import type { PanelDemand, PanelUse, ReuseOrder, ReusePanel, ReusePlan } from "./reuse-order.ts";

/** A rule a plan breaks, with where and the numbers. */
export type Breach = { readonly rule: string; readonly where: string; readonly value: number; readonly limit: number };

/** Holds any reuse plan against the order, whoever made it: every demand served once, no panel at two places or before it is back, no larger piece from a smaller, no more uses than are left, costs as they add up. */
export function checkReusePlan(order: ReuseOrder, plan: ReusePlan): Breach[] {
  return [
    ...order.demands.flatMap((demand) => differs("served-once", demand.id, plan.uses.filter((use) => use.demandId === demand.id).length, 1)),
    ...takenTwice(plan),
    ...plan.uses.flatMap((use) => checkUse(order, plan.uses, use)),
    ...differs("cost", "plan", plan.cost, plan.uses.reduce((sum, use) => sum + use.cost, 0)),
    ...(plan.bound > plan.cost ? [{ rule: "bound", where: "plan", value: plan.bound, limit: plan.cost }] : []),
  ];
}

function takenTwice(plan: ReusePlan): Breach[] {
  const keys = plan.uses.flatMap(({ source }) => (source.kind === "panel" ? [`panel ${source.panelId}`] : source.kind === "after" ? [`after ${source.demandId}`] : []));
  return [...new Set(keys)].flatMap((key) => differs("taken-once", key, keys.filter((other) => other === key).length, 1));
}

/** One line of a plan by itself; `uses` is where its panel was before. */
export function checkUse(order: ReuseOrder, uses: readonly PanelUse[], use: PanelUse): Breach[] {
  const demand = order.demands.find((candidate) => candidate.id === use.demandId);
  if (!demand) return [{ rule: "known-demand", where: use.demandId, value: 0, limit: 1 }];
  const area = demand.widthMm * demand.heightMm;
  const limit = usesBefore(order, uses, use);
  const worn = limit < 1 ? [{ rule: "uses-left", where: use.demandId, value: 1, limit }] : [];
  if (use.source.kind === "new") return [...worn, ...differs("cost-of-new", use.demandId, use.cost, Math.floor((area * order.newPerM2) / 1e6))];
  const from = sourceOf(order, use);
  if (!from) return [{ rule: "known-panel", where: use.demandId, value: 0, limit: 1 }];
  const ready = "readyDay" in from ? from.readyDay : from.backDay;
  const [width, height] = use.turned ? [from.heightMm, from.widthMm] : [from.widthMm, from.heightMm];
  const lost = from.widthMm * from.heightMm - area;
  const carry = from.place === demand.place ? 0 : order.carry.find((way) => [way.from, way.to].sort().join() === [from.place, demand.place].sort().join())?.each ?? 0;
  const cost = carry + (lost > 0 ? order.recutEach + Math.floor((lost * order.newPerM2) / 1e6) : 0);
  return [
    ...worn,
    ...(ready > demand.startDay ? [{ rule: "ready", where: use.demandId, value: ready, limit: demand.startDay }] : []),
    ...(width < demand.widthMm ? [{ rule: "width", where: use.demandId, value: demand.widthMm, limit: width }] : []),
    ...(height < demand.heightMm ? [{ rule: "height", where: use.demandId, value: demand.heightMm, limit: height }] : []),
    ...differs("thickness", use.demandId, from.thicknessMm, demand.thicknessMm),
    ...(use.turned && !demand.mayTurn ? [{ rule: "grain", where: use.demandId, value: 1, limit: 0 }] : []),
    ...differs("cut-down", use.demandId, Number(use.cutDown), Number(lost > 0)),
    ...differs("cost-of-use", use.demandId, use.cost, cost),
  ];
}

function sourceOf(order: ReuseOrder, { source }: PanelUse): ReusePanel | PanelDemand | undefined {
  if (source.kind === "panel") return order.panels.find((panel) => panel.id === source.panelId);
  return source.kind === "after" ? order.demands.find((demand) => demand.id === source.demandId) : undefined;
}

/** Back along the chain to where the panel came from, one use for each link; a chain that bites its tail has none. */
function usesBefore(order: ReuseOrder, uses: readonly PanelUse[], use: PanelUse): number {
  let at: PanelUse | undefined = use;
  for (let links = 0; at && links <= uses.length; links += 1) {
    const { source }: PanelUse = at;
    if (source.kind === "new") return (order.newPanelUses ?? Infinity) - links;
    if (source.kind === "panel") return (order.panels.find((panel) => panel.id === source.panelId)?.usesLeft ?? Infinity) - links;
    at = uses.find((earlier) => earlier.demandId === source.demandId);
  }
  return 0;
}

const differs = (rule: string, where: string, value: number, limit: number): Breach[] => (value === limit ? [] : [{ rule, where, value, limit }]);
