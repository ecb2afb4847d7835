import type { Millimetres, Quantity } from "#lib/kernel/units.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { PlumbToleranceChoice } from "../plumb/plumb-tolerance.ts";
import type { Refusal, Working } from "../working.ts";

export type MillimetresPerMetre = Quantity<"mm/m">;

/** A and C are the faces across the column's width, A at +y; B at +x, C at −y, D at −x: lettered clockwise on plan. */
export type PlumbFace = "A" | "B" | "C" | "D";

/** How far a face stands outside (+) or inside (−) its right place, `along` to the right (x) or up (y) on plan from its centre line. */
export type FaceReading = { readonly face: PlumbFace; readonly along: Millimetres; readonly offset: Millimetres };

export type LevelReadings = {
  /** Above the foot of the form. */
  readonly height: Millimetres;
  readonly faces: readonly FaceReading[];
  /** Inside, corner CD to AB (rising to the right on plan) and BC to DA. */
  readonly diagonals: { readonly cdToAb: Millimetres; readonly bcToDa: Millimetres } | null;
};

export type PlumbInput = {
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly formHeight: Millimetres;
  readonly bottom: LevelReadings;
  readonly top: LevelReadings;
  readonly tolerance: PlumbToleranceChoice;
};

export type LevelFit = {
  readonly x: Millimetres;
  readonly y: Millimetres;
  /** Anticlockwise on plan; null where the readings do not tell. */
  readonly turn: MillimetresPerMetre | null;
  /** How far the corner at C and D opens from square; null where the readings do not tell. */
  readonly outOfSquare: MillimetresPerMetre | null;
  /** Root mean square of what the fit leaves over. */
  readonly residual: Millimetres;
};

/** Move the top: towards a face, by so much at the top of the form, by a prop on that face's opposite. */
export type Knock = { readonly towards: PlumbFace; readonly by: Millimetres; readonly propOn: PlumbFace };

export type PlumbAnswer = {
  readonly bottom: LevelFit;
  readonly top: LevelFit;
  /** Of the top of the form over its foot. */
  readonly leanX: Millimetres;
  readonly leanY: Millimetres;
  readonly lean: Millimetres;
  readonly allowed: Millimetres;
  readonly passes: boolean;
  /** Top against bottom, anticlockwise. */
  readonly twist: MillimetresPerMetre | null;
  readonly knocks: readonly Knock[];
  /** How each corner of the top has to move, x to the right and y up on plan. */
  readonly corners: readonly { readonly corner: "AB" | "BC" | "CD" | "DA"; readonly x: Millimetres; readonly y: Millimetres }[];
  readonly working: readonly Working[];
};

export type PlumbWorking = (input: PlumbInput) => Result<PlumbAnswer, Refusal>;
