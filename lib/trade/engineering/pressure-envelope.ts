import { kPa, m, toMetres } from "#lib/kernel/units.ts";
import type { Kilopascals, Metres, Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { AnyPressureMethod, FormSize, PressureConditions, PressureEnvelope, PressurePoint } from "./pour-conditions.ts";
import { BASE_PUMPING } from "./pressure/full-head.ts";
import { EDITIONS, limitByMethod } from "./pressure/limit-by-method.ts";
import { refusal } from "./working.ts";
import type { Refusal } from "./working.ts";

const refuse = (limit: string, given: number, allowed: string): Refusal => refusal({ limit, given, allowed, source: "input", message: "Correct the pour conditions." });

function invalidNumber(pour: PressureConditions, form: FormSize): Refusal | null {
  const asked = pour.pourHeight ?? form.height;
  if (!(pour.riseRate > 0 && Number.isFinite(pour.riseRate))) return refuse("rise rate (m/h)", pour.riseRate, "a number over 0");
  if (!(pour.slump >= 0)) return refuse("slump (mm)", pour.slump, "0 or more");
  if (!(pour.vibrationDepth >= 0)) return refuse("vibration depth (mm)", pour.vibrationDepth, "0 or more");
  if (!(form.height > 0 && Number.isFinite(form.height))) return refuse("form height (mm)", form.height, "a number over 0");
  if (!(asked > 0 && asked <= form.height)) return refuse("pour height (mm)", asked, `over 0 and up to the form height of ${form.height} mm`);
  if (!(form.largestSide > 0 && Number.isFinite(form.largestSide))) return refuse("largest plan side (mm)", form.largestSide, "a number over 0");
  if (!Number.isFinite(pour.temperature)) return refuse("concrete temperature (degC)", pour.temperature, "a number");
  if (!(pour.concreteDensity >= 15 && pour.concreteDensity <= 40)) return refuse("concrete density (kN/m3)", pour.concreteDensity, "15 to 40 kN/m3");
  return null;
}

/** What no formula here covers, whatever its numbers say. */
function outsideFormulas(pour: PressureConditions): Refusal | null {
  const choose = "Choose the full liquid head.";
  if (pour.placing === "pumped-from-base")
    return refusal({ limit: "placing", given: "pumped from the base", allowed: "placed from the top", source: BASE_PUMPING, message: `${choose} It adds 25 % for the pump.` });
  if (pour.externalVibration)
    return refusal({ limit: "vibration", given: "external", allowed: "internal only", source: "APA Europe, Guide to Concrete Pressures", message: choose });
  return null;
}

/**
 * Pressure on a form from the surface to the foot of the pour, by the method the conditions name.
 *
 * Formula: p(z) = min(w z, p_limit), z below the concrete surface, p_limit by the method; base pumping: 1.25 w z.
 * Parameters: pour, with density [kN/m3] 15 to 40, temperature [degC], rise rate [m/h] over 0, slump [mm], vibration depth [mm],
 *   pour height [mm] up to the form's, setting end [h] for DIN 18218:2010; form, with height [mm] over 0 and largest plan side [mm].
 * Result: corners (depth [m], pressure [kPa]) of a line, the edition, the rule that governs and the working.
 * Limits: base pumping and external vibration are refused by every formula; ACI 347: slump over 175 mm, vibration deeper than
 *   1200 mm and self-compacting concrete answered with the full head, a plan side over 2000 mm with its wall branches; CIRIA 108:
 *   self-compacting concrete refused; DIN 18218: class, and for 2010 the setting end, must be given; each formula's own range of temperature.
 * Example: w = 23.5 kN/m3, h = 3.6 m, p_limit = 70.90 kPa: (0, 0), (3.017 m, 70.90 kPa), (3.6 m, 70.90 kPa).
 * Source: shape of the line: Gardner, Concrete pressure on formwork, Proc. ICE 1986; limits: as named by each method.
 */
export function pressureEnvelope(pour: PressureConditions, form: FormSize): Result<PressureEnvelope, Refusal> {
  const wrong = invalidNumber(pour, form) ?? (pour.method === "full-head" ? null : outsideFormulas(pour));
  if (wrong !== null) return fail(wrong);
  const height = toMetres(pour.pourHeight ?? form.height);
  const fromBase = pour.placing === "pumped-from-base";
  const answer = limitByMethod(pour, form, height);
  if (!answer.ok) return answer;
  const { limit, governs, working } = answer.value;
  const liquidDepth = fromBase ? height : m(Math.min(height, limit / pour.concreteDensity));
  return ok({ method: pour.method, edition: EDITIONS[pour.method], ...standing(pour.method), points: corners(limit, liquidDepth, height), pourHeight: height, limit, liquidDepth, governs, working: [working] });
}

const standing = (method: AnyPressureMethod) =>
  ({ valueKind: method === "din-18218-2010" ? "characteristic" : "service", withdrawn: method === "din-18218-1980" || method === "aci-347-us-before-2001" }) as const;

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
