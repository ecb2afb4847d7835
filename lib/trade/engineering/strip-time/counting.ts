import type { DegreesCelsius } from "#lib/kernel/units.ts";
import { N_per_mm2 } from "#lib/kernel/units.ts";
import { unreachable } from "#lib/kernel/result.ts";
import type { AgeFunction, StripRule } from "./strip-rule.ts";
import { arrheniusFactor, astmAgeFactor, en1992AgeFactor, en1992StrengthShare, nurseSaulHour } from "./maturity.ts";
import { BS_8110_SOURCE, CLOCK_RULES, strengthOnRelease } from "./strip-rules.ts";

/**
 * A rule as a sum over hours: each hour gathers `gain` at its temperature, `value` turns the sum into what is asked for, and the rule is met
 * when the value reaches `required` at `leastHours` or later.
 */
export type Count = {
  readonly required: number;
  readonly unit: string;
  readonly leastHours: number;
  readonly gain: (temperature: DegreesCelsius) => number;
  readonly value: (gathered: number) => number;
  readonly formula: string;
  readonly source: string;
  readonly dependsOn: readonly string[];
};

const itself = (gathered: number): number => gathered;

function ageFactor(age: AgeFunction): (temperature: DegreesCelsius) => number {
  switch (age.kind) {
    case "arrhenius": return (temperature) => arrheniusFactor(temperature, age.reference, age.activationEnergyKjPerMol);
    case "astm-c1074": return (temperature) => astmAgeFactor(temperature, age.reference, age.q);
    case "en-1992": return en1992AgeFactor;
  }
}

const AGE_SOURCES = {
  arrhenius: "Freiesleben Hansen and Pedersen (1977), equivalent age",
  "astm-c1074": "ASTM C1074-19 eq. (2), from memory",
  "en-1992": "EN 1992-1-1:2004 Annex B eq. (B.10), from memory",
} as const;

/** Hours that count only from a temperature on. */
function clock(hours: number, from: number | null, source: string): Count {
  return {
    required: hours, unit: "h", leastHours: hours, value: itself, source,
    gain: (temperature) => (from === null || temperature >= from ? 1 : 0),
    formula: from === null ? "hours since the end of the pour" : `hours at ${from} degC or above, added up`,
    dependsOn: from === null ? ["the hours asked for"] : ["the hours asked for", `air at ${from} degC or above`],
  };
}

/**
 * A strip rule as a count that can be followed hour by hour.
 *
 * Formula: hours count 1 (from a temperature on, else 0); BS 8110 t + 10; maturity max(0, T - T0); equivalent age its factor; strength by the age of Annex B.
 * Parameters: rule with hours [h], maturity [degC.h], temperatures [degC] and strengths [N/mm2].
 * Result: what is asked for in the rule's unit [h], [degC.h] or [N/mm2], the least time [h], and what one hour at a temperature [degC] gathers.
 * Limits: none here; the range of the rule and of the temperatures is held by `stripTimeWorking`.
 * Example: maturity from -10 degC, 420 degC.h asked for: an hour at 20 degC gathers 30 degC.h.
 * Source: ACI 347-04, IS 456:2000, BS 8110-1:1997, ASTM C1074-19, EN 1992-1-1:2004; as of each formula.
 */
export function countingOf(rule: StripRule): Count {
  switch (rule.kind) {
    case "aci-347": return clock(12, CLOCK_RULES["aci-347"].countsFrom, CLOCK_RULES["aci-347"].source);
    case "is-456": return clock(rule.hours, CLOCK_RULES["is-456"].countsFrom, CLOCK_RULES["is-456"].source);
    case "project-hours": return clock(rule.hours, rule.leastTemperature, "The project's own rule");
    case "bs-8110":
      return {
        required: 300, unit: "degC.h", leastHours: 12, value: itself, source: BS_8110_SOURCE,
        gain: (temperature) => temperature + 10,
        formula: "sum of (t + 10) over the hours reaches 300, which is t_mean + 10 = 300 / hours; never under the table's 12 h",
        dependsOn: ["the mean temperature of the concrete's surface", "the table's least of 12 h"],
      };
    case "maturity":
      return {
        required: rule.required, unit: "degC.h", leastHours: 0, value: itself, source: "Nurse-Saul maturity, ASTM C1074-19, from memory",
        gain: (temperature) => nurseSaulHour(temperature, rule.datum),
        formula: "M = sum of max(0, T - T0)",
        dependsOn: ["the concrete's temperature", `the datum of ${rule.datum} degC`, "the maturity asked for, found by tests on this concrete"],
      };
    case "equivalent-age":
      return {
        required: rule.required, unit: "h", leastHours: 0, value: itself, source: AGE_SOURCES[rule.age.kind],
        gain: ageFactor(rule.age),
        formula: "t_e = sum of the hours, each times its age factor",
        dependsOn: ["the concrete's temperature", "the activation energy of this cement", "the equivalent age asked for"],
      };
    case "strength": return strengthCount(rule);
    default: return unreachable(rule);
  }
}

function strengthCount(rule: Extract<StripRule, { kind: "strength" }>): Count {
  return {
    required: strengthOnRelease(N_per_mm2(rule.stressOnRelease), N_per_mm2(rule.leastStrength)), unit: "N/mm2", leastHours: 0,
    gain: en1992AgeFactor,
    value: (gathered) => (gathered > 0 ? rule.meanStrength28 * en1992StrengthShare(gathered / 24, rule.hardening) : 0),
    formula: "f_cm(t) = f_cm exp(s (1 - sqrt(28 / t_T))), t_T by Annex B; at least twice the stress on release",
    source: "EN 1992-1-1:2004 eq. (3.2) and (B.10); IS 456:2000 cl. 11.3 for twice the stress",
    dependsOn: ["the concrete's temperature", `cement class ${rule.hardening}`, "the mean strength at 28 days", "the stress on release as the designer states it"],
  };
}
