import { kPa, m, toMetres } from "#lib/kernel/units.ts";
import type { KilonewtonsPerCubicMetre, Kilopascals, Metres, Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { fahrenheit } from "#lib/kernel/us-units.ts";
import { ACI_347_EDITION, aciChemistryCoefficient, aciColumnPressureSi, aciColumnPressureUs } from "./pressure/aci-347-column.ts";
import type { LimitingPressure } from "./pressure/aci-347-column.ts";
import { CIRIA_108_EDITION, ciriaMaterialCoefficient, ciriaPressure, ciriaShapeCoefficient } from "./pressure/ciria-108.ts";
import { degF, psfToKilopascals, toFeet, toFeetPerHour, toPoundsPerCubicFoot } from "./engineering-units.ts";
import type { FormSize, PourConditions, PressureEnvelope, PressurePoint } from "./pour-conditions.ts";
import { refusal, term } from "./working.ts";
import type { Refusal } from "./working.ts";

export const FULL_HEAD_EDITION = "Full liquid head";
const HEAD_SOURCE = "Hydrostatic pressure; full head for columns filled fast: Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 325";
const BASE_PUMPING = "ACI 347-04 cl. 2.2.2 (25 % over the head when pumped from the base), from memory";

/**
 * Liquid head of fresh concrete, the pressure no set concrete relieves.
 *
 * Formula: p = f w h, with f = 1.25 when the form is pumped from its base, else 1.
 * Parameters: density w [kN/m3], over 0; pourHeight h [m], over 0; fromBase [-] pumped from the base.
 * Result: p [kPa] at the foot of the pour; straight down to it from zero at the surface.
 * Limits: none from above; 25 % is the least that base pumping adds, and pump pressure must still be checked by its designer.
 * Example: w = 24.6 kN/m3, h = 3.35 m: 82.41 kPa.
 * Source: hydrostatics; Peurifoy and Oberlender, 4th ed. (2010), p. 325; ACI 347-04 cl. 2.2.2 for base pumping, from memory.
 */
export function fullHead(density: KilonewtonsPerCubicMetre, pourHeight: Metres, fromBase: boolean): LimitingPressure<Kilopascals> {
  const factor = fromBase ? 1.25 : 1;
  const pressure = kPa(factor * density * pourHeight);
  return {
    limit: pressure,
    governs: "liquid head",
    working: {
      title: "Lateral pressure, full liquid head",
      inputs: [term("w", density, "kN/m3"), term("h", pourHeight, "m")],
      formula: fromBase ? "p = 1.25 w h" : "p = w h",
      steps: fromBase ? [term("pumped from the base", factor, "")] : [],
      result: term("p", pressure, "kPa"),
      source: fromBase ? `${HEAD_SOURCE}; ${BASE_PUMPING}` : HEAD_SOURCE,
    },
  };
}

function invalidNumber(pour: PourConditions, form: FormSize): Refusal | null {
  const asked = pour.pourHeight ?? form.height;
  const refuse = (limit: string, given: number, allowed: string) => refusal({ limit, given, allowed, source: "input", message: "Correct the pour conditions." });
  if (!(pour.riseRate > 0 && Number.isFinite(pour.riseRate))) return refuse("rise rate (m/h)", pour.riseRate, "a number over 0");
  if (!(pour.slump >= 0)) return refuse("slump (mm)", pour.slump, "0 or more");
  if (!(pour.vibrationDepth >= 0)) return refuse("vibration depth (mm)", pour.vibrationDepth, "0 or more");
  if (!(form.height > 0 && Number.isFinite(form.height))) return refuse("form height (mm)", form.height, "a number over 0");
  if (!(asked > 0 && asked <= form.height)) return refuse("pour height (mm)", asked, `over 0 and up to the form height of ${form.height} mm`);
  if (!(pour.concreteDensity >= 15 && pour.concreteDensity <= 40)) return refuse("concrete density (kN/m3)", pour.concreteDensity, "15 to 40 kN/m3");
  return null;
}

/** What no formula here covers, whatever its numbers say. */
function outsideFormulas(pour: PourConditions): Refusal | null {
  const choose = "Choose the full liquid head.";
  if (pour.placing === "pumped-from-base")
    return refusal({ limit: "placing", given: "pumped from the base", allowed: "placed from the top", source: BASE_PUMPING, message: `${choose} It adds 25 % for the pump.` });
  if (pour.externalVibration)
    return refusal({ limit: "vibration", given: "external", allowed: "internal only", source: "APA Europe, Guide to Concrete Pressures", message: choose });
  return null;
}

function liquidByAci(pour: PourConditions): string | null {
  if (pour.selfCompacting) return "self-compacting concrete";
  if (pour.slump > 175) return `slump ${pour.slump} mm, over 175 mm`;
  return pour.vibrationDepth > 1200 ? `vibration ${pour.vibrationDepth} mm deep, over 1200 mm` : null;
}

function byAci(pour: PourConditions, form: FormSize, pourHeight: Metres): Result<LimitingPressure<Kilopascals>, Refusal> {
  if (form.largestSide > 2000)
    return fail(refusal({ limit: "plan side of a column (mm)", given: form.largestSide, allowed: "up to 2000 mm", source: ACI_347_EDITION, message: "A longer side counts as a wall. Choose the full liquid head." }));
  const liquid = liquidByAci(pour);
  if (liquid !== null) {
    const head = fullHead(pour.concreteDensity, pourHeight, false);
    return ok({ ...head, working: { ...head.working, steps: [term("ACI 347 asks for the full head", liquid, "")], source: `${ACI_347_EDITION}; ${HEAD_SOURCE}` } });
  }
  const chemistry = aciChemistryCoefficient(pour.cement, pour.retarder);
  if (pour.method === "aci-347-si")
    return aciColumnPressureSi({ riseRate: pour.riseRate, temperature: pour.temperature, density: pour.concreteDensity, pourHeight, chemistry });
  const answer = aciColumnPressureUs({
    riseRate: toFeetPerHour(pour.riseRate),
    temperature: degF(fahrenheit(pour.temperature)),
    density: toPoundsPerCubicFoot(pour.concreteDensity),
    pourHeight: toFeet(pourHeight),
    chemistry,
  });
  return answer.ok ? ok({ ...answer.value, limit: kPa(Math.min(psfToKilopascals(answer.value.limit), pour.concreteDensity * pourHeight)) }) : answer;
}

function byCiria(pour: PourConditions, form: FormSize, pourHeight: Metres): Result<LimitingPressure<Kilopascals>, Refusal> {
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

/**
 * Pressure on a form from the surface to the foot of the pour, by the method the conditions name.
 *
 * Formula: p(z) = min(w z, p_limit), z below the concrete surface, p_limit by the method; base pumping: 1.25 w z.
 * Parameters: pour, with density [kN/m3] 15 to 40, temperature [degC], rise rate [m/h] over 0, slump [mm], vibration depth [mm],
 *   pour height [mm] up to the form's; form, with height [mm] over 0 and largest plan side [mm].
 * Result: corners (depth [m], pressure [kPa]) of a line, the edition, the rule that governs and the working.
 * Limits: base pumping and external vibration are refused by every formula; ACI 347: plan side over 2000 mm refused, slump over
 *   175 mm, vibration deeper than 1200 mm and self-compacting concrete answered with the full head; CIRIA 108: self-compacting
 *   concrete refused; each formula's own range of temperature.
 * Example: w = 23.5 kN/m3, h = 3.6 m, p_limit = 70.90 kPa: (0, 0), (3.017 m, 70.90 kPa), (3.6 m, 70.90 kPa).
 * Source: shape of the line: Gardner, Concrete pressure on formwork, Proc. ICE 1986; limits: as named by each method.
 */
export function pressureEnvelope(pour: PourConditions, form: FormSize): Result<PressureEnvelope, Refusal> {
  const wrong = invalidNumber(pour, form) ?? (pour.method === "full-head" ? null : outsideFormulas(pour));
  if (wrong !== null) return fail(wrong);
  const height = toMetres(pour.pourHeight ?? form.height);
  const fromBase = pour.placing === "pumped-from-base";
  const answer = pour.method === "full-head" ? ok(fullHead(pour.concreteDensity, height, fromBase)) : pour.method === "ciria-108" ? byCiria(pour, form, height) : byAci(pour, form, height);
  if (!answer.ok) return answer;
  const { limit, governs, working } = answer.value;
  const liquidDepth = fromBase ? height : m(Math.min(height, limit / pour.concreteDensity));
  return ok({ method: pour.method, edition: EDITIONS[pour.method], valueKind: "service", withdrawn: false, points: corners(limit, liquidDepth, height), pourHeight: height, limit, liquidDepth, governs, working: [working] });
}

const EDITIONS = {
  "full-head": FULL_HEAD_EDITION,
  "aci-347-si": `${ACI_347_EDITION}, SI units`,
  "aci-347-us": `${ACI_347_EDITION}, US units`,
  "ciria-108": CIRIA_108_EDITION,
} as const;

function corners(limit: Kilopascals, liquidDepth: Metres, height: Metres): readonly PressurePoint[] {
  const top = { depth: m(0), pressure: kPa(0) };
  const foot = { depth: height, pressure: limit };
  return liquidDepth < height ? [top, { depth: liquidDepth, pressure: limit }, foot] : [top, foot];
}

/**
 * Pressure at one height of the form.
 *
 * Formula: straight line between the envelope's corners; 0 above the surface; the foot's value below it.
 * Parameters: envelope; height above the foot of the form [mm].
 * Result: p [kPa].
 * Limits: heights under 0 answer as the foot does.
 * Example: corners (0, 0), (2.9 m, 70.9 kPa), (3.6 m, 70.9 kPa); 1450 mm above the foot is 2.15 m deep: 70.9 x 2.15 / 2.9 = 52.56 kPa.
 * Source: shape of the line: Gardner, Concrete pressure on formwork, Proc. ICE 1986.
 */
export function pressureAt(envelope: PressureEnvelope, height: Millimetres): Kilopascals {
  const depth = envelope.pourHeight - Math.max(0, height) / 1000;
  if (depth <= 0) return kPa(0);
  return kPa(Math.min(1, depth / envelope.liquidDepth) * envelope.limit);
}
