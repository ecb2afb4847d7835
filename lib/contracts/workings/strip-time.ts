import { z } from "zod";
import { degC, hours, N_per_mm2 } from "#lib/kernel/units.ts";
import type { AgeFunction, StripRule } from "#lib/trade/engineering/strip-time/strip-rule.ts";
import { HARDENING_CLASSES } from "#lib/trade/engineering/strip-time/maturity.ts";
import type { StripTimeAnswer, StripTimeInput } from "#lib/trade/engineering/workings/strip-time.ts";
import { amount, told } from "./amounts.ts";
import { tellWorking, workings } from "./answer-parts.ts";

const temperature = (about: string) => amount(-60, 120, about);
const MOST_HOURS = 24 * 90;

const age = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("arrhenius"), activation_energy_kJ_per_mol: amount(1, 500, "Of this cement."), reference_degC: temperature("Reference temperature.") }),
  z.strictObject({ kind: z.literal("astm-c1074"), q_K: amount(1, 50_000, "Activation energy over the gas constant."), reference_degC: temperature("Reference temperature.") }),
  z.strictObject({ kind: z.literal("en-1992") }),
]);

const rule = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("aci-347") }),
  z.strictObject({ kind: z.literal("is-456"), hours_h: amount(0.1, 1000, "As the engineer decides.") }),
  z.strictObject({ kind: z.literal("bs-8110") }),
  z.strictObject({
    kind: z.literal("project-hours"), hours_h: amount(0.1, 2000, "The project's own hours."),
    least_temperature_degC: temperature("Colder hours do not count.").nullable().default(null),
  }),
  z.strictObject({ kind: z.literal("maturity"), datum_degC: temperature("Nothing hardens below it."), required_degC_h: amount(0.1, 1_000_000, "Maturity asked for.") }),
  z.strictObject({ kind: z.literal("equivalent-age"), age, required_h: amount(0.1, 100_000, "Equivalent age asked for.") }),
  z.strictObject({
    kind: z.literal("strength"), hardening: z.enum(HARDENING_CLASSES).describe("Of the cement: slow, normal or rapid."),
    mean_strength_28_N_per_mm2: amount(0.1, 500, "At 28 days."), stress_on_release_N_per_mm2: amount(0, 500, "As the designer states it."),
    least_strength_N_per_mm2: amount(0, 500, "The project's own least strength, whatever the stress."),
  }),
]);

const shape = z.strictObject({
  rule,
  hourly_degC: z.array(temperature("Mean of one whole hour.").nullable()).min(1, "Give at least one hour.").max(MOST_HOURS, `Not more than ${MOST_HOURS} hours.`)
    .describe("From the end of the pour; null where the record has a gap."),
  measured: z.enum(["air", "concrete"]),
});

function toAge(given: z.output<typeof age>): AgeFunction {
  switch (given.kind) {
    case "arrhenius": return { kind: given.kind, activationEnergyKjPerMol: given.activation_energy_kJ_per_mol, reference: degC(given.reference_degC) };
    case "astm-c1074": return { kind: given.kind, q: given.q_K, reference: degC(given.reference_degC) };
    case "en-1992": return given;
  }
}

function toRule(given: z.output<typeof rule>): StripRule {
  switch (given.kind) {
    case "aci-347": case "bs-8110": return given;
    case "is-456": return { kind: given.kind, hours: hours(given.hours_h) };
    case "project-hours": return { kind: given.kind, hours: hours(given.hours_h), leastTemperature: given.least_temperature_degC === null ? null : degC(given.least_temperature_degC) };
    case "maturity": return { kind: given.kind, datum: degC(given.datum_degC), required: given.required_degC_h };
    case "equivalent-age": return { kind: given.kind, age: toAge(given.age), required: hours(given.required_h) };
    case "strength":
      return {
        kind: given.kind, hardening: given.hardening, meanStrength28: N_per_mm2(given.mean_strength_28_N_per_mm2),
        stressOnRelease: N_per_mm2(given.stress_on_release_N_per_mm2), leastStrength: N_per_mm2(given.least_strength_N_per_mm2),
      };
  }
}

export const stripTimeInput = shape.transform((given): StripTimeInput => ({
  rule: toRule(given.rule),
  hourly: given.hourly_degC.map((reading) => (reading === null ? null : degC(reading))),
  measured: given.measured,
}));

const CAUTIONS = ["early-strength-by-test", "clock-is-not-strength", "air-for-concrete", "soffit-rule-governs", "engineer-releases", "frost"] as const;
export const stripTimeAnswer = z.strictObject({
  earliest_h: told("After the end of the pour. Never a release."),
  required: told("In the unit beside it."),
  unit: z.string(),
  progress: z.array(told("Gathered by the end of each hour.")),
  depends_on: z.array(z.string()),
  cautions: z.array(z.enum(CAUTIONS)),
  working: workings,
});
export type StripTimeTold = z.output<typeof stripTimeAnswer>;

export const tellStripTime = ({ earliest, required, unit, progress, dependsOn, cautions, working }: StripTimeAnswer): StripTimeTold => ({
  earliest_h: earliest, required, unit, progress: [...progress], depends_on: [...dependsOn], cautions: [...cautions], working: tellWorking(working),
});

export const stripTimeExample = {
  rule: { kind: "maturity", datum_degC: -10, required_degC_h: 420 },
  hourly_degC: [19, 20, 22, 24, 25, 25, 24, 23, 22, 21, 20, 19, 18, 18, 17, 17, 18, 19, 20, 21],
  measured: "concrete",
} satisfies z.input<typeof shape>;
