import { naturalOrder } from "#lib/kernel/natural-order.ts";

/** One spelling for a name when two are compared. */
export const nameKey = (name: string): string => name.toLowerCase().replace(/\s+/g, " ").trim();

const NTH = ["ground", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

const RANKS: readonly (readonly [RegExp, (digits: number) => number])[] = [
  [/^(?:fdn|ftg|footing|foundation|foundations|pile cap|raft)$/, () => -10_000],
  [/^(?:basement|bsmt|b)[\s-]*(\d{0,2})$/, (count) => -10 * Math.max(count, 1)],
  [/^(?:lower ground|lg)(?: floor|f)?()$/, () => -5],
  [/^(?:g|gf|gl|gr|grd|gnd|ground)(?: floor| level)?()$/, () => 0],
  [/^(?:upper ground|ug)(?: floor|f)?()$/, () => 3],
  [/^(?:mezzanine|mezz|m)\s?(\d{0,2})$/, (count) => 10 * count + 5],
  [/^(?:level|lvl|lev|l|floor|fl|f|storey|story|st)[\s.]*(\d{1,3})$/, (count) => 10 * count],
  [/^(\d{1,3})(?:st|nd|rd|th)?\s*(?:floor|fl|f|storey|story|level)?$/, (count) => 10 * count],
  [/^(?:roof|rf|r|roof slab|roof level)()$/, () => 10_000],
  [/^(?:upper roof|ur|top roof|lift roof|plant roof)()$/, () => 10_010],
];

/** How high a level lies going by its name alone (B2 < B1 < GF < L1 < roof); null for a name of the job's own. Common practice, no source. */
export function levelRank(name: string): number | null {
  const key = nameKey(name);
  const nth = NTH.findIndex((word) => key === `${word} floor` || key === `${word} level`);
  if (nth >= 0) return 10 * nth;
  for (const [pattern, rank] of RANKS) {
    const found = pattern.exec(key);
    if (found) return rank(Number(found[1] ?? 0));
  }
  return null;
}

export const isLevelName = (name: string): boolean => levelRank(name) !== null;

export type LevelFacts = {
  readonly names: readonly string[];
  /** Lower and upper name of two levels known to stand in that order. */
  readonly pairs: readonly (readonly [string, string])[];
  readonly elevations: ReadonlyMap<string, number>;
};

/** Lowest first: by elevation where known, then by who stands on whom, then by name. `tangled` when the pairs contradict one another. */
export function orderLevels(facts: LevelFacts): { readonly names: readonly string[]; readonly tangled: boolean } {
  const below = standingBelow(facts);
  const left = new Map(facts.names.map((name, index) => [nameKey(name), { name, index }]));
  const ordered: string[] = [];
  let tangled = false;
  while (left.size > 0) {
    const all = [...left.entries()];
    const free = all.filter(([key]) => ![...(below.get(key) ?? [])].some((lower) => left.has(lower)));
    if (free.length === 0) tangled = true;
    const [key, next] = (free.length > 0 ? free : all).reduce((low, other) => (comesFirst(other[1], low[1], facts) ? other : low));
    ordered.push(next.name);
    left.delete(key);
  }
  return { names: ordered, tangled };
}

/** True when the facts already say that `upper` is not above `lower`. */
export function contradicts(lower: string, upper: string, elevations: ReadonlyMap<string, number>): boolean {
  const [low, high] = [elevations.get(nameKey(lower)), elevations.get(nameKey(upper))];
  if (low !== undefined && high !== undefined) return high <= low;
  const [lowRank, highRank] = [levelRank(lower), levelRank(upper)];
  return nameKey(lower) === nameKey(upper) || (lowRank !== null && highRank !== null && highRank < lowRank);
}

function standingBelow(facts: LevelFacts): Map<string, Set<string>> {
  const below = new Map<string, Set<string>>();
  const note = (lower: string, upper: string) => below.set(upper, (below.get(upper) ?? new Set()).add(lower));
  for (const [lower, upper] of facts.pairs) {
    if (!contradicts(lower, upper, facts.elevations)) note(nameKey(lower), nameKey(upper));
  }
  const measured = [...facts.elevations].sort((a, b) => a[1] - b[1]);
  measured.forEach(([key], index) => {
    const under = measured[index - 1];
    if (under) note(under[0], key);
  });
  return below;
}

type Placed = { readonly name: string; readonly index: number };

function comesFirst(a: Placed, b: Placed, facts: LevelFacts): boolean {
  const [high, low] = [facts.elevations.get(nameKey(a.name)), facts.elevations.get(nameKey(b.name))];
  if (high !== undefined && low !== undefined && high !== low) return high < low;
  const [rankA, rankB] = [levelRank(a.name), levelRank(b.name)];
  if (rankA !== null && rankB !== null && rankA !== rankB) return rankA < rankB;
  if (rankA === null && rankB === null) return naturalOrder(a.name, b.name) < 0;
  return a.index < b.index;
}
