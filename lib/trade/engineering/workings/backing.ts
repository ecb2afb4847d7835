import type { KilonewtonMetres, Kilonewtons, Metres, Millimetres } from "#lib/kernel/units.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { LoadCorner } from "../backing/beam-pieces.ts";
import type { BackingTimberInput } from "../backing/timber-choice.ts";
import type { SafetyFormat } from "../safety-format.ts";
import type { Refusal, Working } from "../working.ts";
import type { PressureInput } from "./pressure.ts";

/** corners: straight lines of load along the beam, from its foot. pressure: the pour's envelope times the share of the face. */
export type BackingLoad =
  | { readonly kind: "corners"; readonly corners: readonly LoadCorner[] }
  | { readonly kind: "pressure"; readonly pressure: PressureInput; readonly share: Metres };

export type BackingInput = {
  readonly timber: BackingTimberInput;
  readonly format: SafetyFormat;
  readonly load: BackingLoad;
  readonly length: Millimetres;
  /** Of the clamps above the foot, ascending, two or more. */
  readonly supports: readonly Millimetres[];
  readonly deflectionRatio: number;
};

export type BackingUse = {
  readonly what: "bending" | "shear" | "deflection";
  readonly demand: number;
  readonly capacity: number;
  readonly unit: string;
  readonly utilisation: number;
  /** Above the foot. */
  readonly at: Millimetres;
};

/** The lines of the drawing; moment sagging positive, deflection outwards positive. */
export type BeamSample = { readonly at: Millimetres; readonly moment: KilonewtonMetres; readonly shear: Kilonewtons; readonly deflection: Millimetres };

export type BackingAnswer = {
  readonly passes: boolean;
  readonly uses: readonly BackingUse[];
  readonly reactions: readonly { readonly at: Millimetres; readonly force: Kilonewtons }[];
  readonly samples: readonly BeamSample[];
  readonly working: readonly Working[];
};

export type BackingWorking = (input: BackingInput) => Result<BackingAnswer, Refusal>;
