import type { KilonewtonsPerMetre, Kilopascals, Metres, Millimetres } from "#lib/kernel/units.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { FormSize, PressureConditions, PressureEnvelope } from "../pour-conditions.ts";
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
