import type { z } from "zod";
import { backingAnswer, backingExample, backingInput } from "#lib/contracts/workings/backing.ts";
import { clampLayoutAnswer, clampLayoutExample, clampLayoutInput, clampLayoutMeasuredExample } from "#lib/contracts/workings/clamp-layout.ts";
import { plumbAnswer, plumbExample, plumbInput } from "#lib/contracts/workings/plumb.ts";
import { pressureAnswer, pressureExample, pressureShape } from "#lib/contracts/workings/pressure.ts";
import { sheathingAnswer, sheathingExample, sheathingInput } from "#lib/contracts/workings/sheathing.ts";
import { stripTimeAnswer, stripTimeExample, stripTimeInput } from "#lib/contracts/workings/strip-time.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { workOutBacking, workOutClampLayout, workOutPlumb, workOutPressure, workOutSheathing, workOutStripTime } from "#lib/server/workings/work-out.ts";

type Told = {
  /** What it answers, in one line, and what its answer is not. */
  readonly title: string;
  readonly about: string;
  readonly input: z.ZodType;
  readonly answer: z.ZodType;
  readonly examples: Readonly<Record<string, { readonly summary: string; readonly value: object }>>;
};
export type Calculator = Told & { readonly workOut: (caller: Caller, given: unknown) => Promise<Result<unknown>> };

/** The gate parses what is given with the use case's own contract. */
const calculator = <Given>(workOut: (caller: Caller, given: Given) => Promise<Result<unknown>>, told: Told): Calculator =>
  ({ ...told, workOut: (caller, given) => workOut(caller, given as Given) });

/** Every calculator by its place in the address. */
export const CALCULATORS: Readonly<Record<string, Calculator>> = {
  pressure: calculator(workOutPressure, {
    title: "Pressure of fresh concrete",
    about: "The pressure on the form of a column over its height, its resultant and the uplift, by the method asked for.",
    input: pressureShape, answer: pressureAnswer,
    examples: { column: { summary: "An upright column form", value: pressureExample } },
  }),
  sheathing: calculator(workOutSheathing, {
    title: "Ply of a panel",
    about: "Bending, shear and deflection of the board between its backing timbers, and the pressure it carries.",
    input: sheathingInput, answer: sheathingAnswer,
    examples: { board: { summary: "A board with values of its own", value: sheathingExample } },
  }),
  backing: calculator(workOutBacking, {
    title: "Backing timber over its clamps",
    about: "One backing timber as a continuous beam over clamps at any heights: reactions, moments, shear, deflection.",
    input: backingInput, answer: backingAnswer,
    examples: { timber: { summary: "A timber under concrete pressure", value: backingExample } },
  }),
  "clamp-layout": calculator(workOutClampLayout, {
    title: "Clamp heights",
    about: "The fewest clamps that carry the pour, or a check of heights as they stand; what leaving out one clamp would do; the highest rise rate by temperature.",
    input: clampLayoutInput, answer: clampLayoutAnswer,
    examples: {
      fewest: { summary: "Heights wanted", value: clampLayoutExample },
      measured: { summary: "Heights as measured, to be checked", value: clampLayoutMeasuredExample },
    },
  }),
  "strip-time": calculator(workOutStripTime, {
    title: "Earliest hour of stripping",
    about: "The hour at which a rule is met by hourly temperatures. It is never a release: that is for the person who is responsible for it.",
    input: stripTimeInput, answer: stripTimeAnswer,
    examples: { maturity: { summary: "A maturity asked for", value: stripTimeExample } },
  }),
  plumb: calculator(workOutPlumb, {
    title: "Plumb and twist of a form",
    about: "Lean and twist from readings at two heights, judged against a tolerance, and which way to knock the form by how much.",
    input: plumbInput, answer: plumbAnswer,
    examples: { offsets: { summary: "Offsets of two faces at two heights", value: plumbExample } },
  }),
};

export const findCalculator = (name: string): Calculator | undefined => (Object.hasOwn(CALCULATORS, name) ? CALCULATORS[name] : undefined);
