import type { CuttingRule } from "#lib/contracts/planning/cutting.ts";

export type Bounded = { readonly cost: number; readonly bound: number; readonly proven: boolean };
type Stock = Pick<CuttingRule["sheets"][number], "price" | "onHand">;

/**
 * What the plan takes and what no plan can do without: counted in pieces where there is one kind of them to buy and none
 * on the rack, else in money. "The fewest" is said of a plan at the bound only.
 */
export function boundWords({ cost, bound, proven }: Bounded, stock: readonly Stock[], one: string, many: string, money: (minor: number) => string): string {
  const [only] = stock;
  if (stock.length === 1 && only && only.onHand === null) {
    const count = Math.round(cost / only.price);
    const least = Math.ceil(bound / only.price - 1e-6);
    const counted = (value: number) => `${value} ${value === 1 ? one : many}`;
    return proven ? `${counted(count)}; no plan can use fewer.` : `${counted(count)}; no plan can use fewer than ${least}.`;
  }
  return proven ? `Stock for ${money(cost)}; no plan can cost less.` : `Stock for ${money(cost)}; no plan can cost less than ${money(Math.ceil(bound - 1e-6))}.`;
}
