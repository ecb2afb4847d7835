import type { Kilopascals, KilonewtonsPerCubicMetre, Metres, MetresPerHour, Quantity } from "#lib/kernel/units.ts";
import { KN_PER_M3_PER_PCF, KPA_PER_PSF } from "#lib/kernel/us-units.ts";

/** Stiffness EI of a beam. */
export type KilonewtonSquareMetres = Quantity<"kN.m2">;
/** Stiffness EI of a board, per metre of its width. */
export type KilonewtonSquareMetresPerMetre = Quantity<"kN.m2/m">;
/** Moment capacity fZ of a board, per metre of its width. */
export type KilonewtonMetresPerMetre = Quantity<"kN.m/m">;

export type PoundsPerSquareFoot = Quantity<"psf">;
export type PoundsPerCubicFoot = Quantity<"pcf">;
export type FeetPerHour = Quantity<"ft/h">;
export type Feet = Quantity<"ft">;
export type DegreesFahrenheit = Quantity<"degF">;

export const kN_m2 = (value: number): KilonewtonSquareMetres => value as KilonewtonSquareMetres;
export const kN_m2_per_m = (value: number): KilonewtonSquareMetresPerMetre => value as KilonewtonSquareMetresPerMetre;
export const kN_m_per_m = (value: number): KilonewtonMetresPerMetre => value as KilonewtonMetresPerMetre;
export const psf = (value: number): PoundsPerSquareFoot => value as PoundsPerSquareFoot;
export const pcf = (value: number): PoundsPerCubicFoot => value as PoundsPerCubicFoot;
export const ft_per_h = (value: number): FeetPerHour => value as FeetPerHour;
export const ft = (value: number): Feet => value as Feet;
export const degF = (value: number): DegreesFahrenheit => value as DegreesFahrenheit;

export const psfToKilopascals = (value: PoundsPerSquareFoot): Kilopascals => (value * KPA_PER_PSF) as Kilopascals;

/** 150 pcf that went through kN/m3 must come back as 150, not a hair above it: the density coefficient steps there. */
const withoutDust = (value: number): number => Math.round(value * 1e9) / 1e9;
export const toPoundsPerCubicFoot = (value: KilonewtonsPerCubicMetre): PoundsPerCubicFoot => pcf(withoutDust(value / KN_PER_M3_PER_PCF));
export const toFeet = (value: Metres): Feet => ft(withoutDust(value / 0.3048));
export const toFeetPerHour = (value: MetresPerHour): FeetPerHour => ft_per_h(withoutDust(value / 0.3048));
