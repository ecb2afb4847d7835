import type { Term } from "#lib/trade/engineering/working.ts";
import { MM_PER_INCH } from "#lib/kernel/us-units.ts";
import { figureText, quantityText, type Unit, type Units } from "#app/_ui/value/format-quantity.ts";
import { quantityEdge } from "#app/_ui/value/quantity-edge.ts";

const UNIT_SIGNS: Readonly<Record<string, string>> = {
  "kN/m3": "kN/m³", "N/mm2": "N/mm²", "kN.m": "kN·m", "kN.m2": "kN·m²", "kN.m/m": "kN·m/m", "kN.m2/m": "kN·m²/m",
  "degC": "°C", "degF": "°F", "pcf": "lb/ft³",
};
export const unitSign = (unit: string): string => UNIT_SIGNS[unit] ?? unit;

/** Four significant figures: enough to follow a derivation by hand, no more than its inputs bear. */
export const significant = (value: number): string => String(Number(value.toPrecision(4))).replace("-", "−");

/** `p = 82.41 kPa`. Derivations keep the units of their formula, or they could not be checked. */
export function termText({ name, value, unit }: Term): string {
  const figure = typeof value === "number" ? significant(value) : value;
  return `${name} = ${figure}${unit === "" ? "" : ` ${unitSign(unit)}`}`;
}

const TOLD_AGAIN: readonly string[] = ["mm", "m", "kN", "kN.m", "kPa"] satisfies Unit[];
const isTold = (unit: string): unit is Unit => TOLD_AGAIN.includes(unit);

/** A result once more as a US customary project reads it; empty where it needs no repeating. */
export const toldAgain = ({ value, unit }: Term, units: Units): string =>
  units === "us" && typeof value === "number" && isTold(unit) ? ` (${quantityText(value, unit, "us")})` : "";

const RAISED: Readonly<Record<string, string>> = { 2: "²", 3: "³", 4: "⁴" };

/** `f b d2 / 6` as it is printed: f b d² / 6. A capital C with a figure is a coefficient's name, no power. */
export const formulaText = (formula: string): string =>
  formula
    .replace(/\b((?!C)[A-Za-z])([234])\b/g, (_, letter: string, power: string) => `${letter}${RAISED[power] ?? power}`)
    .replace(/\bsqrt\(/g, "√(")
    .replace(/ - /g, " − ");

/** Demand or capacity of a check as the project reads it. */
export function checkValue(value: number, unit: string, units: Units): string {
  if (units === "metric") return `${significant(value)} ${unitSign(unit)}`;
  switch (unit) {
    case "kN": case "kN.m": case "kN/m":
      return quantityText(value, unit, units);
    case "kN.m/m": {
      const edge = quantityEdge(unit, units);
      return `${figureText(edge.toTyped(value), edge.places)} ${edge.unit}`;
    }
    case "mm":
      return `${figureText(value / MM_PER_INCH, 3)} in`;
    case "mm/m":
      return `${figureText((value * 12) / 1000, 4)} in/ft`;
    default:
      return `${significant(value)} ${unitSign(unit)}`;
  }
}

export const percent = (utilisation: number): string => `${Math.round(utilisation * 100)} %`;
