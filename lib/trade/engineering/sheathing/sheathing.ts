import type { KilonewtonMetres, Kilonewtons, KilonewtonsPerMetre, Kilopascals, Metres } from "#lib/kernel/units.ts";
import { kN_per_m, m } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { kN_m2 } from "../engineering-units.ts";
import type { KilonewtonMetresPerMetre, KilonewtonSquareMetresPerMetre } from "../engineering-units.ts";
import { spanActions, spanCoefficients } from "../backing/span-coefficients.ts";
import { refusal, term } from "../working.ts";
import type { Refusal, Working } from "../working.ts";

const SOURCE =
  "Uniform-load coefficients by number of spans: construction lectures (Allen), weeks 7 and 8; Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), pp. 153 and 327; shear on the clear span: APA concrete-form plywood, from memory";

/** A board's permissible values per metre of width, in the direction in which it spans, as its supplier states them. */
export type Board = {
  readonly bendingStiffness: KilonewtonSquareMetresPerMetre;
  readonly momentCapacity: KilonewtonMetresPerMetre;
  readonly shearCapacity: KilonewtonsPerMetre;
};

export type SheathingInput = {
  readonly board: Board;
  /** At the lowest point of the strip. */
  readonly pressure: Kilopascals;
  /** Centre to centre of the backing timbers. */
  readonly centres: Metres;
  readonly spans: number;
  readonly supportWidth: Metres;
  /** Loaded board beyond the centre of the outer timber. */
  readonly overhang: Metres;
  readonly ratio: number;
};

export type SheathingAnswer = {
  readonly moment: KilonewtonMetres;
  readonly shear: Kilonewtons;
  readonly deflection: Metres;
  readonly allowedDeflection: Metres;
  readonly bendingUse: number;
  readonly shearUse: number;
  readonly deflectionUse: number;
  /** The largest of the three; the strip passes up to 1. */
  readonly use: number;
  readonly working: Working;
};

/**
 * Board of a panel, one metre high strip at the foot, spanning across the backing timbers.
 *
 * Formula: M = max(c_M p L2, p a2 / 2), V = max(c_V p L_c, p max(0, a - b / 2)), d = c_d p L4 / EI against L / n; L_c = L - b; coefficients by spans.
 * Parameters: board with EI [kN.m2/m], fZ [kN.m/m] and shear capacity [kN/m], each over 0; pressure p [kPa], 0 or more, at the strip's
 *   lowest point; centres L [m], over the support width; spans [-], from 1; supportWidth b [m]; overhang a [m], 0 or more; ratio n [-], over 0.
 * Result: M [kN.m], V [kN] and d [m] per metre of width, each over its capacity [-], and the working.
 * Limits: capacities of 0 or less and supports as wide as their centres are refused. Permissible-stress format: board values must hold
 *   their own factors (moisture, duration, re-use). Equal spans. Deflection from bending only: use a stiffness declared for that.
 * Example: p = 68.4 kPa, L = 0.231 m, b = 0.085 m, 3 spans, a = 0.042 m, EI = 2.9, fZ = 0.46, shear 6.9, n = 270: M = 0.3650 kN.m (0.793),
 *   V = 5.992 kN (0.868), d = 0.463 mm of 0.856 mm (0.541).
 * Source: construction lectures (Allen), weeks 7 and 8; Peurifoy and Oberlender, 4th ed. (2010), pp. 153, 327; clear span in shear from memory.
 */
export function sheathing(given: SheathingInput): Result<SheathingAnswer, Refusal> {
  const { board, pressure, centres, spans, supportWidth, overhang, ratio } = given;
  if (!(board.bendingStiffness > 0 && board.momentCapacity > 0 && board.shearCapacity > 0))
    return fail(refusal({ limit: "board values", given: Math.min(board.bendingStiffness, board.momentCapacity, board.shearCapacity), allowed: "over 0", source: "input", message: "Enter the supplier's EI, fZ and shear capacity." }));
  if (!(centres > supportWidth))
    return fail(refusal({ limit: "centres of backing timbers (m)", given: centres, allowed: `over the timber's width of ${supportWidth} m`, source: SOURCE, message: "The timbers would touch." }));
  const coefficients = spanCoefficients(spans);
  const actions = spanActions({ coefficients, load: kN_per_m(pressure), span: centres, shearSpan: m(centres - supportWidth), stiffness: kN_m2(board.bendingStiffness) });
  const moment = Math.max(actions.moment, (pressure * overhang * overhang) / 2) as KilonewtonMetres;
  const shear = Math.max(actions.shear, pressure * Math.max(0, overhang - supportWidth / 2)) as Kilonewtons;
  const allowedDeflection = m(centres / ratio);
  const uses = { bendingUse: moment / board.momentCapacity, shearUse: shear / board.shearCapacity, deflectionUse: actions.deflection / allowedDeflection };
  const use = Math.max(uses.bendingUse, uses.shearUse, uses.deflectionUse);
  return ok({
    moment,
    shear,
    deflection: actions.deflection,
    allowedDeflection,
    ...uses,
    use,
    working: {
      title: `Board on ${coefficients.label}, strip of 1 m at its lowest point`,
      inputs: [
        term("p", pressure, "kPa"), term("centres L", centres, "m"), term("timber width b", supportWidth, "m"), term("overhang a", overhang, "m"),
        term("EI", board.bendingStiffness, "kN.m2/m"), term("fZ", board.momentCapacity, "kN.m/m"), term("shear capacity", board.shearCapacity, "kN/m"), term("deflection limit L /", ratio, ""),
      ],
      formula: "M = max(c_M p L2, p a2 / 2); V = max(c_V p (L - b), p (a - b / 2)); d = c_d p L4 / EI",
      steps: [
        term("c_M", coefficients.moment, ""), term("c_V", coefficients.shear, ""), term("c_d", coefficients.deflection, ""),
        term("M", moment, "kN.m/m"), term("V", shear, "kN/m"), term("d", actions.deflection * 1000, "mm"), term("d allowed", allowedDeflection * 1000, "mm"),
      ],
      result: term("largest use", use, ""),
      source: SOURCE,
    },
  });
}
