import { addDays, type Day, daysBetween } from "#lib/kernel/days.ts";
import { accrue } from "#lib/trade/hire/accrual/accrue.ts";
import { type HireFacts, NO_FACTS, type StandDown } from "#lib/trade/hire/facts.ts";
import type { HireTerms } from "#lib/trade/hire/terms/hire-terms.ts";
import type { ChargeByEnd } from "#lib/trade/planning/returns/return-order.ts";

/** Minor units for this many pieces are hundredths of a minor unit for one. */
const PIECES = 100;
/** Minimum hire and notice may run on after a piece is gone. */
const DAYS_AFTER = 400;

export type ChargeBasis = {
  readonly versions: readonly HireTerms[];
  readonly standDowns: readonly StandDown[];
  readonly dates: readonly Day[];
  readonly callOn: readonly Day[];
  /** Whether the supplier's truck comes on that date, and whether a call today or later is in time for it to collect. */
  readonly mayCome: readonly boolean[];
  readonly mayCollect: readonly boolean[];
  /** Expected loss a day of one piece, in hundredths of a minor unit. */
  readonly lossADay: number;
};

/** What one piece still costs from today on, by the date it goes back. */
export function lotCharge(basis: ChargeBasis, itemId: string, delivered: { readonly on: Day; readonly dispatchedOn: Day | null }): ChargeByEnd {
  const today = basis.dates[0];
  return basis.dates.map((_, to) => (today === undefined || !basis.mayCollect[to] || to === 0 ? null : chargeOf(basis, itemId, delivered, to, today)));
}

/** What one piece more costs from one date to another; none can be had before `firstDelivery`. */
export function hireCharge(basis: ChargeBasis, itemId: string, firstDelivery: Day): readonly ChargeByEnd[] {
  return basis.dates.slice(0, -1).map((on, from) => basis.dates.map((_, to) => (to <= from || from === 0 || !basis.mayCome[from] || on < firstDelivery || !basis.mayCollect[to] ? null : chargeOf(basis, itemId, { on, dispatchedOn: null }, to, on))));
}

function chargeOf(basis: ChargeBasis, itemId: string, delivered: { readonly on: Day; readonly dispatchedOn: Day | null }, to: number, from: Day): number {
  const on = basis.dates[to] ?? from;
  const called = basis.callOn[to] ?? on;
  const piece = { itemId, quantity: PIECES };
  const facts: HireFacts = {
    ...NO_FACTS, standDowns: basis.standDowns,
    delivered: [{ ...piece, docketId: "came", on: delivered.on, dispatchedOn: delivered.dispatchedOn }],
    calledOff: [{ ...piece, docketId: "called", on: called < delivered.on ? delivered.on : called }],
    returned: [{ ...piece, docketId: "left", on, callId: "called", damaged: 0, dirty: 0 }],
  };
  const { lines } = accrue(basis.versions, facts, { from, to: addDays(on, DAYS_AFTER) });
  const hire = lines.reduce((sum, line) => sum + (line.kind === "hire" || line.kind === "minimum" ? line.amount : 0), 0);
  return hire + basis.lossADay * daysBetween(from, on);
}
