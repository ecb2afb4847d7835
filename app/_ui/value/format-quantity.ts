import {
  fahrenheit, KG_PER_POUND, KN_PER_M3_PER_PCF, KPA_PER_PSF, M2_PER_SQUARE_FOOT, M3_PER_CUBIC_YARD, MM_PER_FOOT, N_PER_POUND_FORCE,
} from "#lib/kernel/us-units.ts";
import { feetInches } from "./feet-inches.ts";

export type Units = "metric" | "us";
/** The unit a number is kept in. */
export type Unit =
  | "mm" | "m" | "m2" | "m3" | "kg" | "kN" | "kN/m" | "kN.m" | "kN/m3" | "kPa" | "N/mm2" | "degC" | "m/h" | "h";

type Edge = { readonly unit: string; readonly places: number; readonly from: (value: number) => number };

const same = (value: number): number => value;
const FEET_PER_METRE = 1000 / MM_PER_FOOT;
const POUNDS_PER_KN = 1000 / N_PER_POUND_FORCE;

const METRIC: Readonly<Record<Unit, Edge>> = {
  "mm": { unit: "mm", places: 0, from: same },
  "m": { unit: "m", places: 3, from: same },
  "m2": { unit: "m²", places: 2, from: same },
  "m3": { unit: "m³", places: 2, from: same },
  "kg": { unit: "kg", places: 0, from: same },
  "kN": { unit: "kN", places: 1, from: same },
  "kN/m": { unit: "kN/m", places: 2, from: same },
  "kN.m": { unit: "kN·m", places: 2, from: same },
  "kN/m3": { unit: "kN/m³", places: 1, from: same },
  "kPa": { unit: "kPa", places: 1, from: same },
  "N/mm2": { unit: "N/mm²", places: 2, from: same },
  "degC": { unit: "°C", places: 0, from: same },
  "m/h": { unit: "m/h", places: 1, from: same },
  "h": { unit: "h", places: 1, from: same },
};

const US: Readonly<Record<Exclude<Unit, "mm" | "m">, Edge>> = {
  "m2": { unit: "sq ft", places: 1, from: (value) => value / M2_PER_SQUARE_FOOT },
  "m3": { unit: "cu yd", places: 2, from: (value) => value / M3_PER_CUBIC_YARD },
  "kg": { unit: "lb", places: 0, from: (value) => value / KG_PER_POUND },
  "kN": { unit: "lb", places: 0, from: (value) => value * POUNDS_PER_KN },
  "kN/m": { unit: "lb/ft", places: 0, from: (value) => (value * POUNDS_PER_KN) / FEET_PER_METRE },
  "kN.m": { unit: "ft·lb", places: 0, from: (value) => value * POUNDS_PER_KN * FEET_PER_METRE },
  "kN/m3": { unit: "lb/ft³", places: 0, from: (value) => value / KN_PER_M3_PER_PCF },
  "kPa": { unit: "psf", places: 0, from: (value) => value / KPA_PER_PSF },
  "N/mm2": { unit: "psi", places: 0, from: (value) => ((value * 1000) / KPA_PER_PSF) / 144 },
  "degC": { unit: "°F", places: 0, from: fahrenheit },
  "m/h": { unit: "ft/h", places: 1, from: (value) => value * FEET_PER_METRE },
  "h": { unit: "h", places: 1, from: same },
};

const NARROW_SPACE = "\u202f";

/** A plain figure with a decimal point and, from 10 000 on, a narrow space between thousands. */
export function figureText(value: number, places: number): string {
  const fixed = Math.abs(value).toFixed(places);
  const [whole = "0", part] = fixed.split(".");
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, NARROW_SPACE) : whole;
  const sign = value < 0 && Number(fixed) !== 0 ? "−" : "";
  return `${sign}${grouped}${part === undefined ? "" : `.${part}`}`;
}

export type FormattedQuantity = { readonly figure: string; /** Empty where the figure carries it, as in 9'-4 1/2". */ readonly unit: string };

/** A kept number as the project reads it. `places` replaces the usual decimals of a metric or US figure, not of feet and inches. */
export function formatQuantity(value: number, unit: Unit, units: Units, places?: number): FormattedQuantity {
  if (units === "us" && (unit === "mm" || unit === "m")) {
    return { figure: feetInches(unit === "m" ? value * 1000 : value), unit: "" };
  }
  const edge = units === "us" && unit !== "mm" && unit !== "m" ? US[unit] : METRIC[unit];
  return { figure: figureText(edge.from(value), places ?? edge.places), unit: edge.unit };
}

export function quantityText(value: number, unit: Unit, units: Units, places?: number): string {
  const { figure, unit: name } = formatQuantity(value, unit, units, places);
  return name === "" ? figure : `${figure} ${name}`;
}

/** A length as it stands on a drawing: bare millimetres, or feet and inches. Tenths only where there are any. */
export function lengthFigure(valueMm: number, units: Units): string {
  const isWhole = Math.abs(valueMm - Math.round(valueMm)) < 0.05;
  return formatQuantity(valueMm, "mm", units, isWhole ? 0 : 1).figure;
}

/** A cross section as the trade writes it: `300 × 600`, `450 square`, `Ø500`; in US customary `12" × 24"`. */
export function sectionText(shape: "rectangle" | "circle", widthMm: number, depthMm: number, units: Units): string {
  const side = (value: number): string => (units === "us" ? feetInches(value) : figureText(value, 0));
  if (shape === "circle") return `Ø${side(widthMm)}`;
  return widthMm === depthMm ? `${side(widthMm)} square` : `${side(widthMm)} × ${side(depthMm)}`;
}
