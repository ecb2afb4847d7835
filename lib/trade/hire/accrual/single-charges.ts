import type { HireFacts, Trip } from "../facts.ts";
import { numberOf } from "../day-number.ts";
import { inForceOn, type TermsStretch } from "../terms/terms-in-force.ts";
import type { HireTerms, ItemRate } from "../terms/hire-terms.ts";
import type { ChargeKind } from "./charge-line.ts";
import type { Found } from "./hire-lines.ts";
import type { Day } from "#lib/kernel/days.ts";

const TRIP_CHARGE: Readonly<Record<Trip["kind"], (terms: HireTerms) => number>> = {
  delivery: (terms) => terms.deliveryCharge,
  collection: (terms) => terms.collectionCharge,
  "failed-collection": (terms) => terms.failedCollectionCharge,
};
type Once = { readonly kind: ChargeKind; readonly docketId: string; readonly itemId: string | null; readonly quantity: number; readonly on: Day };

/** What is charged once, on its day: trips, losses, damage, cleaning. */
export function singleCharges(facts: HireFacts, laid: readonly TermsStretch[], found: Found): void {
  for (const { kind, docketId, on } of facts.trips) once({ kind, docketId, itemId: null, quantity: 1, on }, (terms) => TRIP_CHARGE[kind](terms), laid, found);
  for (const { docketId, itemId, quantity, on } of facts.missing) once({ kind: "loss", docketId, itemId, quantity, on }, priced(itemId, "lossPrice"), laid, found);
  for (const { docketId, itemId, damaged, dirty, on } of facts.returned) {
    once({ kind: "damage", docketId, itemId, quantity: damaged, on }, priced(itemId, "damagePrice"), laid, found);
    once({ kind: "cleaning", docketId, itemId, quantity: dirty, on }, priced(itemId, "cleaningPrice"), laid, found);
  }
}

const priced = (itemId: string, price: "lossPrice" | "damagePrice" | "cleaningPrice") =>
  (_terms: HireTerms, rates: ReadonlyMap<string, ItemRate>): number | null => rates.get(itemId)?.[price] ?? null;

function once(charge: Once, priceOf: (terms: HireTerms, rates: ReadonlyMap<string, ItemRate>) => number | null, laid: readonly TermsStretch[], found: Found): void {
  const { on, ...rest } = charge;
  if (charge.quantity === 0) return;
  const stretch = inForceOn(laid, numberOf(on));
  const price = stretch ? priceOf(stretch.terms, stretch.rates) : null;
  const what = charge.kind === "loss" || charge.kind === "damage" || charge.kind === "cleaning" ? charge.kind : ("terms" as const);
  if (!stretch || price === null) found.gaps.push({ reason: stretch ? "no-price" : "no-terms", docketId: charge.docketId, itemId: charge.itemId, from: on, to: on, what: stretch ? what : "terms" });
  else if (price > 0) found.lines.push({ ...rest, from: on, to: on, termsId: stretch.terms.id, price, amount: price * charge.quantity, working: null });
}
