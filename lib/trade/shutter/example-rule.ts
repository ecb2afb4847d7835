import { degC, kN, kN_per_m, kN_per_m3, kg, m_per_h, mm, N_per_mm2 } from "#lib/kernel/units.ts";
import { KN_PER_M3_PER_PCF } from "#lib/kernel/us-units.ts";
import { kN_m2_per_m, kN_m_per_m } from "#lib/trade/engineering/engineering-units.ts";
import type { PourConditions } from "#lib/trade/engineering/pour-conditions.ts";
import type { ClampKind, KilogramsPerCubicMetre, ShutterRule } from "./shutter-rule.ts";

/** Opens the source line of every figure below; a form set made from one carries a warning. */
export const EXAMPLE_MARK = "EXAMPLE";
const REPLACE = `${EXAMPLE_MARK}: not a supplier's figure; replace it by the supplier's or hirer's own before use`;

const kg_per_m3 = (value: number): KilogramsPerCubicMetre => value as KilogramsPerCubicMetre;

/** A rule to start from. The ply's and timber's values are round examples of plausible size, nobody's declared values. */
export const EXAMPLE_RULE: ShutterRule = {
  joint: "two-over",
  overPair: "A-C",
  ply: {
    label: "Film-faced ply 18 mm",
    thickness: mm(18),
    sheetLength: mm(2440),
    sheetWidth: mm(1220),
    density: kg_per_m3(650),
    bendingStiffness: kN_m2_per_m(2.6),
    momentCapacity: kN_m_per_m(0.47),
    shearCapacity: kN_per_m(7.5),
    source: REPLACE,
  },
  backing: {
    label: "Timber 95 × 47 mm",
    width: mm(95),
    depth: mm(47),
    orientation: "edge",
    stockLength: mm(4800),
    density: kg_per_m3(480),
    modulus: N_per_mm2(7000),
    bendingStress: N_per_mm2(9),
    shearStress: N_per_mm2(1.3),
    source: REPLACE,
  },
  edgeProud: mm(0),
  largestTimberCentres: mm(300),
  filletLeg: mm(20),
  baseCleats: true,
  jointCleats: true,
  kickerHeight: mm(75),
  clampSpacing: { module: mm(25), firstMin: mm(100), firstMax: mm(200), topMax: mm(300), smallestGap: mm(150), largestGap: mm(700) },
  deflectionRatio: 270,
  twoPersonLift: kg(50),
};

/** The same in inches, feet and pounds: 3/4 in. ply, 2 × 4 timber, clamps by the inch. Sheets and lengths in whole millimetres, as cutting counts them. */
export const EXAMPLE_RULE_US: ShutterRule = {
  ...EXAMPLE_RULE,
  ply: {
    ...EXAMPLE_RULE.ply,
    label: "Film-faced ply 3/4 in",
    thickness: mm(19.05),
    sheetLength: mm(2438),
    sheetWidth: mm(1219),
    bendingStiffness: kN_m2_per_m(3.1),
    momentCapacity: kN_m_per_m(0.52),
    shearCapacity: kN_per_m(8),
  },
  backing: {
    ...EXAMPLE_RULE.backing,
    label: "Timber 2 × 4",
    width: mm(88.9),
    depth: mm(38.1),
    stockLength: mm(4877),
    modulus: N_per_mm2(8300),
    bendingStress: N_per_mm2(10),
  },
  largestTimberCentres: mm(304.8),
  filletLeg: mm(19.1),
  kickerHeight: mm(76),
  clampSpacing: { module: mm(25.4), firstMin: mm(101.6), firstMax: mm(203.2), topMax: mm(304.8), smallestGap: mm(152.4), largestGap: mm(711.2) },
};

/** Bars of three lengths; every figure is an example. */
export const EXAMPLE_CLAMP_KINDS: readonly ClampKind[] = [
  { id: "short", name: "Short clamp", minSize: mm(300), maxSize: mm(750), sideCapacity: kN(24), barLength: mm(950), barDepth: mm(70), barThickness: mm(10), weight: kg(17), source: REPLACE },
  { id: "middle", name: "Middle clamp", minSize: mm(400), maxSize: mm(1150), sideCapacity: kN(32), barLength: mm(1400), barDepth: mm(90), barThickness: mm(10), weight: kg(29), source: REPLACE },
  { id: "long", name: "Long clamp", minSize: mm(450), maxSize: mm(1500), sideCapacity: kN(44), barLength: mm(1800), barDepth: mm(110), barThickness: mm(12), weight: kg(52), source: REPLACE },
];

/** Conditions to start from: the full head needs no promise about the pour, so it is the default. */
export const EXAMPLE_POUR: PourConditions = {
  method: "full-head",
  concreteDensity: kN_per_m3(25),
  temperature: degC(18),
  riseRate: m_per_h(2),
  cement: "portland",
  retarder: false,
  slump: mm(120),
  vibrationDepth: mm(800),
  selfCompacting: false,
  externalVibration: false,
  placing: "from-top",
  pourHeight: null,
};

/** 150 lb/ft³, 70 °F, 6 ft an hour, 5 in. of slump, vibrated to 2 ft 6 in. */
export const EXAMPLE_POUR_US: PourConditions = { ...EXAMPLE_POUR, concreteDensity: kN_per_m3(150 * KN_PER_M3_PER_PCF), temperature: degC((70 - 32) / 1.8), riseRate: m_per_h(6 * 0.3048), slump: mm(127), vibrationDepth: mm(762) };
