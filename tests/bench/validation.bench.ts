import { groupBy } from "#lib/kernel/group-by.ts";
import { allDeviations, type Deviation } from "#tests/support/figures/published-figures.ts";
import type { Row } from "./parts/row.ts";

/** Where a source was read; it stands in full beside its cases. */
const ADDRESS = / \([^()]*\w\.(com|us|pub)\b[^()]*\)$|, 03700 \(.*\)$| \(damontallen.*\)$/;

const inWords = (quantity: string): string => quantity.replace(/^L_/, "L/").replaceAll("_", " ");
const count = (number: number, what: string): string => `${number} ${what}${number === 1 ? "" : "s"}`;

function rowOf(source: string, deviations: readonly Deviation[]): Row {
  const worst = deviations.reduce((a, b) => (b.percent > a.percent ? b : a));
  const cases = new Set(deviations.map(({ id }) => id)).size;
  const largest = worst.percent < 0.005 ? "no deviation" : `largest deviation ${worst.percent.toFixed(2)} % (${worst.id}, ${inWords(worst.quantity)})`;
  return {
    what: source.replace(ADDRESS, ""),
    measured: `${count(cases, "case")}, ${count(deviations.length, "figure")}, ${largest}`,
    budget: "each within its own tolerance",
    ok: deviations.every(({ agrees }) => agrees),
  };
}

/** What each outside source prints beside what ours answers: not a speed, but a measure all the same. */
export async function run(): Promise<Row[]> {
  const bySource = groupBy(await allDeviations(), ({ source }) => source);
  return [...bySource].map(([source, deviations]) => rowOf(source, deviations)).sort((a, b) => a.what.localeCompare(b.what));
}
