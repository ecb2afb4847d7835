import { z } from "zod";
import { kPa, kN_per_m, m } from "#lib/kernel/units.ts";
import { kN_m2_per_m, kN_m_per_m } from "#lib/trade/engineering/engineering-units.ts";
import { FACE_GRAINS, PLY_GRADES, PLY_THICKNESSES } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import type { SheathingAnswer, SheathingInput } from "#lib/trade/engineering/workings/sheathing.ts";
import { amount, told } from "./amounts.ts";
import { tellWorking, workings } from "./answer-parts.ts";

const board = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("own"),
    bending_stiffness_kN_m2_per_m: amount(0.001, 1000, "EI per metre of width, in the direction in which the board spans."),
    moment_capacity_kN_m_per_m: amount(0.001, 1000, "Permissible fZ per metre of width."),
    shear_capacity_kN_per_m: amount(0.01, 10_000, "Permissible shear per metre of width."),
  }),
  z.strictObject({
    kind: z.literal("apa"),
    thickness: z.enum(PLY_THICKNESSES).describe("In inches."),
    grade: z.enum(PLY_GRADES),
    grain: z.enum(FACE_GRAINS).describe("Of the face, across the supports or along them."),
    reused: z.boolean().describe("Forms used again and again lose the short-load factor."),
  }),
]);

const shape = z.strictObject({
  board,
  pressure_kPa: amount(0.001, 10_000, "At the lowest point of the strip."),
  centres_mm: amount(1, 10_000, "Of the supports."),
  spans: z.literal([1, 2, 3]).describe("3 stands for three and more."),
  support_width_mm: amount(0.1, 2000, "Of one support."),
  overhang_mm: amount(0, 5000, "Loaded board beyond the centre of the outer support.").default(0),
  deflection_ratio: amount(1, 10_000, "270 stands for span / 270."),
});

const toBoard = (given: z.output<typeof board>): SheathingInput["board"] =>
  given.kind === "apa" ? given : {
    kind: "own",
    board: {
      bendingStiffness: kN_m2_per_m(given.bending_stiffness_kN_m2_per_m),
      momentCapacity: kN_m_per_m(given.moment_capacity_kN_m_per_m),
      shearCapacity: kN_per_m(given.shear_capacity_kN_per_m),
    },
  };

export const sheathingInput = shape.transform((given): SheathingInput => ({
  board: toBoard(given.board),
  pressure: kPa(given.pressure_kPa),
  centres: m(given.centres_mm / 1000),
  spans: given.spans,
  supportWidth: m(given.support_width_mm / 1000),
  overhang: m(given.overhang_mm / 1000),
  deflectionRatio: given.deflection_ratio,
}));

const WHAT = ["bending", "shear", "deflection"] as const;
export const sheathingAnswer = z.strictObject({
  passes: z.boolean(),
  governs: z.enum(WHAT),
  allowed_pressure_kPa: told("The largest pressure that this board on these supports carries."),
  uses: z.array(z.strictObject({ what: z.enum(WHAT), allowed_pressure_kPa: told("At which this limit is reached."), utilisation: told("Passes up to 1.") })),
  working: workings,
});
export type SheathingTold = z.output<typeof sheathingAnswer>;

export const tellSheathing = ({ passes, governs, allowedPressure, uses, working }: SheathingAnswer): SheathingTold => ({
  passes, governs, allowed_pressure_kPa: allowedPressure,
  uses: uses.map(({ what, allowedPressure: allowed, utilisation }) => ({ what, allowed_pressure_kPa: allowed, utilisation })),
  working: tellWorking(working),
});

export const sheathingExample = {
  board: { kind: "own", bending_stiffness_kN_m2_per_m: 2.4, moment_capacity_kN_m_per_m: 0.46, shear_capacity_kN_per_m: 7.1 },
  pressure_kPa: 58, centres_mm: 215, spans: 3, support_width_mm: 45, overhang_mm: 30, deflection_ratio: 270,
} satisfies z.input<typeof shape>;
