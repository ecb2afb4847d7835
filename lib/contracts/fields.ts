import { z } from "zod";
import { isDay } from "#lib/kernel/days.ts";

/** One line of text a person types: trimmed, without control characters. */
export const line = (most: number) =>
  z
    .string()
    .trim()
    .min(1, "Fill this in.")
    .max(most, `Keep this to ${most} characters.`)
    .refine((text) => !/[\u0000-\u001f\u007f]/.test(text), "Remove the control characters.");

export const optionalLine = (most: number) =>
  z.preprocess((text) => (typeof text === "string" && text.trim() === "" ? null : text), line(most).nullable()).default(null);

export const id = z.uuid("This link is not whole; open the page again.");
export const day = z.string().refine(isDay, "Give a day as YYYY-MM-DD.");
export const instant = z.iso.datetime({ message: "Give an instant in UTC, as 2031-04-17T06:30:00Z." });

/** A whole number of millimetres within stated bounds. */
export const wholeMm = (least: number, most: number) =>
  z
    .number({ message: `Give millimetres between ${least} and ${most}.` })
    .int("Give whole millimetres.")
    .min(least, `Not under ${least} mm.`)
    .max(most, `Not over ${most} mm.`);

/** Millimetres to a tenth, which keeps an inch an inch. */
export const tenthMm = (least: number, most: number) =>
  z
    .number({ message: `Give millimetres between ${least} and ${most}.` })
    .refine((value) => Math.abs(value * 10 - Math.round(value * 10)) < 1e-6, "Give millimetres to a tenth.")
    .min(least, `Not under ${least} mm.`)
    .max(most, `Not over ${most} mm.`);

export const between = (least: number, most: number, what: string) =>
  z
    .number({ message: `Give ${what} between ${least} and ${most}.` })
    .min(least, `${what} not under ${least}.`)
    .max(most, `${what} not over ${most}.`);
