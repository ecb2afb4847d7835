import { z } from "zod";
import { kN_per_m, m, mm } from "#lib/kernel/units.ts";
import type { BackingAnswer, BackingInput, BackingLoad } from "#lib/trade/engineering/workings/backing.ts";
import { amount, told } from "./amounts.ts";
import { tellWorking, workings } from "./answer-parts.ts";
import { formatShape, timberShape, toFormat, toTimber } from "./beam-parts.ts";
import { pressureExample, pressureShape, toPressure } from "./pressure.ts";

const load = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("corners"),
    corners: z.array(z.strictObject({ at_mm: amount(0, 100_000, "Above the foot."), load_kN_per_m: amount(0, 10_000, "Straight lines between the corners.") })).min(2).max(60),
  }),
  z.strictObject({ kind: z.literal("pressure"), pressure: pressureShape, share_mm: amount(1, 10_000, "Width of face that the timber carries.") }),
]);

const shape = z.strictObject({
  timber: timberShape,
  format: formatShape,
  load,
  length_mm: amount(1, 100_000, "From the foot up."),
  supports_mm: z.array(amount(0, 100_000, "Height of a clamp above the foot.")).min(1).max(60).describe("Clamps, ascending."),
  deflection_ratio: amount(1, 10_000, "270 stands for span / 270."),
});

const toLoad = (given: z.output<typeof load>): BackingLoad =>
  given.kind === "pressure"
    ? { kind: "pressure", pressure: toPressure(given.pressure), share: m(given.share_mm / 1000) }
    : { kind: "corners", corners: given.corners.map(({ at_mm, load_kN_per_m }) => ({ at: m(at_mm / 1000), load: kN_per_m(load_kN_per_m) })) };

export const backingInput = shape.transform((given): BackingInput => ({
  timber: toTimber(given.timber),
  format: toFormat(given.format),
  load: toLoad(given.load),
  length: mm(given.length_mm),
  supports: given.supports_mm.map(mm),
  deflectionRatio: given.deflection_ratio,
}));

export const backingAnswer = z.strictObject({
  passes: z.boolean(),
  uses: z.array(z.strictObject({
    what: z.enum(["bending", "shear", "deflection"]), demand: told("In the unit beside it."), capacity: told("In the unit beside it."),
    unit: z.string(), utilisation: told("Passes up to 1."), at_mm: told("Above the foot."),
  })),
  reactions: z.array(z.strictObject({ at_mm: told("Above the foot."), force_kN: told("On the clamp, without the load factor; 0 where the timber would come away from it.") })),
  samples: z
    .array(z.strictObject({ at_mm: told("Above the foot."), moment_kN_m: told("Sagging positive."), shear_kN: told("Just above the place."), deflection_mm: told("Outwards positive.") }))
    .describe("Lines of the drawing, under the load as it is."),
  working: workings,
});
export type BackingTold = z.output<typeof backingAnswer>;

export const tellBacking = ({ passes, uses, reactions, samples, working }: BackingAnswer): BackingTold => ({
  passes,
  uses: uses.map(({ what, demand, capacity, unit, utilisation, at }) => ({ what, demand, capacity, unit, utilisation, at_mm: at })),
  reactions: reactions.map(({ at, force }) => ({ at_mm: at, force_kN: force })),
  samples: samples.map(({ at, moment, shear, deflection }) => ({ at_mm: at, moment_kN_m: moment, shear_kN: shear, deflection_mm: deflection })),
  working: tellWorking(working),
});

export const backingExample = {
  timber: { breadth_mm: 45, depth_mm: 120, values: { kind: "own", bending_stress_N_per_mm2: 8.5, shear_stress_N_per_mm2: 1.2, modulus_N_per_mm2: 7800 } },
  format: { kind: "permissible-stress" },
  load: { kind: "pressure", pressure: pressureExample, share_mm: 205 },
  length_mm: 4150,
  supports_mm: [150, 550, 975, 1425, 1900, 2400, 2950, 3600],
  deflection_ratio: 270,
} satisfies z.input<typeof shape>;
