import { z } from "zod";

/** A number within bounds wide enough for any form; the calculators' own limits are narrower and refuse by name. */
export const amount = (least: number, most: number, about: string) =>
  z
    .number({ message: `Give a number from ${least} to ${most}.` })
    .min(least, `Not under ${least}.`)
    .max(most, `Not over ${most}.`)
    .describe(about);

export const wholeAmount = (least: number, most: number, about: string) => amount(least, most, about).int("Give a whole number.");

/** Any number that can be written in JSON: neither NaN nor infinite. */
export const told = (about: string) => z.number().describe(about);
