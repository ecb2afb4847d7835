import type { Metres, Millimetres } from "#lib/kernel/units.ts";
import type { TimberCapacity } from "../backing/timber-capacity.ts";
import type { PressureEnvelope } from "../pour-conditions.ts";
import type { ClampDemands } from "./clamp-demands.ts";
import type { ClampSpacing } from "./clamp-spacing.ts";

export type LayoutTask = {
  readonly envelope: PressureEnvelope;
  readonly formHeight: Millimetres;
  /** Of the face that the hardest-worked backing timber carries. */
  readonly share: Metres;
  readonly backing: TimberCapacity;
  /** The reaction per metre of face width that one clamp may take, whichever of its checks governs. */
  readonly clampLimit: number;
  /** On moments, shears and forces; 1 in the permissible-stress format. */
  readonly loadFactor: number;
  readonly deflectionRatio: number;
};
export type SpacedTask = LayoutTask & { readonly spacing: ClampSpacing };

/** What the demands per metre of face may reach: [kN.m/m, kN/m, - for EI = 1, kN/m]. */
export type BeamLimits = { readonly moment: number; readonly shear: number; readonly bend: number };
export type LayoutLimits = BeamLimits & { readonly reaction: number };

/**
 * Limits of the backing timbers, brought to one metre of face width under the load as it is.
 *
 * Formula: moment M / (g b), shear V / (g b), deflection over span EI / (n b); b the timber's share, g the load factor.
 * Parameters: task with capacities M [kN.m], V [kN], EI [kN.m2], share b [m], load factor g [-], deflection ratio n [-].
 * Result: limits [kN.m/m], [kN/m], [-] for EI = 1.
 * Limits: each part over 0; held by the callers.
 * Example: M = 0.4 kN.m, b = 0.25 m, g = 1.5: 1.0667 kN.m/m.
 * Source: proportion (equations of linear elastic theory).
 */
export const beamLimitsOf = ({ backing, share, loadFactor, deflectionRatio }: Omit<LayoutTask, "clampLimit">): BeamLimits => ({
  moment: backing.moment / (share * loadFactor),
  shear: backing.shear / (share * loadFactor),
  bend: backing.stiffness / (share * deflectionRatio),
});

/**
 * Limits of a layout, brought to one metre of face width under the load as it is.
 *
 * Formula: those of `beamLimitsOf`, and reaction R / g; g the load factor.
 * Parameters: task as of `beamLimitsOf`, with clamp limit R [kN/m].
 * Result: limits [kN.m/m], [kN/m], [-] for EI = 1, [kN/m].
 * Limits: each part over 0; held by the callers.
 * Example: R = 60 kN/m, g = 1.5: 40 kN/m.
 * Source: proportion (equations of linear elastic theory).
 */
export const limitsOf = (task: LayoutTask): LayoutLimits => ({ ...beamLimitsOf(task), reaction: task.clampLimit / task.loadFactor });

/**
 * Use of a layout: the largest demand over its limit.
 *
 * Formula: max of moment, shear, deflection over span and reaction, each over its limit.
 * Parameters: limits and demands [kN.m/m], [kN/m], [-], [kN/m].
 * Result: use [-]; the layout passes up to 1.
 * Limits: none.
 * Example: moment 0.9 of 1.2, reaction 31 of 40: 0.775.
 * Source: proportion (equations of linear elastic theory).
 */
export const layoutUse = (limits: LayoutLimits, demands: ClampDemands): number =>
  Math.max(demands.moment.value / limits.moment, demands.shear.value / limits.shear, demands.deflectionOverSpan.value / limits.bend, demands.largestReaction.value / limits.reaction);
