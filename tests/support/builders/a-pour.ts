import { degC, kN_per_m3, m_per_h, mm } from "#lib/kernel/units.ts";
import { celsius, KN_PER_M3_PER_PCF } from "#lib/kernel/us-units.ts";
import type { PressureConditions, PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import { pressureEnvelope } from "#lib/trade/engineering/pressure-envelope.ts";
import { valueOf } from "./value-of.ts";

/** Plain Portland concrete of 25 kN/m3 at 15 degC, placed from the top and vibrated, rising 2 m/h. */
export const aPour = (change: Partial<PressureConditions>): PressureConditions => ({
  method: "full-head",
  concreteDensity: kN_per_m3(25),
  temperature: degC(15),
  riseRate: m_per_h(2),
  cement: "portland",
  retarder: false,
  slump: mm(100),
  vibrationDepth: mm(900),
  selfCompacting: false,
  externalVibration: false,
  placing: "from-top",
  pourHeight: null,
  ...change,
});

/** 150 lb/ft3, with rate [ft/h] and temperature [degF] as US sources give them. */
export const usPour = (rate: number, temperature: number, change: Partial<PressureConditions> = {}): PressureConditions =>
  aPour({ method: "aci-347-us", concreteDensity: kN_per_m3(150 * KN_PER_M3_PER_PCF), riseRate: m_per_h(rate * 0.3048), temperature: degC(celsius(temperature)), ...change });

/** Height and largest plan side in metres. */
export const envelopeOf = (pour: PressureConditions, height: number, side: number): PressureEnvelope =>
  valueOf(pressureEnvelope(pour, { height: mm(height * 1000), largestSide: mm(side * 1000) }));
