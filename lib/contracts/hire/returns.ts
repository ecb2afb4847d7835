import { z } from "zod";
import { between, id, line } from "../fields.ts";

const whole = (least: number, most: number, what: string) =>
  z.number({ message: `Give ${what} as a whole number.` }).int(`Give ${what} as a whole number.`).min(least, `${what}: not under ${least}.`).max(most, `${what}: not over ${most}.`);

/** What a plan goes by beside the terms and the dates of the columns. Money in minor units. */
export const returnSettings = z.object({
  /** Those with gear here, in the plan or left out of it, with their trucks. */
  suppliers: z.array(z.object({
    supplierId: id, isIn: z.boolean(),
    truckKg: whole(100, 60_000, "Kilograms a truck carries"),
    tripCost: whole(0, 1_000_000_00, "What a trip costs"),
    /** From ordering more to having it. */
    leadDays: whole(0, 60, "Days until more can be had"),
  })).max(50).refine((suppliers) => suppliers.some(({ isIn }) => isIn), "Choose at least one supplier.")
    .refine((suppliers) => new Set(suppliers.map(({ supplierId }) => supplierId)).size === suppliers.length, "A supplier is named twice."),
  /** Loading, unloading and cleaning, each way, a piece. */
  handling: whole(0, 1_000_000, "Handling of a piece"),
  weekdays: z.array(z.number().int().min(1).max(7)).min(1, "Choose at least one day on which a truck comes.").transform((days) => [...new Set(days)].sort()),
  floatPercent: between(0, 50, "Float"),
  cleaningDays: whole(0, 30, "Days for cleaning"),
  lossPercentMonth: between(0, 50, "Loss in a month"),
  unitKg: z.record(z.string(), whole(0, 2000, "Weight of a piece")),
});
export type ReturnSettings = z.output<typeof returnSettings>;

export const returnPlanInput = z.object({ projectId: id });
export const orderReturnPlanInput = z.object({ projectId: id, settings: returnSettings });
export const acceptReturnsInput = z.object({
  projectId: id, planId: id,
  lines: z.array(z.object({ supplierId: id, collectOn: line(10), itemId: id })).min(1, "Choose at least one line.").max(2000),
});
export const returnTaskInput = z.object({ projectId: id, taskId: id, to: z.enum(["done", "open", "withdrawn"]) });
export const calendarFeedInput = z.object({ projectId: id });
export const readCalendarInput = z.object({ token: line(80) });

export const returnLines = z.array(z.object({ itemId: z.string(), item: z.string(), quantity: z.number() }));
export type ReturnLines = z.output<typeof returnLines>;
