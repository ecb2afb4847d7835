import type { Quantity } from "#lib/kernel/units.ts";

/** Stiffness EI of a beam. */
export type KilonewtonSquareMetres = Quantity<"kN.m2">;
/** Stiffness EI of a board, per metre of its width. */
export type KilonewtonSquareMetresPerMetre = Quantity<"kN.m2/m">;
/** Moment capacity fZ of a board, per metre of its width. */
export type KilonewtonMetresPerMetre = Quantity<"kN.m/m">;

export const kN_m2 = (value: number): KilonewtonSquareMetres => value as KilonewtonSquareMetres;
export const kN_m2_per_m = (value: number): KilonewtonSquareMetresPerMetre => value as KilonewtonSquareMetresPerMetre;
export const kN_m_per_m = (value: number): KilonewtonMetresPerMetre => value as KilonewtonMetresPerMetre;
