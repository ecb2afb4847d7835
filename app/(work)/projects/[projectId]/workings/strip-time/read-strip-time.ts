import type { z } from "zod";
import type { stripTimeInput } from "#lib/contracts/workings/strip-time.ts";
import { HARDENING_CLASSES } from "#lib/trade/engineering/strip-time/maturity.ts";
import { choiceOf, numberOf, numberOrNull, textOf, type Entries } from "#app/_ui/form/read-form.ts";

export type StripTimeGiven = z.input<typeof stripTimeInput>;
export type RuleGiven = StripTimeGiven["rule"];
export type AgeGiven = Extract<RuleGiven, { kind: "equivalent-age" }>["age"];

export const RULE_KINDS = ["project-hours", "aci-347", "is-456", "bs-8110", "maturity", "equivalent-age", "strength"] as const;
export const AGE_KINDS = ["en-1992", "arrhenius", "astm-c1074"] as const;

function readAge(entries: Entries): AgeGiven {
  const kind = choiceOf(entries, "rule.age.kind", AGE_KINDS);
  const reference_degC = numberOf(entries, "rule.age.reference_degC");
  switch (kind) {
    case "en-1992": return { kind };
    case "arrhenius": return { kind, activation_energy_kJ_per_mol: numberOf(entries, "rule.age.activation_energy_kJ_per_mol"), reference_degC };
    case "astm-c1074": return { kind, q_K: numberOf(entries, "rule.age.q_K"), reference_degC };
  }
}

function readRule(entries: Entries): RuleGiven {
  const kind = choiceOf(entries, "rule.kind", RULE_KINDS);
  const number = (name: string) => numberOf(entries, `rule.${name}`);
  switch (kind) {
    case "aci-347": case "bs-8110": return { kind };
    case "is-456": return { kind, hours_h: number("hours_h") };
    case "project-hours": return { kind, hours_h: number("hours_h"), least_temperature_degC: numberOrNull(entries, "rule.least_temperature_degC") };
    case "maturity": return { kind, datum_degC: number("datum_degC"), required_degC_h: number("required_degC_h") };
    case "equivalent-age": return { kind, age: readAge(entries), required_h: number("required_h") };
    case "strength":
      return {
        kind, hardening: choiceOf(entries, "rule.hardening", HARDENING_CLASSES), mean_strength_28_N_per_mm2: number("mean_strength_28_N_per_mm2"),
        stress_on_release_N_per_mm2: number("stress_on_release_N_per_mm2"), least_strength_N_per_mm2: number("least_strength_N_per_mm2"),
      };
  }
}

const readHourly = (text: string): (number | null)[] => (text === "" ? [] : text.split(",").map((word) => (word === "" ? null : Number(word))));

export const readStripTime = (entries: Entries): StripTimeGiven => ({
  rule: readRule(entries),
  hourly_degC: readHourly(textOf(entries, "hourly_degC")),
  measured: choiceOf(entries, "measured", ["air", "concrete"]),
});
