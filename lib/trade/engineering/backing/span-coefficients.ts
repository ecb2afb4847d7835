import type { KilonewtonMetres, Kilonewtons, KilonewtonsPerMetre, Metres } from "#lib/kernel/units.ts";
import { kN, kN_m, m } from "#lib/kernel/units.ts";
import type { KilonewtonSquareMetres } from "../engineering-units.ts";

/** M = moment x w L2, V = shear x w L, deflection = deflection x w L4 / EI, under a uniform load on equal spans. */
export type SpanCoefficients = { readonly label: string; readonly moment: number; readonly shear: number; readonly deflection: number; readonly source: string };

const TABLE_SOURCE = "University construction lectures (Allen), weeks 7 and 8; Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 153";

const SIMPLE: SpanCoefficients = { label: "one span", moment: 1 / 8, shear: 1 / 2, deflection: 5 / 384, source: TABLE_SOURCE };
const TWO: SpanCoefficients = { label: "two spans", moment: 1 / 8, shear: 5 / 8, deflection: 1 / 185, source: "Two-span continuous beam, from memory" };
const THREE: SpanCoefficients = { label: "three spans or more", moment: 1 / 10, shear: 0.6, deflection: 1 / 145, source: TABLE_SOURCE };

/** Load case 58 of the Concrete Society guide: a board over many spans. */
export const CONCRETE_SOCIETY_CASE_58: SpanCoefficients = {
  label: "load case 58",
  moment: 0.095,
  shear: 0.525,
  deflection: 0.0066,
  source: "Concrete Society, Formwork: a guide to good practice, 2nd ed., load case 58",
};

/**
 * Coefficients of a uniformly loaded beam on equal spans.
 *
 * Formula: table: one span 1/8, 1/2, 5/384; two 1/8, 5/8, 1/185; three or more 1/10, 0.6, 1/145 (moment, shear, deflection).
 * Parameters: spans [-], a whole number from 1.
 * Result: three coefficients [-] and their source.
 * Limits: equal spans and uniform load; for three spans or more the shear constant here is 0.6, where some books take 5/8.
 * Example: 5 spans: M = w L2 / 10.
 * Source: construction lectures (Allen), weeks 7 and 8; Peurifoy and Oberlender, 4th ed. (2010), p. 153; two spans from memory.
 */
export const spanCoefficients = (spans: number): SpanCoefficients => (spans <= 1 ? SIMPLE : spans === 2 ? TWO : THREE);

export type SpanActions = { readonly moment: KilonewtonMetres; readonly shear: Kilonewtons; readonly deflection: Metres };

/**
 * Moment, shear and deflection of a uniformly loaded strip or beam from tabulated coefficients.
 *
 * Formula: M = c_M w L2, V = c_V w L_s, d = c_d w L4 / EI.
 * Parameters: load w [kN/m], 0 or more; span L [m], over 0; shearSpan L_s [m], the part of the span whose load crosses the section
 *   where shear is taken (clear span between supports, or less where the source says so), 0 to L; stiffness EI [kN.m2], over 0.
 * Result: M [kN.m], V [kN], d [m].
 * Limits: those of the coefficients: equal spans, uniform load, small deflections.
 * Example: w = 68.4 kN/m on a metre of board, L = 0.231 m, L_s = 0.146 m, EI = 2.9 kN.m2, three spans: M = 0.3650 kN.m, V = 5.992 kN, d = 0.463 mm.
 * Source: proportion, elastic beam theory; the coefficients bring their own source.
 */
export function spanActions(given: {
  readonly coefficients: SpanCoefficients;
  readonly load: KilonewtonsPerMetre;
  readonly span: Metres;
  readonly shearSpan: Metres;
  readonly stiffness: KilonewtonSquareMetres;
}): SpanActions {
  const { coefficients, load, span, shearSpan, stiffness } = given;
  return {
    moment: kN_m(coefficients.moment * load * span * span),
    shear: kN(coefficients.shear * load * shearSpan),
    deflection: m((coefficients.deflection * load * span ** 4) / stiffness),
  };
}

export type AllowableSpans = { readonly bending: Metres; readonly shear: Metres; readonly deflection: Metres; readonly governing: Metres };

/**
 * Largest span of a uniformly loaded strip or beam within its capacities.
 *
 * Formula: bending (M / (c_M w))^(1/2); shear V / (c_V w) + relief; deflection (EI / (c_d n w))^(1/3); governing is the least.
 * Parameters: load w [kN/m], over 0; momentCapacity M [kN.m], shearCapacity V [kN], stiffness EI [kN.m2], each over 0; ratio n [-]
 *   for a deflection of span / n, over 0; shearRelief [m] added to the shear span: twice the depth where shear is taken one depth from the support.
 * Result: three spans [m] and the governing one [m]; the shear span is clear or centre to centre as the coefficient's source takes it.
 * Limits: those of the coefficients: equal spans, uniform load, small deflections.
 * Example: w = 12.7 kN/m, M = 1.93 kN.m, V = 11.6 kN, EI = 97 kN.m2, n = 270, three spans: 1.233 m, 1.522 m, 1.601 m; bending governs.
 * Source: as of the coefficients handed over; shear at one depth: Peurifoy and Oberlender, 4th ed. (2010), p. 153.
 */
export function allowableSpans(given: {
  readonly coefficients: SpanCoefficients;
  readonly load: KilonewtonsPerMetre;
  readonly momentCapacity: KilonewtonMetres;
  readonly shearCapacity: Kilonewtons;
  readonly stiffness: KilonewtonSquareMetres;
  readonly ratio: number;
  readonly shearRelief: Metres;
}): AllowableSpans {
  const { coefficients: c, load, momentCapacity, shearCapacity, stiffness, ratio, shearRelief } = given;
  const bending = m(Math.sqrt(momentCapacity / (c.moment * load)));
  const shear = m(shearCapacity / (c.shear * load) + shearRelief);
  const deflection = m(Math.cbrt(stiffness / (c.deflection * ratio * load)));
  return { bending, shear, deflection, governing: m(Math.min(bending, shear, deflection)) };
}

/**
 * Span at which a uniformly loaded strip or beam bends by a given length.
 *
 * Formula: L = (d EI / (c_d w))^(1/4).
 * Parameters: load w [kN/m], over 0; stiffness EI [kN.m2], over 0; deflection d [m], over 0: a limit that does not grow with the span.
 * Result: L [m].
 * Limits: those of the coefficients: equal spans, uniform load, small deflections.
 * Example: w = 12.7 kN/m, EI = 97 kN.m2, d = 1.6 mm, three spans: (0.0016 x 97 x 145 / 12.7)^(1/4) = 1.154 m.
 * Source: as of the coefficients handed over; 1/16 in. beside L / 360: Peurifoy and Oberlender, 4th ed. (2010), p. 327.
 */
export const spanAtDeflection = (given: {
  readonly coefficients: SpanCoefficients;
  readonly load: KilonewtonsPerMetre;
  readonly stiffness: KilonewtonSquareMetres;
  readonly deflection: Metres;
}): Metres => m(((given.deflection * given.stiffness) / (given.coefficients.deflection * given.load)) ** 0.25);
