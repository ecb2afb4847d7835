import type { Day } from "#lib/kernel/days.ts";

/** Pieces of one size by the day they are needed in the yard, the earliest first, those without a day last. */
export type Need = { readonly on: Day | null; readonly planned: number };
export type Coming = { readonly on: Day; readonly count: number };
export type BuyLine = {
  readonly on: Day | null;
  readonly planned: number;
  /** Over the plan, for what is spoilt. */
  readonly allowance: number;
  readonly fromHand: number;
  readonly fromOrders: number;
  /** Of those, pieces whose order is wanted later than they are needed. */
  readonly tooLate: number;
  readonly buy: number;
};

const WHOLE = 10_000;

/**
 * What is still to be bought of one size. The allowance is taken of the running sum, so that it is rounded up once and not
 * on every day; what is at hand serves the first days, then what is on order, the earliest delivery first. Pieces are whole.
 * Example: 10 by the 3rd and 10 by the 10th with 12.5 % over: 11.25, so 12, by the 3rd, and 22.5, so 23, in all. With 5 at
 * hand and 4 on order, 3 are to be bought by the 3rd and 11 by the 10th.
 */
export function toBuy(needs: readonly Need[], waste: number, atHand: number, coming: readonly Coming[]): readonly BuyLine[] {
  let [sum, before, hand] = [0, 0, Math.max(atHand, 0)];
  const orders = [...coming].sort((a, b) => (a.on < b.on ? -1 : 1)).map((each) => ({ ...each }));
  return needs.map(({ on, planned }) => {
    sum += planned;
    const withWaste = Math.ceil((sum * (WHOLE + waste)) / WHOLE);
    const needed = withWaste - before;
    before = withWaste;
    const fromHand = Math.min(hand, needed);
    hand -= fromHand;
    let [open, fromOrders, tooLate] = [needed - fromHand, 0, 0];
    for (const order of orders) {
      const taken = Math.min(order.count, open);
      order.count -= taken;
      open -= taken;
      fromOrders += taken;
      if (on !== null && order.on > on) tooLate += taken;
    }
    return { on, planned, allowance: needed - planned, fromHand, fromOrders, tooLate, buy: open };
  });
}
