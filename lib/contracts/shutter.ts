import { z } from "zod";
import { CEMENT_GROUPS, PRESSURE_METHODS, type PourConditions } from "#lib/trade/engineering/pour-conditions.ts";
import { JOINT_TYPES, type ClampKind, type ShutterRule } from "#lib/trade/shutter/shutter-rule.ts";
import { between, id, line, tenthMm, wholeMm } from "./fields.ts";

const ply = z.object({
  label: line(80),
  thickness: between(9, 40, "Ply thickness in mm"),
  sheetLength: wholeMm(600, 4000),
  sheetWidth: wholeMm(300, 2000),
  density: between(300, 1200, "Density in kg/m³"),
  bendingStiffness: between(0.05, 60, "EI in kN·m²/m"),
  momentCapacity: between(0.02, 10, "Moment capacity in kN·m/m"),
  shearCapacity: between(0.5, 100, "Shear capacity in kN/m"),
  source: line(200),
});

const backing = z.object({
  label: line(80),
  width: tenthMm(20, 200),
  depth: tenthMm(20, 250),
  orientation: z.enum(["flat", "edge"]),
  stockLength: wholeMm(1000, 8000),
  density: between(250, 1200, "Density in kg/m³"),
  modulus: between(2000, 20_000, "Modulus in N/mm²"),
  bendingStress: between(1, 60, "Bending stress in N/mm²"),
  shearStress: between(0.2, 10, "Shear stress in N/mm²"),
  source: line(200),
});

const clampSpacing = z
  .object({
    module: tenthMm(5, 100),
    firstMin: tenthMm(0, 600),
    firstMax: tenthMm(0, 600),
    topMax: tenthMm(50, 1200),
    smallestGap: tenthMm(50, 600),
    largestGap: tenthMm(100, 1500),
  })
  .refine((spacing) => spacing.firstMin <= spacing.firstMax, "The lowest clamp's least height is above its greatest.")
  .refine((spacing) => spacing.smallestGap <= spacing.largestGap, "The smallest gap is above the largest.");

export const shutterRule = z.object({
  joint: z.enum(JOINT_TYPES),
  overPair: z.enum(["A-C", "B-D"]),
  ply,
  backing,
  edgeProud: wholeMm(0, 40),
  largestTimberCentres: tenthMm(100, 600),
  filletLeg: tenthMm(5, 50).nullable(),
  baseCleats: z.boolean(),
  jointCleats: z.boolean(),
  kickerHeight: wholeMm(0, 300),
  clampSpacing,
  deflectionRatio: between(100, 1000, "Deflection ratio"),
  twoPersonLift: between(10, 100, "Two-person lift in kg"),
});

export const pourConditions = z.object({
  method: z.enum(PRESSURE_METHODS),
  concreteDensity: between(10, 45, "Density in kN/m³"),
  temperature: between(-5, 45, "Concrete temperature in °C"),
  riseRate: between(0.1, 60, "Rate of rise in m/h"),
  cement: z.enum(CEMENT_GROUPS),
  retarder: z.boolean(),
  slump: wholeMm(0, 300),
  vibrationDepth: wholeMm(0, 5000),
  selfCompacting: z.boolean(),
  externalVibration: z.boolean(),
  placing: z.enum(["from-top", "pumped-from-base"]),
  pourHeight: wholeMm(100, 30_000).nullable(),
});

const spanLoad = z.object({ span: wholeMm(50, 4000), load: between(0.5, 500, "Load in kN") });

export const clampKindInput = z
  .object({
    id: id.optional(),
    name: line(80),
    minSize: wholeMm(50, 3000),
    maxSize: wholeMm(50, 3000),
    sideCapacity: between(0.5, 500, "Capacity in kN"),
    capacityBySpan: z.array(spanLoad).max(20).default([]),
    arm: z.object({ sectionModulus: between(0.1, 2000, "Section modulus in cm³"), stress: between(5, 1000, "Stress in N/mm²") }).nullable().default(null),
    wedgeCapacity: between(0.5, 500, "Wedge pull in kN").nullable().default(null),
    barLength: wholeMm(100, 4000),
    barDepth: wholeMm(5, 300),
    barThickness: wholeMm(3, 300),
    weight: between(0.5, 200, "Weight in kg"),
    source: line(200),
    isExample: z.boolean(),
  })
  .refine((kind) => kind.minSize < kind.maxSize, { path: ["maxSize"], message: "The largest size must be above the smallest." })
  .refine(({ capacityBySpan }) => new Set(capacityBySpan.map(({ span }) => span)).size === capacityBySpan.length, { path: ["capacityBySpan"], message: "A span stands in the list twice." });

/** As kept with the kind; what the hirer does not state is left out. */
export const keptSpanLoads = z.array(spanLoad);

export const retireClampKindInput = z.object({ clampKindId: id });

/** Quantities in the rule carry their unit in the type; the contract has checked them as plain numbers. */
export const asShutterRule = (rule: z.output<typeof shutterRule>): ShutterRule => rule as unknown as ShutterRule;
export const asPourConditions = (pour: z.output<typeof pourConditions>): PourConditions => pour as unknown as PourConditions;
type StatedKind = Omit<z.output<typeof clampKindInput>, "isExample" | "arm" | "wedgeCapacity"> & { arm?: { sectionModulus: number; stress: number } | undefined; wedgeCapacity?: number | undefined };
export const asClampKind = (kind: StatedKind): ClampKind => kind as unknown as ClampKind;
