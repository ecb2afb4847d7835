import { z } from "zod";
import type { Working } from "#lib/trade/engineering/working.ts";

const term = z.strictObject({
  name: z.string(),
  value: z.union([z.number(), z.string()]),
  unit: z.string().describe("Empty where there is none."),
});

export const working = z
  .strictObject({ title: z.string(), inputs: z.array(term), formula: z.string(), steps: z.array(term), result: term, source: z.string().describe("Title, edition and clause.") })
  .describe("How a number came about, complete enough to be checked by hand.");

export const workings = z.array(working);

/** Whitelisted anew, so that nothing else can ride along. */
export const tellWorking = (list: readonly Working[]): z.output<typeof workings> =>
  list.map(({ title, inputs, formula, steps, result, source }) => ({ title, inputs: [...inputs], formula, steps: [...steps], result, source }));

/** A limit that was not kept, where only a part of an answer falls under it. */
export const refused = z.strictObject({
  limit: z.string(), given: z.union([z.number(), z.string()]), allowed: z.string(), source: z.string(), message: z.string().describe("The limit, what was given, what would be allowed, and what to do."),
});

/** A limit that was not kept. The failure's `values` carry it, so that a program can read what a person reads. */
export const ENGINEERING_LIMIT = "engineering-limit";
