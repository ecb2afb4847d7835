/** US customary units, exact by the international yard and pound (1959) and standard gravity 9.80665 m/s2. */
export const MM_PER_INCH = 25.4;
export const MM_PER_FOOT = 304.8;
export const N_PER_POUND_FORCE = 4.4482216152605;
export const KPA_PER_PSF = N_PER_POUND_FORCE / (0.3048 * 0.3048) / 1000;
export const KN_PER_M3_PER_PCF = N_PER_POUND_FORCE / 0.3048 ** 3 / 1000;
export const KG_PER_POUND = 0.45359237;
export const M2_PER_SQUARE_FOOT = 0.3048 * 0.3048;
export const M3_PER_CUBIC_YARD = 0.9144 ** 3;

export const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;
export const celsius = (fahrenheitDegrees: number): number => (fahrenheitDegrees - 32) / 1.8;
