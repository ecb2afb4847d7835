import { z } from "zod";
import { minorUnits, pieces } from "../gear.ts";
import { day, id, instant, line, optionalLine, wholeMm } from "../fields.ts";
import { cuttingOrderInput } from "./cutting.ts";

export const MATERIAL_USES = ["sheet", "backing", "fillet"] as const;
export type MaterialUse = (typeof MATERIAL_USES)[number];

/** What is bought, by the size it comes in. A sheet has a width; of timber the section stands in its name. */
const material = { use: z.enum(MATERIAL_USES), material: line(80), lengthMm: wholeMm(1, 20_000), widthMm: wholeMm(1, 6000).nullable() };
export type Material = { readonly use: MaterialUse; readonly material: string; readonly lengthMm: number; readonly widthMm: number | null };
export const materialKey = ({ use, material: name, lengthMm, widthMm }: Material): string => [use, name.toLowerCase(), lengthMm, widthMm ?? ""].join(" | ");

const ordered = z.object({ ...material, quantity: pieces, priceEach: minorUnits.nullable().default(null) })
  .refine(({ use, widthMm }) => (use === "sheet") === (widthMm !== null), { path: ["widthMm"], message: "A sheet has a length and a width, timber a length." });
export const placeOrderInput = z.object({
  projectId: id, orderId: id, supplier: line(80), number: line(40), orderedOn: day, wantedOn: day, note: optionalLine(300),
  lines: z.array(ordered).min(1, "Enter how many of at least one size.").max(100, "Not more than 100 sizes on one order.")
    .refine((lines) => new Set(lines.map(materialKey)).size === lines.length, "A size is named twice."),
}).refine(({ orderedOn, wantedOn }) => wantedOn >= orderedOn, { path: ["wantedOn"], message: "Wanted before it is ordered: give the same day or a later one." });

const counted = (what: string) => z.number({ message: `Give ${what} as whole pieces.` }).int(`Give ${what} as whole pieces.`).min(0, `${what}: not under 0.`).max(1_000_000, `${what}: not over 1,000,000.`);
export const receiveOrderInput = z.object({
  projectId: id, orderId: id, receiptId: id, number: line(40), receivedOn: day, placeId: id, reason: optionalLine(300),
  lines: z.array(z.object({ itemId: id, taken: counted("Taken"), short: counted("Short").default(0), refused: counted("Sent back").default(0) })
    .refine(({ taken, short, refused }) => taken + short + refused > 0, "Nothing was counted.")).min(1, "Count at least one size.").max(100)
    .refine((lines) => new Set(lines.map(({ itemId }) => itemId)).size === lines.length, "Count each size once."),
});
export const reverseReceiptInput = z.object({ projectId: id, receiptId: id, reason: line(300) });
export const endOrderInput = z.object({ projectId: id, orderId: id, kind: z.enum(["cancelled", "closed"]), reason: line(300) });
export const orderInput = z.object({ projectId: id, orderId: id });
export const ordersInput = z.object({ projectId: id });

/** For a level, or for columns chosen; null asks for as many sets as the planned days need at once. */
export const buyingInput = cuttingOrderInput.extend({ columnIds: z.array(id).max(500, "Not more than 500 columns at once.").optional() });

const days = (most: number) => z.number({ message: `Give working days from 0 to ${most}.` }).int("Give whole days.").min(0, "Not under 0 days.").max(most, `Not over ${most} days.`);
/** `waste` in hundredths of a percent. */
export const buyingRuleInput = z.object({
  projectId: id, leadDays: days(120), makingDays: days(60),
  waste: z.number({ message: "Give a percentage from 0 to 100." }).int("Give the percentage with two decimals at most.").min(0, "Not under 0 %.").max(10_000, "Not over 100 %."),
});
export type BuyingRule = Omit<z.output<typeof buyingRuleInput>, "projectId">;

/** Without a place it lies in the yard. */
const known = z.object({ ...material, quantity: pieces });
export const takeInMaterialInput = z.object({ projectId: id, placeId: id.nullable().default(null), lines: z.array(known).min(1, "Enter how many of at least one size.").max(100) });

export const cutUpInput = z.object({
  projectId: id, happenedAt: instant, placeId: id, lines: z.array(z.object({ itemId: id, quantity: pieces })).min(1, "Enter what was cut up.").max(100), reason: optionalLine(300),
});
