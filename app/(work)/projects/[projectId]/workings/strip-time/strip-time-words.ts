import type { StripTimeTold } from "#lib/contracts/workings/strip-time.ts";
import type { TypedUnit } from "#app/_ui/value/quantity-edge.ts";
import { quantityEdge } from "#app/_ui/value/quantity-edge.ts";
import { figureText, type Units } from "#app/_ui/value/format-quantity.ts";
import { typedWords } from "../_parts/answer/input-words.ts";
import type { InputLine } from "../_parts/calculator.ts";
import type { AgeGiven, RuleGiven } from "./read-strip-time.ts";

export const RULES: readonly { readonly value: RuleGiven["kind"]; readonly label: string; readonly note?: string }[] = [
  { value: "project-hours", label: "The project’s own hours" },
  { value: "aci-347", label: "ACI 347-04, 12 h", note: "hours at 10 °C (50 °F) or above; from memory" },
  { value: "is-456", label: "IS 456:2000, 16 to 24 h", note: "hours at 15 °C (59 °F) or above" },
  { value: "bs-8110", label: "BS 8110-1:1997, 300 / (t + 10)", note: "from memory" },
  { value: "maturity", label: "Maturity (Nurse-Saul)", note: "degree-hours found by tests on this concrete" },
  { value: "equivalent-age", label: "Equivalent age", note: "hours at a reference temperature" },
  { value: "strength", label: "Strength by EN 1992-1-1", note: "at least twice the stress on release" },
];

export const AGES: readonly { readonly value: AgeGiven["kind"]; readonly label: string }[] = [
  { value: "en-1992", label: "EN 1992-1-1, Annex B" }, { value: "arrhenius", label: "Arrhenius, with activation energy" }, { value: "astm-c1074", label: "ASTM C1074, with Q" },
];

export const HARDENING = [
  { value: "N", label: "N, normal" }, { value: "R", label: "R, rapid" }, { value: "S", label: "S, slow" },
] as const;

export const CAUTIONS: Readonly<Record<StripTimeTold["cautions"][number], string>> = {
  "engineer-releases": "This is the earliest time by the rule, never a release: the engineer, or who is named for it, releases the strip.",
  "soffit-rule-governs": "It is for upright faces only. Beams, slabs and anything that carries weight on the form follow the soffit rule.",
  "clock-is-not-strength": "Hours are not strength: cold, retarders and blends set later than the clock says.",
  "early-strength-by-test": "Under three days the strength formula is uncertain: prove the early strength by tests on this concrete.",
  "air-for-concrete": "Air temperatures stand in for those of the concrete, which they may lie above: measure in the concrete at its edge.",
  "frost": "The record touches freezing: protect the concrete, and do not count hours in which it froze.",
};

const isEdged = (unit: string): unit is TypedUnit => unit === "degC.h" || unit === "N/mm2";

export type GatheredEdge = { readonly unit: string; readonly toShown: (kept: number) => number; readonly fromShown: (shown: number) => number; readonly text: (kept: number) => string };

/** What the rule gathers, as the project reads it: hours, degree-hours or strength. */
export function gatheredEdge(unit: string, units: Units): GatheredEdge {
  const edge = isEdged(unit) ? quantityEdge(unit, units) : { unit, places: 1, toTyped: (kept: number) => kept, toKept: (typed: number) => typed };
  return { unit: edge.unit, toShown: edge.toTyped, fromShown: edge.toKept, text: (kept) => `${figureText(edge.toTyped(kept), edge.places)} ${edge.unit}` };
}

function ageLines(age: AgeGiven, units: Units): readonly InputLine[] {
  const name: InputLine = ["Age function", AGES.find(({ value }) => value === age.kind)?.label ?? age.kind];
  if (age.kind === "en-1992") return [name];
  const energy: InputLine = age.kind === "arrhenius" ? ["Activation energy", `${age.activation_energy_kJ_per_mol} kJ/mol`] : ["Q", `${age.q_K} K`];
  return [name, energy, ["Reference", typedWords(age.reference_degC, "degC", units)]];
}

export function ruleLines(rule: RuleGiven, units: Units): readonly InputLine[] {
  const name: InputLine = ["Rule", RULES.find(({ value }) => value === rule.kind)?.label ?? rule.kind];
  const degrees = (value: number) => typedWords(value, "degC", units);
  switch (rule.kind) {
    case "aci-347": case "bs-8110": return [name];
    case "is-456": return [name, ["Hours", `${rule.hours_h} h`]];
    case "project-hours": return [name, ["Hours", `${rule.hours_h} h`], ["Colder hours do not count", rule.least_temperature_degC === null || rule.least_temperature_degC === undefined ? "every hour counts" : `under ${degrees(rule.least_temperature_degC)}`]];
    case "maturity": return [name, ["Datum", degrees(rule.datum_degC)], ["Maturity asked for", typedWords(rule.required_degC_h, "degC.h", units)]];
    case "equivalent-age": return [name, ...ageLines(rule.age, units), ["Age asked for", `${rule.required_h} h`]];
    case "strength": {
      const stress = (value: number) => typedWords(value, "N/mm2", units);
      return [name, ["Cement class", rule.hardening], ["Mean strength at 28 days", stress(rule.mean_strength_28_N_per_mm2)], ["Stress on release", stress(rule.stress_on_release_N_per_mm2)], ["Least strength", stress(rule.least_strength_N_per_mm2)]];
    }
  }
}
