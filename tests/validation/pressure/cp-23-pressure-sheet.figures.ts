/** The expression of CP 23 is that of CIRIA Report 108; C2 = 0.7 is the sheet's own choice. It prints lengths to the centimetre. */
import { degC, kN_per_m3, m, m_per_h } from "#lib/kernel/units.ts";
import { ciriaPressure, ciriaTemperatureCoefficient } from "#lib/trade/engineering/pressure/ciria-108.ts";
import { fullHead } from "#lib/trade/engineering/pressure/full-head.ts";
import { pressureResultant } from "#lib/trade/engineering/pressure/resultant.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

const [density, height, temperature] = [kN_per_m3(25), m(3), degC(30)];
const limit = () => valueOf(ciriaPressure({ density, shape: 1.0, material: 0.7, riseRate: m_per_h(1.5), temperature, formHeight: height, pourHeight: height })).limit;
const zone = () => m(limit() / density);

export const published: PublishedSource = {
  source: "Project wall-formwork pressure sheet to Singapore CP 23:2000 cl. 3.4.3 (scribd.com/document/701166567)",
  cases: [
    {
      id: "CASE-A8", at: "pressure sheet", what: "wall of 3 m, 25 kN/m3, C1 1, C2 0.7, R 1.5 m/h, 30 degC",
      figures: {
        K: figure(0.61, "", abs(0.005), () => ciriaTemperatureCoefficient(temperature)),
        Pmax: figure(44.9, "kPa", abs(0.02), limit),
        hydrostatic: figure(75, "kPa", abs(0.01), () => fullHead(density, height, false).limit),
        H1: figure(1.8, "m", abs(0.005), zone),
        H2: figure(1.2, "m", abs(0.005), () => height - zone()),
        average: figure(31.46, "kPa", abs(0.02), () => pressureResultant({ limit: limit(), liquidDepth: zone(), pourHeight: height }).average),
      },
    },
  ],
};
