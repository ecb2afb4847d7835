import type { z } from "zod";
import type { backingInput } from "#lib/contracts/workings/backing.ts";
import type { clampLayoutInput } from "#lib/contracts/workings/clamp-layout.ts";
import type { plumbInput } from "#lib/contracts/workings/plumb.ts";
import type { pressureInput } from "#lib/contracts/workings/pressure.ts";
import type { sheathingInput } from "#lib/contracts/workings/sheathing.ts";
import type { stripTimeInput } from "#lib/contracts/workings/strip-time.ts";
import { asShutterRule } from "#lib/contracts/shutter.ts";
import { laid } from "#lib/trade/shutter/face-geometry.ts";
import type { Rules, SampleColumn } from "./sample-column.ts";

export type StartValues = {
  readonly pressure: z.input<typeof pressureInput>;
  readonly sheathing: z.input<typeof sheathingInput>;
  readonly backing: z.input<typeof backingInput>;
  readonly clampLayout: z.input<typeof clampLayoutInput>;
  readonly stripTime: z.input<typeof stripTimeInput>;
  readonly plumb: z.input<typeof plumbInput>;
};

function pressureOf({ pourConditions: pour }: Rules, { width, depth, height }: SampleColumn): StartValues["pressure"] {
  return {
    pour: {
      method: pour.method, concrete_density_kN_per_m3: pour.concreteDensity, temperature_degC: pour.temperature, rise_rate_m_per_h: pour.riseRate,
      cement: pour.cement, retarder: pour.retarder, slump_mm: pour.slump, vibration_depth_mm: pour.vibrationDepth, self_compacting: pour.selfCompacting,
      external_vibration: pour.externalVibration, placing: pour.placing,
      pour_height_mm: pour.pourHeight === null ? null : Math.min(pour.pourHeight, height), consistency: null, setting_end_h: null,
    },
    form: { height_mm: height, largest_side_mm: Math.max(width, depth) },
    batter_mm_per_m: 0,
  };
}

function timberOf(rules: Rules): StartValues["backing"]["timber"] {
  const rule = asShutterRule(rules.shutterRule);
  const { breadth, depth } = laid(rule.backing);
  const { bendingStress, shearStress, modulus } = rule.backing;
  return { breadth_mm: breadth, depth_mm: depth, values: { kind: "own", bending_stress_N_per_mm2: bendingStress, shear_stress_N_per_mm2: shearStress, modulus_N_per_mm2: modulus } };
}

function sheathingOf({ shutterRule: { ply, deflectionRatio } }: Rules, column: SampleColumn, timberBreadth: number): StartValues["sheathing"] {
  return {
    board: { kind: "own", bending_stiffness_kN_m2_per_m: ply.bendingStiffness, moment_capacity_kN_m_per_m: ply.momentCapacity, shear_capacity_kN_per_m: ply.shearCapacity },
    pressure_kPa: Math.round(column.pressure * 10) / 10, centres_mm: column.centres, spans: column.spans, support_width_mm: timberBreadth, overhang_mm: 0, deflection_ratio: deflectionRatio,
  };
}

/** A clamp as its hirer states it; a plausible one where the company keeps none. */
const clampOf = (kind: SampleColumn["clamp"]): StartValues["clampLayout"]["clamp"] => ({
  side_capacity_kN: kind?.sideCapacity ?? 25,
  capacity_by_span: (kind?.capacityBySpan ?? []).map(({ span, load }) => ({ span_mm: span, load_kN: load })),
  arm: kind?.arm ? { section_modulus_cm3: kind.arm.sectionModulus, stress_N_per_mm2: kind.arm.stress } : null,
  wedge_capacity_kN: kind?.wedgeCapacity ?? null,
});

function clampLayoutOf(rules: Rules, column: SampleColumn, pressure: StartValues["pressure"]): StartValues["clampLayout"] {
  const { clampSpacing: spacing, deflectionRatio } = rules.shutterRule;
  const { temperature } = rules.pourConditions;
  return {
    pressure, format: { kind: "permissible-stress" }, timber: timberOf(rules), share_mm: column.share,
    sides: {
      across: { side_mm: column.width, wedge_span_mm: column.outside.width },
      along: { side_mm: column.depth, wedge_span_mm: column.outside.depth },
    },
    clamp: clampOf(column.clamp),
    deflection_ratio: deflectionRatio,
    layout: {
      kind: "fewest",
      spacing: {
        module_mm: spacing.module, first_min_mm: spacing.firstMin, first_max_mm: spacing.firstMax, top_max_mm: spacing.topMax,
        smallest_gap_mm: spacing.smallestGap, largest_gap_mm: spacing.largestGap,
      },
    },
    rise_rate_temperatures_degC: [temperature - 8, temperature, temperature + 8],
  };
}

/** Hours of invented temperatures about the concrete's own, as many as the project's rule asks for and a few more. */
function stripTimeOf({ pourConditions: { temperature }, progressRule: { stripAfterHours } }: Rules): StartValues["stripTime"] {
  const hours = Math.ceil(stripAfterHours) + 6;
  const hourly = Array.from({ length: hours }, (_, hour) => Math.round((temperature + 5 * Math.sin((Math.PI * hour) / 12)) * 2) / 2);
  return { rule: { kind: "project-hours", hours_h: stripAfterHours, least_temperature_degC: null }, hourly_degC: hourly, measured: "air" };
}

/** Readings are invented, since nobody has read anything yet; sizes are the project's. */
function plumbOf(column: SampleColumn, isUs: boolean): StartValues["plumb"] {
  const along = Math.round(column.width / 2 - 50);
  const faces = (left: number, right: number, b: number) => [
    { face: "A" as const, along_mm: -along, offset_mm: left }, { face: "A" as const, along_mm: along, offset_mm: right }, { face: "B" as const, along_mm: 0, offset_mm: b },
  ];
  return {
    width_mm: column.width, depth_mm: column.depth, form_height_mm: column.height,
    bottom: { height_mm: 150, faces: faces(1, 0, -1), diagonals: null },
    top: { height_mm: column.height - 150, faces: faces(9, 7, -5), diagonals: null },
    tolerance: { kind: "rule", rule: isUs ? "aci-117-90" : "en-13670-class-1" },
  };
}

/** What each calculator shows first, from the project's set-up and one column of its own size. */
export function startValues(rules: Rules, column: SampleColumn, isUs: boolean): StartValues {
  const pressure = pressureOf(rules, column);
  const timber = timberOf(rules);
  return {
    pressure,
    sheathing: sheathingOf(rules, column, timber.breadth_mm),
    backing: {
      timber, format: { kind: "permissible-stress" }, load: { kind: "pressure", pressure, share_mm: column.share },
      length_mm: column.height, supports_mm: [...column.heights], deflection_ratio: rules.shutterRule.deflectionRatio,
    },
    clampLayout: clampLayoutOf(rules, column, pressure),
    stripTime: stripTimeOf(rules),
    plumb: plumbOf(column, isUs),
  };
}
