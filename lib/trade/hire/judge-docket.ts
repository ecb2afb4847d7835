import type { Day } from "#lib/kernel/days.ts";
import { callable } from "./accrual/endings.ts";
import { mayLeave } from "./balance.ts";
import type { HireFacts } from "./facts.ts";

/** A rule a docket breaks, with the figures that broke it. */
export type DocketFault = { readonly code: string; readonly values: Readonly<Record<string, string | number>> };

export type Proposed = {
  readonly kind: string; readonly number: string; readonly on: Day;
  readonly lines: readonly { readonly itemId: string; readonly quantity: number }[];
  /** The docket it answers, as an order or a call. */
  readonly answers: { readonly number: string; readonly on: Day } | null;
};
export type Beside = {
  readonly today: Day;
  readonly facts: HireFacts;
  /** Numbers of the same kind from the same supplier. */
  readonly numbers: readonly string[];
  readonly itemName: (itemId: string) => string;
};

/** Kinds that may lie ahead: what is ordered or agreed for a day to come. */
const MAY_LIE_AHEAD = ["order", "stand-down"];

/** What stands against writing a docket down; null where nothing does. */
export function judgeDocket(docket: Proposed, beside: Beside): DocketFault | null {
  const { kind, number, on, answers } = docket;
  if (beside.numbers.some((known) => known.toUpperCase() === number.toUpperCase())) return { code: "docket-number-known", values: { number } };
  if (on > beside.today && !MAY_LIE_AHEAD.includes(kind)) return { code: "docket-ahead", values: { on, today: beside.today } };
  if (answers && on < answers.on) return { code: "docket-before-answered", values: { on, answers: answers.number, answeredOn: answers.on } };
  return tooMany(docket, beside);
}

function tooMany({ kind, on, lines }: Proposed, { facts, itemName }: Beside): DocketFault | null {
  const leaves = kind === "return" || kind === "missing";
  if (!leaves && kind !== "off-hire") return null;
  for (const { itemId, quantity } of lines) {
    const most = leaves ? mayLeave(facts, itemId, on) : callable(facts, itemId, on);
    if (quantity > most) return { code: leaves ? "more-than-on-hire" : "more-than-callable", values: { item: itemName(itemId), asked: quantity, there: Math.max(0, most), on } };
  }
  return null;
}
