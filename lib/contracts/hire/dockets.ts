import { z } from "zod";
import { day, id, instant, line, optionalLine } from "../fields.ts";

export const DOCKET_KINDS = ["order", "delivery", "off-hire", "return", "yard-count", "missing", "settlement", "failed-collection", "stand-down", "credit"] as const;
export type DocketKind = (typeof DOCKET_KINDS)[number];

const pieces = (what: string, least = 0) =>
  z.number({ message: `Give ${what} as whole pieces.` }).int(`Give ${what} as whole pieces.`).min(least, `${what}: not under ${least}.`).max(1_000_000, `${what}: not over 1,000,000.`);

const counted = z
  .object({ itemId: id, quantity: pieces("Counted"), short: pieces("Short").default(0), damaged: pieces("Damaged").default(0), dirty: pieces("Dirty").default(0) })
  .refine(({ quantity, damaged, dirty }) => damaged <= quantity && dirty <= quantity, { message: "No more can be damaged or dirty than were counted.", path: ["damaged"] })
  .refine(({ quantity, short }) => quantity + short > 0, { message: "Nothing was counted.", path: ["quantity"] });
const named = z.object({ itemId: id, quantity: pieces("Pieces", 1) });
const once = <T extends { itemId: string }>(lines: readonly T[]): boolean => new Set(lines.map(({ itemId }) => itemId)).size === lines.length;
const lines = <S extends z.ZodType<{ itemId: string }>>(shape: S) =>
  z.array(shape).min(1, "Name at least one item.").max(200, "Not more than 200 items.").refine(once, "An item is named twice.");

const head = { projectId: id, supplierId: id, number: line(40), on: day, happenedAt: instant, name: optionalLine(80), note: optionalLine(500) };

/** What is counted at the gate: in, or out. */
export const countDocketInput = z.discriminatedUnion("kind", [
  z.object({ ...head, kind: z.literal("delivery"), orderId: id.nullable().default(null), dispatchedOn: day.nullable().default(null), bySupplier: z.boolean(), lines: lines(counted) }),
  z.object({ ...head, kind: z.literal("return"), callId: id.nullable().default(null), bySupplier: z.boolean(), lines: lines(counted) }),
]);
export type CountDocket = z.output<typeof countDocketInput>;

/** What is said or written: the rest of the chain. */
export const recordDocketInput = z.discriminatedUnion("kind", [
  z.object({ ...head, kind: z.literal("order"), lines: lines(named) }),
  z.object({ ...head, kind: z.literal("off-hire"), name: line(80), lines: lines(named) }),
  z.object({ ...head, kind: z.literal("yard-count"), answersId: id, lines: lines(counted) }),
  z.object({ ...head, kind: z.literal("missing"), lines: lines(named) }),
  z.object({ ...head, kind: z.literal("settlement"), answersId: id }),
  z.object({ ...head, kind: z.literal("failed-collection"), answersId: id.nullable().default(null) }),
  z.object({ ...head, kind: z.literal("stand-down"), until: day, share: z.number().int().min(0).max(10_000), itemId: id.nullable().default(null) }),
  z.object({ ...head, kind: z.literal("credit"), answersId: id.nullable().default(null), amount: z.number().int("Give the amount in whole cents or pence.").min(1, "Give the amount credited.") }),
]);
export type RecordDocket = z.output<typeof recordDocketInput>;

export const docketInput = z.object({ projectId: id, docketId: id });
export const onHireInput = z.object({ projectId: id, on: day.optional() });
export const statementInput = z.object({ projectId: id, supplierId: id, from: day, to: day })
  .refine(({ from, to }) => from <= to, { message: "The period ends before it begins.", path: ["to"] });

export const PHOTO_BYTES = 4 * 1024 * 1024;
export const addPhotoInput = z.object({ projectId: id, docketId: id, takenAt: instant, file: z.instanceof(Uint8Array) });
export const photoInput = z.object({ projectId: id, photoId: id });
