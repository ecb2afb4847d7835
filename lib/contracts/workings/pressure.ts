import { z } from "zod";
import { degC, hours, kN_per_m3, m_per_h, mm } from "#lib/kernel/units.ts";
import { CEMENT_GROUPS, CONSISTENCY_CLASSES, PRESSURE_METHODS, WORKING_ONLY_METHODS } from "#lib/trade/engineering/pour-conditions.ts";
import type { PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import type { PressureAnswer, PressureInput } from "#lib/trade/engineering/workings/pressure.ts";
import { amount, told } from "./amounts.ts";
import { tellWorking, workings } from "./answer-parts.ts";

const pour = z.strictObject({
  method: z.enum([...PRESSURE_METHODS, ...WORKING_ONLY_METHODS]),
  concrete_density_kN_per_m3: amount(1, 100, "Weight of the fresh concrete."),
  temperature_degC: amount(-50, 100, "Of the concrete as placed, not of the air."),
  rise_rate_m_per_h: amount(0.001, 500, "How fast the concrete rises in the form."),
  cement: z.enum(CEMENT_GROUPS).describe("portland: no blend; blend-low: under 70 % slag or 40 % fly ash; blend-high: over those shares."),
  retarder: z.boolean().describe("Any admixture that delays set, retarding superplasticizers included."),
  slump_mm: amount(0, 1000, "Slump of the concrete as placed."),
  vibration_depth_mm: amount(0, 30_000, "How deep the internal vibrator goes below the surface."),
  self_compacting: z.boolean(),
  external_vibration: z.boolean(),
  placing: z.enum(["from-top", "pumped-from-base"]),
  pour_height_mm: amount(1, 30_000, "Height of concrete in the form.").nullable().default(null).describe("Null fills the form to its top."),
  consistency: z.enum(CONSISTENCY_CLASSES).nullable().default(null).describe("Read by DIN 18218 only."),
  setting_end_h: amount(0.1, 100, "From mixing until the concrete no longer presses.").nullable().default(null).describe("Read by DIN 18218:2010 only."),
});

/** Nested in the beam's and the clamp layout's input as well. */
export const pressureShape = z.strictObject({
  pour,
  form: z.strictObject({ height_mm: amount(1, 30_000, "From foot to top."), largest_side_mm: amount(1, 30_000, "Of the column on plan.") }),
  batter_mm_per_m: amount(0, 1000, "How far a face leans inwards over each metre of height.").default(0),
});

export function toPressure({ pour: given, form, batter_mm_per_m }: z.output<typeof pressureShape>): PressureInput {
  return {
    pour: {
      method: given.method,
      concreteDensity: kN_per_m3(given.concrete_density_kN_per_m3),
      temperature: degC(given.temperature_degC),
      riseRate: m_per_h(given.rise_rate_m_per_h),
      cement: given.cement,
      retarder: given.retarder,
      slump: mm(given.slump_mm),
      vibrationDepth: mm(given.vibration_depth_mm),
      selfCompacting: given.self_compacting,
      externalVibration: given.external_vibration,
      placing: given.placing,
      pourHeight: given.pour_height_mm === null ? null : mm(given.pour_height_mm),
      consistency: given.consistency,
      settingEnd: given.setting_end_h === null ? null : hours(given.setting_end_h),
    },
    form: { height: mm(form.height_mm), largestSide: mm(form.largest_side_mm) },
    batterPerMetre: mm(batter_mm_per_m),
  };
}

export const pressureInput = pressureShape.transform(toPressure);

/** The pressure over the height of the concrete; in the clamp layout's answer as well. */
export const envelopeTold = z.strictObject({
  method: z.string(),
  edition: z.string().describe("Name and edition of the method."),
  value_kind: z.enum(["service", "characteristic"]).describe("A characteristic value goes with partial factors only, never against permissible stresses."),
  withdrawn_edition: z.boolean(),
  governs: z.enum(["liquid head", "formula", "minimum"]),
  points: z.array(z.strictObject({ depth_m: told("Below the concrete surface."), pressure_kPa: told("Straight lines between the points.") })),
  pour_height_m: told("Height of concrete."),
  limit_kPa: told("The largest pressure, at the foot."),
  liquid_depth_m: told("Depth at which the liquid head reaches the limit."),
});

export const tellEnvelope = (envelope: PressureEnvelope): z.output<typeof envelopeTold> => ({
  method: envelope.method, edition: envelope.edition, value_kind: envelope.valueKind, withdrawn_edition: envelope.withdrawn, governs: envelope.governs,
  points: envelope.points.map(({ depth, pressure }) => ({ depth_m: depth, pressure_kPa: pressure })),
  pour_height_m: envelope.pourHeight, limit_kPa: envelope.limit, liquid_depth_m: envelope.liquidDepth,
});

export const pressureAnswer = envelopeTold.extend({
  resultant_kN_per_m: told("All the pressure on one metre of face width."),
  resultant_height_m: told("Of the resultant above the foot."),
  average_kPa: told("Over the height of the concrete."),
  uplift_kN_per_m: told("Upwards, per metre of face width; 0 for an upright form."),
  notes: z.array(z.enum(["characteristic-value", "withdrawn-edition", "uplift-from-batter", "seal-and-hold-down", "props-not-covered"])),
  working: workings,
});
export type PressureTold = z.output<typeof pressureAnswer>;

export const tellPressure = ({ envelope, ...answer }: PressureAnswer): PressureTold => ({
  ...tellEnvelope(envelope),
  resultant_kN_per_m: answer.resultant, resultant_height_m: answer.resultantHeight, average_kPa: answer.average, uplift_kN_per_m: answer.uplift,
  notes: [...answer.notes], working: tellWorking(answer.working),
});

/** An upright form of an invented column, filled at a moderate rate. */
export const pressureExample = {
  pour: {
    method: "ciria-108", concrete_density_kN_per_m3: 24.5, temperature_degC: 14, rise_rate_m_per_h: 2.6, cement: "portland", retarder: false,
    slump_mm: 110, vibration_depth_mm: 600, self_compacting: false, external_vibration: false, placing: "from-top",
  },
  form: { height_mm: 4150, largest_side_mm: 650 },
  batter_mm_per_m: 0,
} satisfies z.input<typeof pressureShape>;
