import type { KilonewtonsPerMetre, Kilopascals, Metres, Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { FormSize, PressureConditions, PressureEnvelope } from "../pour-conditions.ts";
import { pressureEnvelope } from "../pressure-envelope.ts";
import { batterUplift, pressureResultant } from "../pressure/resultant.ts";
import { refusal, term } from "../working.ts";
import type { Refusal, Working } from "../working.ts";

export type PressureInput = {
  readonly pour: PressureConditions;
  readonly form: FormSize;
  /** How far a face leans inwards over each metre of height; 0 for an upright form. */
  readonly batterPerMetre: Millimetres;
};

/** What the working says beside its numbers; wording lives in the screens. */
export type PressureNote = "characteristic-value" | "withdrawn-edition" | "uplift-from-batter" | "seal-and-hold-down" | "props-not-covered";

export type PressureAnswer = {
  readonly envelope: PressureEnvelope;
  /** All the pressure on one metre of face width. */
  readonly resultant: KilonewtonsPerMetre;
  /** Of the resultant above the foot of the form. */
  readonly resultantHeight: Metres;
  readonly average: Kilopascals;
  /** Upwards, per metre of face width; 0 for an upright form. */
  readonly uplift: KilonewtonsPerMetre;
  readonly notes: readonly PressureNote[];
  readonly working: readonly Working[];
};

export type PressureWorking = (input: PressureInput) => Result<PressureAnswer, Refusal>;

function notesOf(envelope: PressureEnvelope, batterPerMetre: number): readonly PressureNote[] {
  const notes: PressureNote[] = [];
  if (envelope.valueKind === "characteristic") notes.push("characteristic-value");
  if (envelope.withdrawn) notes.push("withdrawn-edition");
  if (batterPerMetre > 0) notes.push("uplift-from-batter");
  return [...notes, "seal-and-hold-down", "props-not-covered"];
}

/**
 * Pressure of one pour on one form: the line, what it adds up to, and the uplift of a battered face.
 *
 * Formula: `pressureEnvelope`; F = p (h - z1 / 2); U = F b / 1000.
 * Parameters: input with the pour and form of `pressureEnvelope` [kN/m3], [degC], [m/h], [mm], [h], and batter 0 to 300 [mm/m].
 * Result: the line [m], [kPa], resultant and uplift [kN/m] of face width, height of the resultant [m], average [kPa].
 * Limits: refused as by `pressureEnvelope`, and for a batter outside 0 to 300 mm/m: a face that leans further is a soffit.
 * Example: full head, 24 kN/m3, 3.35 m: 80.4 kPa at the foot, 80.4 x 3.35 / 2 = 134.67 kN/m at 1.117 m.
 * Source: statics of the pressure line; pressure as of the method's edition.
 */
export const pressureWorking: PressureWorking = ({ pour, form, batterPerMetre }) => {
  if (!(batterPerMetre >= 0 && batterPerMetre <= 300))
    return fail(refusal({ limit: "batter (mm/m)", given: batterPerMetre, allowed: "0 to 300 mm/m", source: "input", message: "A face that leans further is a soffit." }));
  const envelope = pressureEnvelope(pour, form);
  if (!envelope.ok) return envelope;
  const { force, height, average } = pressureResultant(envelope.value);
  const uplift = batterUplift(force, batterPerMetre);
  const sum: Working = {
    title: "Resultant on one metre of face",
    inputs: [term("p", envelope.value.limit, "kPa"), term("z1", envelope.value.liquidDepth, "m"), term("h", envelope.value.pourHeight, "m"), term("batter b", batterPerMetre, "mm/m")],
    formula: "F = p (h - z1 / 2); U = F b / 1000",
    steps: [term("height of F above the foot", height, "m"), term("average pressure", average, "kPa"), term("uplift U", uplift, "kN/m")],
    result: term("F", force, "kN/m"),
    source: "Statics of the pressure line",
  };
  return ok({ envelope: envelope.value, resultant: force, resultantHeight: height, average, uplift, notes: notesOf(envelope.value, batterPerMetre), working: [...envelope.value.working, sum] });
};
