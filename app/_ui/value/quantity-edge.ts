import {
  celsius, fahrenheit, KG_PER_POUND, KN_PER_M3_PER_PCF, KPA_PER_PSF, MM_PER_FOOT, MM_PER_INCH, N_PER_POUND_FORCE,
} from "#lib/kernel/us-units.ts";
import type { Units } from "./format-quantity.ts";

/** Quantities a person types, by the unit they are kept in. */
export type TypedUnit =
  | "kN" | "kg" | "kg/m3" | "kN/m3" | "kPa" | "degC" | "degC.h" | "m/h" | "N/mm2" | "kN/m" | "kN.m/m" | "kN.m2/m" | "mm" | "mm/m" | "cm3";

export type QuantityEdge = {
  readonly unit: string;
  readonly places: number;
  /** From the kept number to the typed one, and back. */
  readonly toTyped: (kept: number) => number;
  readonly toKept: (typed: number) => number;
};

const scaled = (unit: string, places: number, keptPerTyped: number): QuantityEdge => ({
  unit, places, toTyped: (kept) => kept / keptPerTyped, toKept: (typed) => typed * keptPerTyped,
});

const FOOT = MM_PER_FOOT / 1000;
const INCH = MM_PER_INCH / 1000;
const POUND_FORCE = N_PER_POUND_FORCE / 1000;
/** Of a difference in temperature. */
const DEGREES_F_PER_C = 1.8;

const METRIC: Readonly<Record<TypedUnit, QuantityEdge>> = {
  "kN": scaled("kN", 2, 1),
  "kg": scaled("kg", 1, 1),
  "kg/m3": scaled("kg/m³", 0, 1),
  "kN/m3": scaled("kN/m³", 2, 1),
  "kPa": scaled("kPa", 2, 1),
  "degC": scaled("°C", 1, 1),
  "degC.h": scaled("°C·h", 0, 1),
  "m/h": scaled("m/h", 2, 1),
  "N/mm2": scaled("N/mm²", 2, 1),
  "kN/m": scaled("kN/m", 2, 1),
  "kN.m/m": scaled("kN·m/m", 3, 1),
  "kN.m2/m": scaled("kN·m²/m", 3, 1),
  "mm": scaled("mm", 1, 1),
  "mm/m": scaled("mm/m", 1, 1),
  "cm3": scaled("cm³", 2, 1),
};

const US: Readonly<Record<TypedUnit, QuantityEdge>> = {
  "kN": scaled("lb", 0, POUND_FORCE),
  "kg": scaled("lb", 1, KG_PER_POUND),
  "kg/m3": scaled("lb/ft³", 1, KG_PER_POUND / FOOT ** 3),
  "kN/m3": scaled("lb/ft³", 1, KN_PER_M3_PER_PCF),
  "kPa": scaled("psf", 0, KPA_PER_PSF),
  "degC": { unit: "°F", places: 1, toTyped: fahrenheit, toKept: celsius },
  "degC.h": scaled("°F·h", 0, 1 / DEGREES_F_PER_C),
  "m/h": scaled("ft/h", 2, FOOT),
  "N/mm2": scaled("psi", 0, (KPA_PER_PSF * 144) / 1000),
  "kN/m": scaled("lb/ft", 0, POUND_FORCE / FOOT),
  "kN.m/m": scaled("lb·in/ft", 0, (POUND_FORCE * INCH) / FOOT),
  "kN.m2/m": scaled("lb·in²/ft", 0, (POUND_FORCE * INCH ** 2) / FOOT),
  "mm": scaled("in", 4, MM_PER_INCH),
  "mm/m": scaled("in/ft", 3, MM_PER_INCH / FOOT),
  "cm3": scaled("in³", 3, (MM_PER_INCH / 10) ** 3),
};

export const quantityEdge = (unit: TypedUnit, units: Units): QuantityEdge => (units === "us" ? US : METRIC)[unit];
