import type { DegreesCelsius, Kilonewtons, Metres, MetresPerHour, Millimetres } from "#lib/kernel/units.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { BackingTimberInput } from "../backing/timber-choice.ts";
import type { ClampCapacity, ClampSides } from "../clamps/clamp-capacity.ts";
import type { ClampSpacing } from "../clamps/clamp-spacing.ts";
import type { SafetyFormat } from "../safety-format.ts";
import type { Refusal, Working } from "../working.ts";
import type { PressureInput } from "./pressure.ts";

export type ClampLayoutInput = {
  readonly pressure: PressureInput;
  readonly format: SafetyFormat;
  readonly timber: BackingTimberInput;
  /** Of the face that the hardest-worked backing timber carries. */
  readonly share: Metres;
  readonly sides: ClampSides;
  readonly clamp: ClampCapacity;
  readonly deflectionRatio: number;
  /** fewest: heights are found. measured: heights as they stand on site are checked. */
  readonly layout: { readonly kind: "fewest"; readonly spacing: ClampSpacing } | { readonly kind: "measured"; readonly heights: readonly Millimetres[] };
  /** Concrete temperatures for which the highest rise rate is wanted; empty for none. */
  readonly riseRateTemperatures: readonly DegreesCelsius[];
};

export type LayoutElement = "backing" | "clamp" | "arm" | "wedge";
export type LayoutCheck = {
  readonly element: LayoutElement;
  readonly what: "bending" | "shear" | "deflection" | "force";
  readonly demand: number;
  readonly capacity: number;
  readonly unit: string;
  readonly utilisation: number;
  /** Above the foot of the form. */
  readonly at: Millimetres;
};

export type ClampForce = {
  readonly height: Millimetres;
  readonly across: Kilonewtons;
  readonly along: Kilonewtons;
  /** The hardest-worked check of this clamp. */
  readonly utilisation: number;
};

/** The layout without one of its clamps. */
export type LeftOut = { readonly height: Millimetres; readonly passes: boolean; readonly utilisation: number; readonly worst: LayoutElement | null };

export type RiseRateLine = {
  readonly temperature: DegreesCelsius;
  /** Null where the refusal says why, or where no rate passes. */
  readonly riseRate: MetresPerHour | null;
  /** The layout passes even under the full liquid head: the rate is not the limit. */
  readonly anyRate: boolean;
  readonly refusal: Refusal | null;
};

export type ClampLayoutAnswer = {
  readonly heights: readonly Millimetres[];
  readonly passes: boolean;
  /** Only for layouts that were found: no layout can have fewer than `lowerBound`. */
  readonly fewest: { readonly proven: boolean; readonly lowerBound: number } | null;
  readonly checks: readonly LayoutCheck[];
  readonly forces: readonly ClampForce[];
  readonly leftOut: readonly LeftOut[];
  readonly riseRates: readonly RiseRateLine[];
  readonly working: readonly Working[];
};

export type ClampLayoutWorking = (input: ClampLayoutInput) => Result<ClampLayoutAnswer, Refusal>;
