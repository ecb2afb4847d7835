/** The edition of 1980 is withdrawn: kept for comparing with old sheets. The handout rounds to 0.1 kPa and to the centimetre. */
import { degC, m_per_h } from "#lib/kernel/units.ts";
import { aPour, envelopeOf } from "#tests/support/builders/a-pour.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

const entry = (id: string, consistency: "K1" | "K2", rate: number, temperature: number, pressure: number, height: number): PublishedSource["cases"][number] => {
  const envelope = () => envelopeOf(aPour({ method: "din-18218-1980", consistency, riseRate: m_per_h(rate), temperature: degC(temperature) }), 6, 0.5);
  return {
    id, at: `table ${consistency}`, what: `${consistency === "K1" ? "stiff" : "plastic"} concrete of 25 kN/m3, v ${rate} m/h, ${temperature} degC`,
    figures: {
      pressure: figure(pressure, "kPa", abs(0.06), () => envelope().limit),
      hydrostatic_height: figure(height, "m", abs(0.01), () => envelope().liquidDepth),
    },
  };
};

export const published: PublishedSource = {
  source: "Handout on concrete pressure on vertical formwork, tables to DIN 18218 (09/80) (it.scribd.com/document/361298437)",
  cases: [
    entry("CASE-A9a", "K1", 2, 15, 31.0, 1.24),
    entry("CASE-A9b", "K1", 2, 5, 40.3, 1.61),
    entry("CASE-A9c", "K2", 1, 10, 33.4, 1.33),
    entry("CASE-A9d", "K2", 3, 15, 49.0, 1.96),
    entry("CASE-A9e", "K2", 0.5, 20, 20.4, 0.82),
  ],
};
