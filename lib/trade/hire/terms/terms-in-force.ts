import type { Day } from "#lib/kernel/days.ts";
import { numberOf, type DayNumber } from "../day-number.ts";
import { chargedCalendar, type ChargedCalendar } from "./charged-days.ts";
import type { HireTerms, ItemRate } from "./hire-terms.ts";

export type TermsStretch = { readonly terms: HireTerms; readonly from: DayNumber; readonly calendar: ChargedCalendar; readonly rates: ReadonlyMap<string, ItemRate> };

/** A supplier's versions laid end to end, oldest first. */
export const layTerms = (versions: readonly HireTerms[]): readonly TermsStretch[] =>
  [...versions]
    .sort((a, b) => (a.validFrom < b.validFrom ? -1 : 1))
    .map((terms) => ({ terms, from: numberOf(terms.validFrom), calendar: chargedCalendar(terms), rates: new Map(terms.rates.map((rate) => [rate.itemId, rate])) }));

/** The version in force on a day; undefined before the first. */
export const inForceOn = (laid: readonly TermsStretch[], on: DayNumber): TermsStretch | undefined => laid.findLast(({ from }) => from <= on);

export type TermsClash = { readonly validFrom: Day; readonly latest: Day };

/**
 * A new version begins after every version there is. One that began earlier or on the same day would lie over terms
 * that somebody has already been charged by; it is refused, and the mistaken version withdrawn instead.
 */
export function clashWith(versions: readonly Pick<HireTerms, "validFrom">[], validFrom: Day): TermsClash | null {
  const latest = versions.map((version) => version.validFrom).sort().at(-1);
  return latest !== undefined && validFrom <= latest ? { validFrom, latest } : null;
}
