import { hours as inHours } from "#lib/kernel/units.ts";
import type { DegreesCelsius, Hours } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { countingOf } from "../strip-time/counting.ts";
import type { Count } from "../strip-time/counting.ts";
import type { StripRule } from "../strip-time/strip-rule.ts";
import { refusal, term } from "../working.ts";
import type { Refusal, Working } from "../working.ts";

export type StripTimeInput = {
  readonly rule: StripRule;
  /** One reading for each whole hour from the end of the pour, its mean; null where the record has a gap. */
  readonly hourly: readonly (DegreesCelsius | null)[];
  readonly measured: "air" | "concrete";
};

/** Wording lives in the screens. */
export type StripCaution = "early-strength-by-test" | "clock-is-not-strength" | "air-for-concrete" | "soffit-rule-governs" | "engineer-releases" | "frost";

export type StripTimeAnswer = {
  /** After the end of the pour; parts of an hour are counted at that hour's temperature. */
  readonly earliest: Hours;
  readonly required: number;
  readonly unit: string;
  /** What had been gathered by the end of each hour, to the end of the record. */
  readonly progress: readonly number[];
  readonly dependsOn: readonly string[];
  readonly cautions: readonly StripCaution[];
  readonly working: readonly Working[];
};

export type StripTimeWorking = (input: StripTimeInput) => Result<StripTimeAnswer, Refusal>;

const CLOCKS: ReadonlySet<StripRule["kind"]> = new Set(["aci-347", "is-456", "bs-8110", "project-hours"]);
const WITHIN: Partial<Record<StripRule["kind"], readonly [number, number]>> = { "bs-8110": [0, 25], strength: [0, 80] };
const THREE_DAYS = 72;

function boundsOf(rule: StripRule): readonly (readonly [string, number, number, number])[] {
  switch (rule.kind) {
    case "is-456": return [["hours by IS 456:2000 (h)", rule.hours, 16, 24]];
    case "project-hours": return [["the project's hours (h)", rule.hours, 1, 1000], ["least temperature (degC)", rule.leastTemperature ?? 0, -10, 40]];
    case "maturity": return [["maturity asked for (degC.h)", rule.required, 1, 100_000], ["datum (degC)", rule.datum, -12, 10]];
    case "equivalent-age": return [["equivalent age asked for (h)", rule.required, 1, 2000], ...ageBounds(rule)];
    case "strength":
      return [["mean strength at 28 days (N/mm2)", rule.meanStrength28, 10, 120], ["stress on release (N/mm2)", rule.stressOnRelease, 0, 60], ["least strength (N/mm2)", rule.leastStrength, 0, 60], ["strength asked for (N/mm2)", Math.max(rule.leastStrength, 2 * rule.stressOnRelease), Number.MIN_VALUE, rule.meanStrength28]];
    default: return [];
  }
}

function ageBounds({ age }: Extract<StripRule, { kind: "equivalent-age" }>): readonly (readonly [string, number, number, number])[] {
  if (age.kind === "arrhenius") return [["activation energy (kJ/mol)", age.activationEnergyKjPerMol, 20, 70], ["reference (degC)", age.reference, 0, 40]];
  return age.kind === "astm-c1074" ? [["Q (K)", age.q, 2000, 9000], ["reference (degC)", age.reference, 0, 40]] : [];
}

function wrongRule(rule: StripRule): Refusal | null {
  const broken = boundsOf(rule).find(([, given, least, most]) => !(given >= least && given <= most));
  if (broken === undefined) return null;
  const [limit, given, least, most] = broken;
  return refusal({ limit, given, allowed: least === Number.MIN_VALUE ? `over 0, up to ${most}` : `${least} to ${most}`, source: countingOf(rule).source, message: "Correct the rule." });
}

type Reached = { readonly earliest: number; readonly progress: readonly number[] };

/** Goes through the hours until the rule is met; the readings up to there have to be whole and within the rule's temperatures. */
function goThrough(input: StripTimeInput, count: Count): Result<Reached, Refusal> {
  const age = input.rule.kind === "equivalent-age" && input.rule.age.kind === "en-1992";
  const [coldest, warmest] = WITHIN[input.rule.kind] ?? (age ? [0, 80] : [-40, 100]);
  const progress: number[] = [];
  let gathered = 0;
  let earliest: number | null = null;
  for (const [hour, temperature] of input.hourly.entries()) {
    if (earliest !== null && temperature === null) break;
    if (temperature === null)
      return fail(refusal({ limit: "temperature record", given: `a gap in hour ${hour + 1}`, allowed: "a reading for every hour up to stripping", source: count.source, message: "Fill the gap from another gauge, or count the hour as too cold by entering its least possible temperature." }));
    if (!(temperature >= coldest && temperature <= warmest))
      return fail(refusal({ limit: `temperature in hour ${hour + 1} (degC)`, given: temperature, allowed: `${coldest} to ${warmest} degC`, source: count.source, message: "The rule does not hold at that temperature." }));
    const gain = count.gain(temperature);
    if (earliest === null) earliest = meetsWithin(count, hour, gathered, gain);
    gathered += gain;
    progress.push(count.value(gathered));
  }
  if (earliest !== null) return ok({ earliest, progress });
  const reached = progress[progress.length - 1] ?? 0;
  return fail(refusal({ limit: "length of the temperature record (h)", given: input.hourly.length, allowed: `long enough to reach ${count.required} ${count.unit} at ${count.leastHours} h or later`, source: count.source, message: `By its end ${Number(reached.toPrecision(4))} ${count.unit} are reached. Go on measuring, or add the forecast.` }));
}

/** The moment within the hour at which the value is reached, by halving: the value never falls with what is gathered. */
function meetsWithin(count: Count, hour: number, gathered: number, gain: number): number | null {
  const met = (part: number) => count.value(gathered + gain * part) >= count.required - 1e-9 && hour + part >= count.leastHours - 1e-9;
  if (!met(1)) return null;
  let [low, high] = [0, 1];
  if (met(0)) return hour;
  for (let halving = 0; halving < 40; halving += 1) {
    const middle = (low + high) / 2;
    if (met(middle)) high = middle;
    else low = middle;
  }
  return hour + high;
}

function cautionsOf(input: StripTimeInput, earliest: number): readonly StripCaution[] {
  const cautions: StripCaution[] = ["engineer-releases", "soffit-rule-governs"];
  if (CLOCKS.has(input.rule.kind)) cautions.push("clock-is-not-strength");
  if (input.rule.kind === "strength" && earliest < THREE_DAYS) cautions.push("early-strength-by-test");
  if (!CLOCKS.has(input.rule.kind) && input.measured === "air") cautions.push("air-for-concrete");
  if (input.hourly.some((temperature) => temperature !== null && temperature <= 0)) cautions.push("frost");
  return cautions;
}

/**
 * The earliest time to strip an upright face by one rule and one temperature record, and what it hangs on. Never a release.
 *
 * Formula: each hour gathers what `countingOf` says at its temperature; the rule is met when the value reaches what is asked for, not before the least time.
 * Parameters: input with the rule's hours [h], maturity [degC.h], temperatures [degC] or strengths [N/mm2]; hourly [degC], up to 2160 readings.
 * Result: earliest time after the end of the pour [h]; what is asked for and what is reached at each hour [-], in the unit beside them.
 * Limits: refused for a gap in the record before stripping, a temperature outside the rule's own range, a rule outside its range, and a record that ends
 *   too early.
 * Example: maturity from -10 degC, 420 degC.h, 20 degC throughout: 420 / 30 = 14 h.
 * Source: as of the rule: ACI 347-04, IS 456:2000, BS 8110-1:1997, ASTM C1074-19, EN 1992-1-1:2004, or the project's own.
 */
export const stripTimeWorking: StripTimeWorking = (input) => {
  const wrong = wrongRule(input.rule);
  if (wrong !== null) return fail(wrong);
  if (input.hourly.length > 24 * 90) return fail(refusal({ limit: "length of the temperature record (h)", given: input.hourly.length, allowed: "up to 2160 h", source: "input", message: "Shorten the record." }));
  const count = countingOf(input.rule);
  const reached = goThrough(input, count);
  if (!reached.ok) return reached;
  const { earliest, progress } = reached.value;
  const read = input.hourly.slice(0, Math.ceil(earliest)).filter((temperature) => temperature !== null);
  const mean = read.reduce<number>((sum, temperature) => sum + temperature, 0) / Math.max(1, read.length);
  const working: Working = {
    title: "Earliest time to strip an upright face",
    inputs: [term("rule", input.rule.kind, ""), term("readings", `${input.measured}, hourly`, ""), term("asked for", count.required, count.unit)],
    formula: count.formula,
    steps: [term("mean temperature up to then", mean, "degC"), term("coldest hour up to then", Math.min(...read), "degC"), term("least time by the rule", count.leastHours, "h")],
    result: term("earliest, after the end of the pour", earliest, "h"),
    source: count.source,
  };
  return ok({ earliest: inHours(earliest), required: count.required, unit: count.unit, progress, dependsOn: count.dependsOn, cautions: cautionsOf(input, earliest), working: [working] });
};
