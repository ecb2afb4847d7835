import { kN, kN_m, kN_per_m, N_per_mm2, mm } from "#lib/kernel/units.ts";
import { MM_PER_INCH, N_PER_POUND_FORCE } from "#lib/kernel/us-units.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";

const METRES_PER_INCH = MM_PER_INCH / 1000;
const KN_PER_POUND = N_PER_POUND_FORCE / 1000;

export const pounds = (value: number) => kN(value * KN_PER_POUND);
export const poundInches = (value: number) => kN_m(value * KN_PER_POUND * METRES_PER_INCH);
export const poundSquareInches = (value: number) => kN_m2(value * KN_PER_POUND * METRES_PER_INCH ** 2);
export const plf = (value: number) => kN_per_m((value * KN_PER_POUND) / 0.3048);
export const psi = (value: number) => N_per_mm2((value * N_PER_POUND_FORCE) / MM_PER_INCH ** 2);
export const inches = (value: number) => mm(value * MM_PER_INCH);
export const toInches = (metres: number): number => metres / METRES_PER_INCH;
export const toPsi = (stress: number): number => stress / psi(1);
export const toPounds = (force: number): number => force / KN_PER_POUND;
export const toPlf = (load: number): number => load / plf(1);
