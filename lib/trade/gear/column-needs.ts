export type Clamping = { readonly setId: string; readonly clamps: number; readonly wedgeId: string | null; readonly wedgesEach: number };

/**
 * What holds one form, as the ledger counts it: each clamp is one set, locked by its own wedges.
 * Eight clamps of four wedges are 8 sets and 8 x 4 = 32 wedges.
 */
export function columnNeeds({ setId, clamps, wedgeId, wedgesEach }: Clamping): readonly { readonly itemId: string; readonly quantity: number }[] {
  const sets = { itemId: setId, quantity: clamps };
  return wedgeId === null || wedgesEach === 0 ? [sets] : [sets, { itemId: wedgeId, quantity: clamps * wedgesEach }];
}

/** From the day a form is stood up to the day it is stripped, that day not counted: its gear is free again. */
export type InForm = { readonly from: number; readonly until: number; readonly pieces: number };

/**
 * Purpose: pieces bound in forms at once, at the worst.
 * Formula: peak = max over days d of the sum of pieces with from <= d < until.
 * Parameters: days as whole numbers from any first day; pieces per form, whole.
 * Result: pieces; 0 where nothing stands.
 * Example: 4 columns a day, in form 3 days, 8 clamps each: 4 x 3 x 8 = 96.
 * Source: common practice, no source.
 */
export function peakInForm(forms: readonly InForm[]): number {
  const steps = forms.flatMap(({ from, until, pieces }) => (until > from ? [{ day: from, by: pieces }, { day: until, by: -pieces }] : []));
  // What is stripped in the morning stands again the same day, so it is taken off before it is added.
  steps.sort((left, right) => left.day - right.day || left.by - right.by);
  let [now, peak] = [0, 0];
  for (const { by } of steps) {
    now += by;
    peak = Math.max(peak, now);
  }
  return peak;
}

/** Pieces with a spare share on top, whole pieces: 96 and 5 % are 100.8, so 101. */
export const withFloat = (pieces: number, percent: number): number => Math.ceil((pieces * (100 + percent)) / 100);
