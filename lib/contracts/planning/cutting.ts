import { z } from "zod";
import { id, instant, line, optionalLine, wholeMm } from "../fields.ts";

export const TIMBER_USES = ["backing", "fillet"] as const;
export type TimberUse = (typeof TIMBER_USES)[number];

/** In the smallest unit of the project's currency. */
const price = z.number({ message: "Give a price." }).int("Give a price in the currency's smallest unit.").min(1, "Give a price above nothing.").max(100_000_000, "Not over 1,000,000.00.");
const pieces = (most: number) => z.number({ message: `Give a count from 0 to ${most}.` }).int("Give a whole number.").min(0, "Not under 0.").max(most, `Not over ${most}.`);

/** `onHand` null is bought as needed; a number is what lies on the rack, and no more. */
const sheet = z.object({ lengthMm: wholeMm(200, 6000), widthMm: wholeMm(100, 3000), price, onHand: pieces(999).nullable() });
const timber = z.object({ use: z.enum(TIMBER_USES), lengthMm: wholeMm(300, 12_000), price, onHand: pieces(9999).nullable() });

/** What a project cuts from, and how it saws. The face grain runs along the sheet's length. */
export const cuttingRule = z.object({
  kerfMm: wholeMm(0, 12),
  trimMm: wholeMm(0, 100),
  mayTurn: z.boolean(),
  keepLongMm: wholeMm(50, 6000),
  keepShortMm: wholeMm(20, 3000),
  endTrimMm: wholeMm(0, 300),
  keepTimberMm: wholeMm(100, 6000),
  sheets: z.array(sheet).min(1, "Give at least one sheet.").max(20, "Not more than 20 sizes of sheet.")
    .refine((rows) => rows.some(({ onHand }) => onHand === null), "At least one size of sheet must be one to buy: leave its count on the rack empty."),
  timbers: z.array(timber).max(30, "Not more than 30 lengths of timber."),
  /** A panel's pours on one film face; what cutting one down and carrying one from the yard cost. */
  panelUses: z.number({ message: "Give the pours of a film face." }).int("Give a whole number.").min(1, "Not under 1.").max(200, "Not over 200.").default(7),
  recutEach: z.number({ message: "Give a cost." }).int("Give a cost in the currency's smallest unit.").min(0, "Not under 0.").max(10_000_000, "Not over 100,000.00.").default(1200),
  carryEach: z.number({ message: "Give a cost." }).int("Give a cost in the currency's smallest unit.").min(0, "Not under 0.").max(10_000_000, "Not over 100,000.00.").default(400),
  source: line(200),
});
export type CuttingRule = z.output<typeof cuttingRule>;

export const cuttingRuleInput = z.object({ projectId: id, version: z.number().int(), cuttingRule });

/** Form sets to be cut, by the size that names them; null asks for one set for each column of the level that is not cut. */
export const cuttingOrderInput = z.object({
  projectId: id,
  levelId: id.optional(),
  sets: z.array(z.object({ size: line(60), count: pieces(500) })).max(300, "Not more than 300 sizes at once.").nullable().default(null),
});

const place = { x: z.int(), y: z.int(), w: z.int(), h: z.int() };
const layout = z.object({
  sheetId: line(60), count: pieces(500),
  cuts: z.array(z.object({ dir: z.enum(["down", "across"]), at: z.int(), piece: z.object(place) })).max(400),
  parts: z.array(z.object({ ...place, partId: line(120), turned: z.boolean() })).max(400),
  offcuts: z.array(z.object({ ...place, kept: z.boolean() })).max(400),
});
const timberLayout = z.object({
  stockId: line(60), count: pieces(5000),
  cuts: z.array(z.object({ partId: line(120), lengthMm: z.int() })).min(1).max(400),
  offcutMm: z.int().min(0), kept: z.boolean(),
});
/** A plan of a level as it was shown, for the form sets it was made for; timbers of a use that could not be planned are left out. */
export const cutAsPlannedInput = cuttingOrderInput.extend({
  levelId: id, happenedAt: instant, sheetBatch: optionalLine(80), layouts: z.array(layout).min(1, "There is nothing to cut on this plan.").max(500, "Not more than 500 layouts at once."),
  timbers: z.array(z.object({ use: z.enum(TIMBER_USES), layouts: z.array(timberLayout).max(500, "Not more than 500 ways to cut a length at once.") })).max(TIMBER_USES.length)
    .refine((timbers) => new Set(timbers.map(({ use }) => use)).size === timbers.length, "Timbers of one use once.").default([]),
});
