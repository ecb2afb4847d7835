import "server-only";
import { materialKey, type BuyingRule, type Material } from "#lib/contracts/planning/orders.ts";
import type { CuttingRule, TimberUse } from "#lib/contracts/planning/cutting.ts";
import type { Day } from "#lib/kernel/days.ts";
import { daysOfSets, type setDays } from "#lib/trade/planning/buying/set-days.ts";
import { stockByDay, type CutStock, type StockDay, type WantedPart } from "#lib/trade/planning/buying/stock-by-day.ts";
import { toBuy, type BuyLine, type Coming } from "#lib/trade/planning/buying/to-buy.ts";
import { workingDaysBefore } from "#lib/trade/planning/buying/work-back.ts";
import type { RackOffcuts } from "../../cutting/cut/rack-offcuts.ts";

export type GroupDays = { readonly size: string; readonly sets: number; readonly days: ReturnType<typeof setDays> };
type Part = { readonly id: string; readonly quantity: number };

/** What stands behind the size in the id of a part; a size may be the beginning of another, as where only some faces are cut. */
const OF_GROUP = /^ \d+( full| rest)?$/;

/** Every set of a size takes the same pieces: those of a part, by the day of the set they go to. */
export function wantedParts(parts: readonly Part[], groups: readonly GroupDays[]): WantedPart[] {
  return parts.flatMap(({ id, quantity }) => {
    const group = groups.find(({ size }) => id.startsWith(`${size} `) && OF_GROUP.test(id.slice(size.length)));
    if (!group || group.sets === 0 || quantity === 0) return [];
    const days = daysOfSets(group.days, group.sets);
    const dated = [...days, ...new Array<null>(group.sets - days.length).fill(null)];
    const each = quantity / group.sets;
    return [...new Set(dated)].map((on) => ({ partId: id, on, count: each * dated.filter((day) => day === on).length }));
  });
}

/** A size the project cuts from, as it is bought; `fromRack` where a count of its own stands in the set-up. */
export type StockSize = Material & { readonly stockId: string; readonly price: number; readonly fromRack: boolean };
export function stockSizes(rule: CuttingRule, ply: string, timbers: readonly { readonly use: "backing" | "fillet"; readonly material: string }[]): StockSize[] {
  return [
    ...rule.sheets.map(({ lengthMm, widthMm, price, onHand }, index): StockSize => ({ stockId: `s${index}`, use: "sheet", material: ply, lengthMm, widthMm, price, fromRack: onHand !== null })),
    ...rule.timbers.flatMap(({ use, lengthMm, price, onHand }, index): StockSize[] => {
      const material = timbers.find((timber) => timber.use === use)?.material;
      return material === undefined ? [] : [{ stockId: `t${index}`, use, material, lengthMm, widthMm: null, price, fromRack: onHand !== null }];
    }),
  ];
}

/** Offcuts at hand, paid for already. */
export const offcutSizes = ({ sheets, timbers }: RackOffcuts, ply: string, called: readonly { readonly use: TimberUse; readonly material: string }[]): StockSize[] => [
  ...sheets.map(({ itemId, lengthMm, widthMm }): StockSize => ({ stockId: `o${itemId}`, use: "sheet", material: ply, lengthMm, widthMm, price: 0, fromRack: true })),
  ...called.flatMap(({ use, material }) => timbers[use].map(({ itemId, lengthMm }): StockSize => ({ stockId: `o${itemId}`, use, material, lengthMm, widthMm: null, price: 0, fromRack: true }))),
];

export type BuyRow = BuyLine & { /** The first day a form of it is stood. */ readonly standOn: Day | null; readonly orderBy: Day | null; readonly isPast: boolean };
export type ToBuySize = Material & { readonly key: string; readonly price: number; readonly atHand: number; readonly rows: readonly BuyRow[] };
type Known = { readonly atHand: number; readonly coming: readonly Coming[] };

/** By size: what the plan takes by when, what is there or coming, and what is to be bought. */
export function buyRows(sizes: readonly StockSize[], taken: readonly StockDay[], known: ReadonlyMap<string, Known>, rule: BuyingRule, week: readonly number[], today: Day): ToBuySize[] {
  const bought = sizes.filter(({ fromRack }) => !fromRack);
  return [...new Set(bought.map(materialKey))].flatMap((key) => {
    const same = bought.filter((size) => materialKey(size) === key);
    const [first] = same;
    const own = taken.filter(({ stockId }) => same.some((size) => size.stockId === stockId));
    if (!first || own.length === 0) return [];
    const days = [...new Set(own.map(({ on }) => on))];
    const { atHand, coming } = known.get(key) ?? { atHand: 0, coming: [] };
    const yardDay = (on: Day | null): Day | null => (on === null ? null : workingDaysBefore(on, rule.makingDays, week));
    const lines = toBuy(days.map((on) => ({ on: yardDay(on), planned: own.filter((row) => row.on === on).reduce((sum, { count }) => sum + count, 0) })), rule.waste, atHand, coming);
    const { use, material, lengthMm, widthMm, price } = first;
    return [{
      key, use, material, lengthMm, widthMm, price, atHand,
      rows: lines.map((line, index): BuyRow => {
        const orderBy = line.on === null ? null : workingDaysBefore(line.on, rule.leadDays, week);
        return { ...line, standOn: days[index] ?? null, orderBy, isPast: line.buy > 0 && orderBy !== null && orderBy < today };
      }),
    }];
  });
}

export const takenByDay = (layouts: readonly CutStock[], parts: readonly Part[], groups: readonly GroupDays[]): readonly StockDay[] => stockByDay(layouts, wantedParts(parts, groups));
