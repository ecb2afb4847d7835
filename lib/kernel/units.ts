declare const unit: unique symbol;
/** A number that knows its unit; two units do not mix without a conversion. */
export type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

export type Millimetres = Quantity<"mm">;
export type Metres = Quantity<"m">;
export type SquareMetres = Quantity<"m2">;
export type CubicMetres = Quantity<"m3">;
export type Kilograms = Quantity<"kg">;
export type Kilonewtons = Quantity<"kN">;
export type KilonewtonsPerMetre = Quantity<"kN/m">;
export type KilonewtonMetres = Quantity<"kN.m">;
export type KilonewtonsPerCubicMetre = Quantity<"kN/m3">;
export type Kilopascals = Quantity<"kPa">;
export type NewtonsPerSquareMillimetre = Quantity<"N/mm2">;
export type DegreesCelsius = Quantity<"degC">;
export type MetresPerHour = Quantity<"m/h">;
export type Hours = Quantity<"h">;

export const mm = (value: number): Millimetres => value as Millimetres;
export const m = (value: number): Metres => value as Metres;
export const m2 = (value: number): SquareMetres => value as SquareMetres;
export const m3 = (value: number): CubicMetres => value as CubicMetres;
export const kg = (value: number): Kilograms => value as Kilograms;
export const kN = (value: number): Kilonewtons => value as Kilonewtons;
export const kN_per_m = (value: number): KilonewtonsPerMetre => value as KilonewtonsPerMetre;
export const kN_m = (value: number): KilonewtonMetres => value as KilonewtonMetres;
export const kN_per_m3 = (value: number): KilonewtonsPerCubicMetre => value as KilonewtonsPerCubicMetre;
export const kPa = (value: number): Kilopascals => value as Kilopascals;
export const N_per_mm2 = (value: number): NewtonsPerSquareMillimetre => value as NewtonsPerSquareMillimetre;
export const degC = (value: number): DegreesCelsius => value as DegreesCelsius;
export const m_per_h = (value: number): MetresPerHour => value as MetresPerHour;
export const hours = (value: number): Hours => value as Hours;

export const toMetres = (value: Millimetres): Metres => m(value / 1000);
export const toMillimetres = (value: Metres): Millimetres => mm(value * 1000);
