/** The sheet writes 5.0 m under the root although it lists a form of 6.0 m; its numbers only come out with 5.0. Rates unrounded: 4.5 / (10 x width). */
import { degC, kN_per_m3, m, m_per_h } from "#lib/kernel/units.ts";
import { ciriaPressure } from "#lib/trade/engineering/pressure/ciria-108.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { TEMPORARY_WORKS_ASSIGNMENT } from "../sources.ts";

const limit = (rate: number) =>
  valueOf(ciriaPressure({ density: kN_per_m3(25), shape: 1.0, material: 0.45, riseRate: m_per_h(rate), temperature: degC(7), formHeight: m(5), pourHeight: m(5) })).limit;

const atDepth = (id: string, depth: number, rate: number, expected: number): PublishedSource["cases"][number] => ({
  id, at: `pressure sheet, depth ${depth} m`, what: `tapered wall of 5 m, 25 kN/m3, C1 1, C2 0.45, R ${rate} m/h, 7 degC`,
  figures: { Pmax_formula: figure(expected, "kPa", abs(0.02), () => limit(rate)) },
});

export const published: PublishedSource = {
  source: TEMPORARY_WORKS_ASSIGNMENT,
  cases: [atDepth("CASE-A7a", 0, 0.75, 77.69), atDepth("CASE-A7b", 2, 0.6618, 76.73), atDepth("CASE-A7c", 4, 0.5921, 75.93), atDepth("CASE-A7d", 5, 0.5625, 75.57)],
};
