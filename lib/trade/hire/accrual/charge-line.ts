import type { Day } from "#lib/kernel/days.ts";
import type { Share } from "../terms/hire-terms.ts";
import type { Units } from "../terms/ladder.ts";

export const CHARGE_KINDS = ["hire", "missing", "minimum", "docket-minimum", "delivery", "collection", "failed-collection", "loss", "damage", "cleaning"] as const;
export type ChargeKind = (typeof CHARGE_KINDS)[number];

/** How an amount of hire came about: which days, which rate, which rule. */
export type HireWorking = {
  /** Charged days among those of the line, and which days of this hire they are, the first being 1. */
  readonly chargedDays: number;
  readonly firstOfHire: number;
  readonly units: Units;
  /** Hundredths of a minor unit a piece. */
  readonly perDay: number | null;
  readonly perWeek: number | null;
  readonly perMonth: number | null;
  readonly share: Share;
  /** The agreement behind a share, where it is a stand-down. */
  readonly standDownId: string | null;
};

export type ChargeLine = {
  readonly kind: ChargeKind;
  /** The delivery the hire belongs to, or the docket that brought the charge. */
  readonly docketId: string;
  readonly itemId: string | null;
  readonly quantity: number;
  /** First and last day charged, both included, within one calendar month. */
  readonly from: Day;
  readonly to: Day;
  readonly termsId: string;
  /** Minor units of the terms' currency. */
  readonly amount: number;
  /** Minor units a piece, for what is charged once. */
  readonly price: number | null;
  readonly working: HireWorking | null;
};

/** Days that could not be charged, and why. */
export type ChargeGap = {
  readonly reason: "no-terms" | "no-rate" | "no-price";
  readonly docketId: string; readonly itemId: string | null; readonly from: Day; readonly to: Day;
  /** Which rate or price is missing. */
  readonly what: "day" | "week" | "month" | "loss" | "damage" | "cleaning" | "terms";
};
export type Accrual = { readonly lines: readonly ChargeLine[]; readonly gaps: readonly ChargeGap[] };
