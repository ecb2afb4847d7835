import type { Fraction } from "#lib/kernel/fraction.ts";
import type { ChargeGap, ChargeKind, ChargeLine } from "#lib/trade/hire/accrual/charge-line.ts";
import { WHOLE } from "#lib/trade/hire/terms/hire-terms.ts";
import { rateText } from "#app/_ui/value/money.tsx";
import { amountText } from "#app/_ui/value/money.tsx";
import { dayWords } from "#app/_ui/value/time-words.ts";

export const CHARGE_WORDS: Readonly<Record<ChargeKind, string>> = {
  "hire": "Hire", "missing": "Hire of missing gear", "minimum": "Minimum hire", "docket-minimum": "Minimum of the docket", "delivery": "Delivery",
  "collection": "Collection", "failed-collection": "Failed collection", "loss": "Loss", "damage": "Damage", "cleaning": "Cleaning",
};

/** `2`, `3/7`, `1 3/7`. */
function fractionText({ n, d }: Fraction): string {
  const [size, sign] = [n < 0n ? -n : n, n < 0n ? "−" : ""];
  const [whole, rest] = [size / d, size % d];
  if (rest === 0n) return `${sign}${whole}`;
  return `${sign}${whole === 0n ? "" : `${whole} `}${rest}/${d}`;
}

const shareText = (share: number): string => `${Number((share / 100).toFixed(2))} %`;

/** How an amount came about, in one line: pieces, days, rate, share. */
export function workingText(line: ChargeLine, currency: string): string {
  const { working, quantity, price } = line;
  if (!working) return price === null || quantity === 1 ? "" : `${quantity} × ${amountText(price, currency)}`;
  const { units, chargedDays, firstOfHire, share, standDownId } = working;
  const parts = [[units.weeks, "week", working.perWeek], [units.days, "day", working.perDay], [units.months, "month", working.perMonth]] as const;
  const rates = parts.filter(([count]) => count.n !== 0n).map(([count, name, rate]) => `${fractionText(count)} ${name}${count.n === count.d ? "" : "s"} at ${rateText(rate, currency)}`);
  const days = `charged ${chargedDays === 1 ? `day ${firstOfHire}` : `days ${firstOfHire} to ${firstOfHire + chargedDays - 1}`} of the hire`;
  const reduced = share === WHOLE ? "" : ` × ${shareText(share)}${standDownId === null ? "" : " (stand-down)"}`;
  return `${quantity} × ${rates.length === 0 ? "nothing more" : rates.join(" and ")}${reduced}; ${days}`;
}

type NamedGap = ChargeGap & { readonly item: string | null; readonly docket: string };
export function gapText({ reason, item, docket, from, to, what }: NamedGap): string {
  const when = from === to ? `on ${dayWords(from)}` : `from ${dayWords(from)} to ${dayWords(to)}`;
  const thing = item === null ? `docket ${docket}` : `${item}, docket ${docket}`;
  if (reason === "no-terms") return `${thing}: no terms are in force ${when}. Enter the supplier's terms from that day.`;
  if (reason === "no-price") return `${thing}: the terms state no ${what} price ${when}. Enter terms that do.`;
  return `${thing}: the terms state no ${what} rate for it ${when}. Enter terms that do.`;
}
