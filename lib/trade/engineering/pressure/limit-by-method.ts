import { kPa, toMetres } from "#lib/kernel/units.ts";
import type { Kilopascals, Metres } from "#lib/kernel/units.ts";
import { fail, ok, unreachable } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { fahrenheit } from "#lib/kernel/us-units.ts";
import { degF, psfToKilopascals, toFeet, toFeetPerHour, toPoundsPerCubicFoot } from "../engineering-units.ts";
import type { PoundsPerSquareFoot } from "../engineering-units.ts";
import type { AnyPressureMethod, FormSize, PressureConditions } from "../pour-conditions.ts";
import { refusal, term } from "../working.ts";
import type { Refusal } from "../working.ts";
import { ACI_347_BEFORE_2001_EDITION, aciPressureBefore2001 } from "./aci-347-before-2001.ts";
import { ACI_347_SOURCE, aciChemistryCoefficient } from "./aci-347-coefficients.ts";
import { aciColumnPressureSi, aciColumnPressureUs } from "./aci-347-column.ts";
import { aciEquation, aciWallPressureSi, aciWallPressureUs } from "./aci-347-wall.ts";
import { CIRIA_108_EDITION, ciriaMaterialCoefficient, ciriaPressure, ciriaShapeCoefficient } from "./ciria-108.ts";
import { DIN_18218_1980_EDITION, din1980Pressure } from "./din-18218-1980.ts";
import { DIN_18218_2010_EDITION, din2010Pressure, isDin2010Class } from "./din-18218-2010.ts";
import { FULL_HEAD_EDITION, HEAD_SOURCE, fullHead } from "./full-head.ts";
import type { LimitingPressure } from "./limiting-pressure.ts";

type Limit = Result<LimitingPressure<Kilopascals>, Refusal>;

export const EDITIONS: Readonly<Record<AnyPressureMethod, string>> = {
  "full-head": FULL_HEAD_EDITION,
  "aci-347-si": "ACI 347-04 / ACI 347R-14, SI units",
  "aci-347-us": "ACI 347-04 / ACI 347R-14, US units",
  "ciria-108": CIRIA_108_EDITION,
  "din-18218-2010": DIN_18218_2010_EDITION,
  "din-18218-1980": DIN_18218_1980_EDITION,
  "aci-347-us-before-2001": ACI_347_BEFORE_2001_EDITION,
};

/**
 * The largest pressure by the method the conditions name.
 *
 * Formula: full head, ACI 347 for columns and walls, CIRIA 108, DIN 18218 of 2010 and 1980, ACI 347 before 2001: as of each.
 * Parameters: pour, with density [kN/m3], temperature [degC], rise rate [m/h], slump and vibration depth [mm], setting end [h]; form, sides [mm];
 *   pourHeight [m], over 0.
 * Result: p_max [kPa], the rule that governs and the working.
 * Limits: what the method does not cover is refused, or answered with the full head where the method asks for that (ACI 347: slump over 175 mm,
 *   vibration deeper than 1200 mm, self-compacting concrete, walls over 4.5 m/h or 15 ft/h).
 * Example: ACI 347 SI, 23.5 kN/m3, 17 degC, 2.3 m/h, retarder, 3.6 m: 70.90 kPa; the same at a slump of 200 mm: 84.6 kPa, the head.
 * Source: ACI 347-04 and 347R-14; CIRIA Report 108 (1985); DIN 18218:2010-01 and DIN 18218 (09/80); as of each formula.
 */
export function limitByMethod(pour: PressureConditions, form: FormSize, pourHeight: Metres): Limit {
  switch (pour.method) {
    case "full-head": return ok(fullHead(pour.concreteDensity, pourHeight, pour.placing === "pumped-from-base"));
    case "aci-347-si":
    case "aci-347-us": return byAci(pour, form, pourHeight);
    case "ciria-108": return byCiria(pour, form, pourHeight);
    case "din-18218-2010": return byDin2010(pour, pourHeight);
    case "din-18218-1980": return byDin1980(pour, pourHeight);
    case "aci-347-us-before-2001": return byOldAci(pour, form, pourHeight);
    default: return unreachable(pour.method);
  }
}

function liquidByAci(pour: PressureConditions): string | null {
  if (pour.selfCompacting) return "self-compacting concrete";
  if (pour.slump > 175) return `slump ${pour.slump} mm, over 175 mm`;
  return pour.vibrationDepth > 1200 ? `vibration ${pour.vibrationDepth} mm deep, over 1200 mm` : null;
}

function headAsked(pour: PressureConditions, pourHeight: Metres, why: string): Limit {
  const head = fullHead(pour.concreteDensity, pourHeight, false);
  return ok({ ...head, working: { ...head.working, steps: [term("ACI 347 asks for the full head", why, "")], source: `${ACI_347_SOURCE}; ${HEAD_SOURCE}` } });
}

function byAci(pour: PressureConditions, form: FormSize, pourHeight: Metres): Limit {
  const liquid = liquidByAci(pour);
  if (liquid !== null) return headAsked(pour, pourHeight, liquid);
  const chemistry = aciChemistryCoefficient(pour.cement, pour.retarder);
  const [side, height] = [toMetres(form.largestSide), toMetres(form.height)];
  const fast = () => headAsked(pour, pourHeight, `a wall at ${pour.riseRate} m/h, over ${pour.method === "aci-347-si" ? "4.5 m/h" : "15 ft/h"}`);
  if (pour.method === "aci-347-si") {
    const given = { riseRate: pour.riseRate, temperature: pour.temperature, density: pour.concreteDensity, pourHeight, chemistry };
    const equation = aciEquation("si", side, height, pour.riseRate);
    return equation === "column" ? aciColumnPressureSi(given) : equation === "wall" ? aciWallPressureSi(given) : fast();
  }
  const given = { ...inUs(pour, pourHeight), chemistry };
  // 2 m is the SI text's rounding of 6.5 ft (1.98 m); the metric side is held to the metric step, so that both families agree on what a column is.
  const equation = side <= 2 ? "column" : aciEquation("us", toFeet(side), toFeet(height), given.riseRate);
  return equation === "liquid head" ? fast() : toMetric(equation === "column" ? aciColumnPressureUs(given) : aciWallPressureUs(given), pour, pourHeight);
}

const inUs = (pour: PressureConditions, pourHeight: Metres) => ({
  riseRate: toFeetPerHour(pour.riseRate),
  temperature: degF(fahrenheit(pour.temperature)),
  density: toPoundsPerCubicFoot(pour.concreteDensity),
  pourHeight: toFeet(pourHeight),
});

const toMetric = (answer: Result<LimitingPressure<PoundsPerSquareFoot>, Refusal>, pour: PressureConditions, pourHeight: Metres): Limit =>
  answer.ok ? ok({ ...answer.value, limit: kPa(Math.min(psfToKilopascals(answer.value.limit), pour.concreteDensity * pourHeight)) }) : answer;

const byOldAci = (pour: PressureConditions, form: FormSize, pourHeight: Metres): Limit =>
  toMetric(aciPressureBefore2001({ ...inUs(pour, pourHeight), isColumn: form.largestSide <= 2000 }), pour, pourHeight);

function byCiria(pour: PressureConditions, form: FormSize, pourHeight: Metres): Limit {
  if (pour.selfCompacting)
    return fail(refusal({ limit: "concrete", given: "self-compacting", allowed: "compacted by internal vibration", source: CIRIA_108_EDITION, message: "The report does not cover it. Choose the full liquid head." }));
  return ciriaPressure({
    density: pour.concreteDensity,
    shape: ciriaShapeCoefficient(toMetres(form.largestSide)),
    material: ciriaMaterialCoefficient(pour.cement, pour.retarder),
    riseRate: pour.riseRate,
    temperature: pour.temperature,
    formHeight: toMetres(form.height),
    pourHeight,
  });
}

const noClass = (pour: PressureConditions, allowed: string, source: string): Limit =>
  fail(refusal({ limit: "consistency class", given: pour.consistency ?? "not given", allowed, source, message: "State the class of the concrete as ordered." }));

function byDin2010(pour: PressureConditions, pourHeight: Metres): Limit {
  const { consistency, settingEnd } = pour;
  if (!isDin2010Class(consistency)) return noClass(pour, "F1 to F6 or SCC", DIN_18218_2010_EDITION);
  if (pour.selfCompacting !== (consistency === "SCC")) return noClass(pour, pour.selfCompacting ? "SCC for self-compacting concrete" : "F1 to F6 for vibrated concrete", DIN_18218_2010_EDITION);
  if (settingEnd === null || settingEnd === undefined)
    return fail(refusal({ limit: "setting end tE (h)", given: "not given", allowed: "5 to 20 h", source: DIN_18218_2010_EDITION, message: "The supplier states it, or it is measured on the concrete." }));
  return din2010Pressure({ consistency, settingEnd, riseRate: pour.riseRate, temperature: pour.temperature, density: pour.concreteDensity, pourHeight });
}

function byDin1980(pour: PressureConditions, pourHeight: Metres): Limit {
  const { consistency } = pour;
  if (consistency !== "K1" && consistency !== "K2") return noClass(pour, "K1 (stiff) or K2 (plastic)", DIN_18218_1980_EDITION);
  if (pour.retarder || pour.selfCompacting)
    return fail(refusal({ limit: "concrete", given: pour.retarder ? "with a retarder" : "self-compacting", allowed: "set within 5 h, compacted by internal vibration", source: DIN_18218_1980_EDITION, message: "Use the full liquid head." }));
  return din1980Pressure({ consistency, riseRate: pour.riseRate, temperature: pour.temperature, density: pour.concreteDensity, pourHeight });
}
