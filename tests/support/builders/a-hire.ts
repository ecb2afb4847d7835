import type { Caller } from "#lib/server/gate/caller.ts";
import { countDocket, recordDocket } from "#lib/server/hire/record-docket.ts";
import { addTerms, saveSupplier } from "#lib/server/hire/suppliers.ts";
import type { TermsRule } from "#lib/contracts/hire/terms.ts";
import { gearOf } from "./a-stock.ts";
import { valueOf } from "./value-of.ts";

/** Wedges at 0.60 a day, charged from the day they come to the day they go, both in full. */
export const RULE: TermsRule = {
  start: "day-delivered", stop: { by: "collection", isLastDayCharged: true, noticeDays: 0, noticeCount: "calendar" }, ladder: { kind: "daily" },
  workingWeekdays: [1, 2, 3, 4, 5], holidays: [], charged: "every-day", areHolidaysCharged: true, missingShare: null, standDownShare: 5000,
  deliveryCharge: 18_000, collectionCharge: 18_000, failedCollectionCharge: 9000, docketMinimum: 0,
};
export const rateOf = (itemId: string) => ({
  itemId, supplierName: "Wedge, steel", perDay: 6000, perWeek: null, perMonth: null, minimumDays: 0, lossPrice: 900, damagePrice: 300, cleaningPrice: 50,
});

export type Hire = { readonly projectId: string; readonly supplierId: string; readonly itemId: string };

/** A supplier with terms from the start of 2026. */
export async function aSupplier(by: Caller, projectId: string, name: string, rule: TermsRule = RULE): Promise<Hire> {
  const { supplierId } = valueOf(await saveSupplier(by, { projectId, name }));
  const itemId = (await gearOf(by, projectId)).item("Wedge");
  valueOf(await addTerms(by, { projectId, supplierId, validFrom: "2026-01-01", currency: "AUD", rule, rates: [rateOf(itemId)] }));
  return { projectId, supplierId, itemId };
}

export const paper = ({ projectId, supplierId }: Hire, number: string, on: string) => ({ projectId, supplierId, number, on, happenedAt: `${on}T01:00:00.000Z`, name: "Pat at the gate" });

export const aDelivery = async (by: Caller, hire: Hire, number: string, on: string, quantity: number): Promise<string> =>
  valueOf(await countDocket(by, { ...paper(hire, number, on), kind: "delivery", bySupplier: true, lines: [{ itemId: hire.itemId, quantity }] })).docketId;

export const aReturn = async (by: Caller, hire: Hire, number: string, on: string, quantity: number, callId: string | null = null): Promise<string> =>
  valueOf(await countDocket(by, { ...paper(hire, number, on), kind: "return", bySupplier: true, callId, lines: [{ itemId: hire.itemId, quantity }] })).docketId;

export const aCall = async (by: Caller, hire: Hire, number: string, on: string, quantity: number): Promise<string> =>
  valueOf(await recordDocket(by, { ...paper(hire, number, on), kind: "off-hire", lines: [{ itemId: hire.itemId, quantity }] })).docketId;
