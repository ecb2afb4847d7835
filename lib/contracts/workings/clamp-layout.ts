import { z } from "zod";
import { degC, kN, m, mm, N_per_mm2 } from "#lib/kernel/units.ts";
import type { ClampCapacity, CubicCentimetres } from "#lib/trade/engineering/clamps/clamp-capacity.ts";
import type { ClampLayoutAnswer, ClampLayoutInput } from "#lib/trade/engineering/workings/clamp-layout.ts";
import { amount, told } from "./amounts.ts";
import { refused, tellWorking, workings } from "./answer-parts.ts";
import { formatShape, timberShape, toFormat, toTimber } from "./beam-parts.ts";
import { envelopeTold, pressureExample, pressureShape, tellEnvelope, toPressure } from "./pressure.ts";

const side = z.strictObject({ side_mm: amount(1, 10_000, "Of the concrete, which presses on the arm."), wedge_span_mm: amount(1, 20_000, "Of the arm between its wedges.") });

const clamp = z
  .strictObject({
    side_capacity_kN: amount(0.001, 10_000, "The force that one face of the form may put on one clamp."),
    capacity_by_span: z.array(z.strictObject({ span_mm: amount(1, 20_000, "Between wedges."), load_kN: amount(0.001, 10_000, "Listed for that span.") })).max(40).default([])
      .describe("Where the hirer lists loads by span; a span between two lines takes the longer line's load."),
    arm: z.strictObject({ section_modulus_cm3: amount(0.001, 100_000, "Of the arm."), stress_N_per_mm2: amount(0.001, 2000, "Permissible or design value, as the format asks.") }).nullable().default(null)
      .describe("Null where the arm is not checked by itself."),
    wedge_capacity_kN: amount(0.001, 10_000, "Pull that one wedged corner may take.").nullable().default(null).describe("Null where the corner is not checked by itself."),
  })
  .describe("As the hirer states it; permissible or design values as the format asks.");

const height = (about: string) => amount(0, 30_000, about);
const layout = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("fewest"),
    spacing: z.strictObject({
      module_mm: height("Clamps stand on multiples of it above the foot."), first_min_mm: height("Lowest place of the lowest clamp."), first_max_mm: height("Highest place of the lowest clamp."),
      top_max_mm: height("From the top clamp to the top of the form, at most."), smallest_gap_mm: height("Between two clamps."), largest_gap_mm: height("Between two clamps."),
    }),
  }),
  z.strictObject({ kind: z.literal("measured"), heights_mm: z.array(height("Of a clamp above the foot, as it stands.")).min(1).max(60).describe("Ascending.") }),
]).describe("fewest: heights are found. measured: heights as they stand are checked.");

const shape = z.strictObject({
  pressure: pressureShape,
  format: formatShape,
  timber: timberShape,
  share_mm: amount(1, 10_000, "Width of face that the hardest-worked backing timber carries."),
  sides: z.strictObject({ across: side, along: side }),
  clamp,
  deflection_ratio: amount(1, 10_000, "270 stands for span / 270."),
  layout,
  rise_rate_temperatures_degC: z.array(amount(-50, 100, "Of the concrete.")).max(20).default([]).describe("Temperatures for which the highest rise rate is wanted."),
});

const toClamp = (given: z.output<typeof clamp>): ClampCapacity => ({
  sideCapacity: kN(given.side_capacity_kN),
  capacityBySpan: given.capacity_by_span.map(({ span_mm, load_kN }) => ({ span: mm(span_mm), load: kN(load_kN) })),
  ...(given.arm === null ? {} : { arm: { sectionModulus: given.arm.section_modulus_cm3 as CubicCentimetres, stress: N_per_mm2(given.arm.stress_N_per_mm2) } }),
  ...(given.wedge_capacity_kN === null ? {} : { wedgeCapacity: kN(given.wedge_capacity_kN) }),
});

function toLayout(given: z.output<typeof layout>): ClampLayoutInput["layout"] {
  if (given.kind === "measured") return { kind: given.kind, heights: given.heights_mm.map(mm) };
  const { module_mm, first_min_mm, first_max_mm, top_max_mm, smallest_gap_mm, largest_gap_mm } = given.spacing;
  const spacing = { module: mm(module_mm), firstMin: mm(first_min_mm), firstMax: mm(first_max_mm), topMax: mm(top_max_mm), smallestGap: mm(smallest_gap_mm), largestGap: mm(largest_gap_mm) };
  return { kind: given.kind, spacing };
}

const toSide = ({ side_mm, wedge_span_mm }: z.output<typeof side>) => ({ side: mm(side_mm), wedgeSpan: mm(wedge_span_mm) });

export const clampLayoutInput = shape.transform((given): ClampLayoutInput => ({
  pressure: toPressure(given.pressure),
  format: toFormat(given.format),
  timber: toTimber(given.timber),
  share: m(given.share_mm / 1000),
  sides: { across: toSide(given.sides.across), along: toSide(given.sides.along) },
  clamp: toClamp(given.clamp),
  deflectionRatio: given.deflection_ratio,
  layout: toLayout(given.layout),
  riseRateTemperatures: given.rise_rate_temperatures_degC.map(degC),
}));

const ELEMENTS = ["backing", "clamp", "arm", "wedge"] as const;
export const clampLayoutAnswer = z.strictObject({
  heights_mm: z.array(told("Above the foot of the form.")),
  passes: z.boolean(),
  fewest: z.strictObject({ proven: z.boolean().describe("No layout has fewer clamps."), lower_bound: z.int().describe("No layout has fewer than this.") }).nullable().describe("Null for heights that were measured."),
  checks: z.array(z.strictObject({
    element: z.enum(ELEMENTS), what: z.enum(["bending", "shear", "deflection", "force"]), side: z.enum(["across", "along"]).nullable().describe("Null for the backing."),
    demand: told("In the unit beside it."), capacity: told("In the unit beside it."), unit: z.string(), utilisation: told("Passes up to 1."), at_mm: told("Where it is worst, above the foot."),
  })).describe("Every element where it is worst."),
  forces: z.array(z.strictObject({
    height_mm: told("Of the clamp."), across_kN: told("On the clamp, without the load factor."), along_kN: told("On the clamp, without the load factor."), utilisation: told("Of its hardest-worked check."),
  })),
  left_out: z.array(z.strictObject({
    height_mm: told("Of the clamp that is left out."), passes: z.boolean().describe("Whether the rest carries the load."), utilisation: told("The largest of the rest."), worst: z.enum(ELEMENTS),
  })).describe("The layout without one of its clamps, each in turn; empty for two clamps."),
  rise_rates: z.array(z.strictObject({
    temperature_degC: told("Of the concrete."), rise_rate_m_per_h: told("The highest at which the layout passes.").nullable().describe("Null where no rate passes, the method refuses, or any rate passes."),
    any_rate: z.boolean().describe("The layout passes under the full liquid head too."), refusal: refused.nullable(),
  })),
  pressure: envelopeTold,
  working: workings,
});
export type ClampLayoutTold = z.output<typeof clampLayoutAnswer>;

export const tellClampLayout = ({ heights, passes, fewest, checks, forces, leftOut, riseRates, envelope, working }: ClampLayoutAnswer): ClampLayoutTold => ({
  heights_mm: [...heights],
  passes,
  fewest: fewest === null ? null : { proven: fewest.proven, lower_bound: fewest.lowerBound },
  checks: checks.map(({ at, ...check }) => ({ ...check, at_mm: at })),
  forces: forces.map((force) => ({ height_mm: force.height, across_kN: force.across, along_kN: force.along, utilisation: force.utilisation })),
  left_out: leftOut.map((rest) => ({ height_mm: rest.height, passes: rest.passes, utilisation: rest.utilisation, worst: rest.worst })),
  rise_rates: riseRates.map(({ temperature, riseRate, anyRate, refusal }) => ({ temperature_degC: temperature, rise_rate_m_per_h: riseRate, any_rate: anyRate, refusal })),
  pressure: tellEnvelope(envelope),
  working: tellWorking(working),
});

export const clampLayoutExample = {
  pressure: pressureExample,
  format: { kind: "permissible-stress" },
  timber: { breadth_mm: 45, depth_mm: 120, values: { kind: "own", bending_stress_N_per_mm2: 8.5, shear_stress_N_per_mm2: 1.2, modulus_N_per_mm2: 7800 } },
  share_mm: 205,
  sides: { across: { side_mm: 650, wedge_span_mm: 980 }, along: { side_mm: 420, wedge_span_mm: 750 } },
  clamp: { side_capacity_kN: 34, capacity_by_span: [{ span_mm: 700, load_kN: 34 }, { span_mm: 1000, load_kN: 27 }], arm: { section_modulus_cm3: 34, stress_N_per_mm2: 165 }, wedge_capacity_kN: 21 },
  deflection_ratio: 270,
  layout: { kind: "fewest", spacing: { module_mm: 50, first_min_mm: 100, first_max_mm: 250, top_max_mm: 600, smallest_gap_mm: 150, largest_gap_mm: 700 } },
  rise_rate_temperatures_degC: [5, 14, 20],
} satisfies z.input<typeof shape>;

/** The same column with its clamps as a crew measured them. */
export const clampLayoutMeasuredExample = {
  ...clampLayoutExample,
  layout: { kind: "measured", heights_mm: [150, 450, 800, 1200, 1650, 2150, 2700, 3300, 3800] },
} satisfies z.input<typeof shape>;
