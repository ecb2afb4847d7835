import { z } from "zod";
import { FAMILIES, MOST_PIECES } from "#lib/trade/gear/ledger.ts";
import { id, instant, line, optionalLine } from "./fields.ts";

const projectId = id;
export const pieces = z
  .number({ message: "Give a whole number of pieces." })
  .int("Give whole pieces.")
  .min(1, "Give one piece or more.")
  .max(MOST_PIECES, `Not more than ${MOST_PIECES} pieces at once.`);
/** Integer minor units: cents, pence. */
export const minorUnits = z.number().int("Give the price in whole cents or pence.").min(0, "A price is not under zero.").max(1_000_000_000_00);

export const gearInput = z.object({ projectId, at: instant.optional() });
export const gearItemInput = z.object({ projectId, itemId: id });
export const movementsInput = z.object({ projectId, before: z.number().int().positive().optional() });

const partsOfSet = { barsEach: z.number().int().min(1).max(8).default(4), wedgesEach: z.number().int().min(0).max(16).default(4) };
export const saveItemInput = z.object({
  projectId,
  itemId: id.optional(),
  family: z.enum(FAMILIES).exclude(["panel"]),
  name: line(80),
  clampKindId: id.nullable().default(null),
  ...partsOfSet,
  lossPrice: minorUnits.nullable().default(null),
});

export const savePlaceInput = z.object({ projectId, placeId: id.optional(), kind: z.enum(["rack", "cleaning bay", "truck", "yard"]), name: line(60) });

const moved = z.object({ itemId: id, quantity: pieces });
export const openStockInput = z.object({
  projectId, happenedAt: instant, placeId: id, lines: z.array(moved).min(1, "Enter what there is.").max(200), reason: optionalLine(300),
});
export const moveGearInput = z
  .object({ projectId, happenedAt: instant, fromId: id, toId: id, lines: z.array(moved).min(1, "Say what moved.").max(200), reason: optionalLine(300) })
  .refine(({ fromId, toId }) => fromId !== toId, { path: ["toId"], message: "Choose another place to move it to." });
export const reverseMovementInput = z.object({ projectId, movementId: id, reason: line(300) });
export const cleanGearInput = z.object({ projectId, happenedAt: instant, fromId: id, toId: id, lines: z.array(moved).max(200).nullable().default(null) });
