import { usableMm, type TimberLayout, type TimberOrder, type TimberPlan } from "./timber-order.ts";

/** A rule a plan breaks, with where and the numbers. */
export type Breach = { readonly rule: string; readonly where: string; readonly value: number; readonly limit: number };

/** Holds any timber plan against the order, whoever made it: every part cut in its number and length, every piece with room for its parts and kerfs, no more stock than there is, cost and waste as added up. */
export function checkTimberPlan(order: TimberOrder, plan: TimberPlan): Breach[] {
  return [
    ...plan.layouts.flatMap((layout, index) => checkLayout(order, layout, `layouts.${index}`)),
    ...order.parts.flatMap((part) => differs("parts-cut", part.id, countParts(plan, part.id), part.quantity)),
    ...order.stock.flatMap((stock) => above("stock-used", stock.id, countStock(plan, stock.id), stock.quantity ?? Infinity)),
    ...differs("cost", "plan", plan.cost, plan.layouts.reduce((sum, layout) => sum + layout.count * (order.stock.find((stock) => stock.id === layout.stockId)?.cost ?? 0), 0)),
    ...differs("waste", "plan", plan.wasteMm, plan.layouts.reduce((sum, layout) => sum + (layout.kept ? 0 : layout.offcutMm * layout.count), 0)),
    ...above("bound", "plan", plan.bound, plan.cost),
  ];
}

function checkLayout(order: TimberOrder, layout: TimberLayout, where: string): Breach[] {
  const stock = order.stock.find((candidate) => candidate.id === layout.stockId);
  const parts = layout.cuts.reduce((sum, cut) => sum + cut.lengthMm, 0);
  const needed = parts + Math.max(0, layout.cuts.length - 1) * order.kerfMm;
  const room = stock ? usableMm(order, stock) : 0;
  const left = Math.max(0, room - parts - layout.cuts.length * order.kerfMm);
  return [
    ...(stock ? [] : [{ rule: "known-stock", where, value: 0, limit: 1 }]),
    ...above("piece-length", where, needed, room),
    ...differs("offcut", where, layout.offcutMm, left),
    ...differs("kept", where, Number(layout.kept), Number(left >= order.keepFromMm)),
    ...layout.cuts.flatMap((cut) => differs("part-length", `${where}.${cut.partId}`, cut.lengthMm, order.parts.find((part) => part.id === cut.partId)?.lengthMm ?? -1)),
  ];
}

const countParts = (plan: TimberPlan, id: string): number => plan.layouts.reduce((sum, layout) => sum + layout.count * layout.cuts.filter((cut) => cut.partId === id).length, 0);
const countStock = (plan: TimberPlan, id: string): number => plan.layouts.reduce((sum, layout) => sum + (layout.stockId === id ? layout.count : 0), 0);
const above = (rule: string, where: string, value: number, limit: number): Breach[] => (value > limit ? [{ rule, where, value, limit }] : []);
const differs = (rule: string, where: string, value: number, limit: number): Breach[] => (Math.abs(value - limit) > 1e-6 ? [{ rule, where, value, limit }] : []);
