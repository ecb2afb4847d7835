import { degC, m_per_h } from "#lib/kernel/units.ts";
import { ciriaTemperatureCoefficient } from "#lib/trade/engineering/pressure/ciria-108.ts";
import { aPour, envelopeOf } from "#tests/support/builders/a-pour.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

// C1 = 1.5: both plan sides up to 2 m; C2 = 0.45: Portland cement with a retarder.
const pour = aPour({ method: "ciria-108", retarder: true, riseRate: m_per_h(1), temperature: degC(12.5) });
const envelope = () => envelopeOf(pour, 9.05, 0.6);

export const published: PublishedSource = {
  source: "Worked calculation to CIRIA Report 108 (1985) on a public engineering forum (engineersedge.com)",
  cases: [
    {
      id: "CASE-A6", at: "formwork pressure thread", what: "column of 9.05 m, 25 kN/m3, C1 1.5, C2 0.45, R 1 m/h, 12.5 degC",
      figures: {
        K: figure(1.6, "", abs(0.005), () => ciriaTemperatureCoefficient(pour.temperature)),
        Pmax: figure(86.82, "kPa", abs(0.05), () => envelope().limit),
        hydrostatic: figure(226.25, "kPa", abs(0.01), () => envelopeOf({ ...pour, method: "full-head" }, 9.05, 0.6).limit),
        depth_of_hydrostatic_zone: figure(3.47, "m", abs(0.01), () => envelope().liquidDepth),
      },
    },
  ],
};
