import { z } from "zod";
import { FAMILIES, MOST_PIECES } from "#lib/trade/gear/ledger.ts";
import { between, day, id, instant, line, optionalLine } from "./fields.ts";

const projectId = id;
/** Whom the sender takes to be signed in; a phone that passes from hand to hand may have somebody else by now. */
const sender = id.optional();
export const pieces = z
  .number({ message: "Give a whole number of pieces." })
  .int("Give whole pieces.")
  .min(1, "Give one piece or more.")
  .max(MOST_PIECES, `Not more than ${MOST_PIECES} pieces at once.`);
/** Integer minor units: cents, pence. */
export const minorUnits = z.number().int("Give the price in whole cents or pence.").min(0, "A price is not under zero.").max(1_000_000_000_00);

export const gearInput = z.object({ projectId, at: instant.optional() });
export const projectInput = z.object({ projectId });
const counted = z.number({ message: "Give a whole number, zero where none lies there." }).int("Give whole pieces.").min(0, "A count is not under zero.").max(MOST_PIECES);
export const lockCountInput = z.object({
  projectId, countId: id, placeId: id,
  lines: z.array(z.object({ itemId: id, counted })).min(1, "Count at least one item.").max(600)
    .refine((lines) => new Set(lines.map(({ itemId }) => itemId)).size === lines.length, "Count each item once."),
});
export const settleCountInput = z.object({ projectId, countId: id, itemId: id, as: z.enum(["accepted", "found"]), reason: line(200) });
export const addCountPhotoInput = z.object({ projectId, countId: id, takenAt: instant, file: z.instanceof(Uint8Array) });
export const countPhotoInput = z.object({ projectId, photoId: id });
export const gatherInput = z.object({ projectId, columnIds: z.array(id).max(500).optional(), on: day.optional() });
/** What goes on a truck, or on to the columns it is for. */
export const gatherLinesInput = z.object({
  projectId, movementId: id, happenedAt: instant, personId: sender,
  /** The server's instant at which the list was read. */
  readAt: instant.optional(),
  to: z.discriminatedUnion("what", [z.object({ what: z.literal("truck"), truckId: id }), z.object({ what: z.literal("columns") })]),
  lines: z.array(z.object({ itemId: id, fromId: id, columnId: id, quantity: pieces })).min(1, "Say what is gathered.").max(500),
});
export const gearColumnInput = z.object({ projectId, columnId: id });
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
}).refine(({ itemId, family }) => itemId !== undefined || (family !== "sheet" && family !== "timber"), { path: ["family"], message: "Sheets and timber are added under Orders, by the size they come in." });

export const savePlaceInput = z.object({ projectId, placeId: id.optional(), kind: z.enum(["rack", "cleaning bay", "truck", "yard"]), name: line(60) });

const moved = z.object({ itemId: id, quantity: pieces });
export const openStockInput = z.object({
  projectId, happenedAt: instant, placeId: id, lines: z.array(moved).min(1, "Enter what there is.").max(200), reason: optionalLine(300),
});
export const moveGearInput = z
  .object({ projectId, happenedAt: instant, fromId: id, toId: id, lines: z.array(moved).min(1, "Say what moved.").max(200), reason: optionalLine(300) })
  .refine(({ fromId, toId }) => fromId !== toId, { path: ["toId"], message: "Choose another place to move it to." });
/** `reversalId` is the sender's, so that a message that comes twice takes back once. */
export const reverseMovementInput = z.object({ projectId, movementId: id, reason: line(300), reversalId: id.optional(), personId: sender });
export const cleanGearInput = z.object({ projectId, happenedAt: instant, fromId: id, toId: id, lines: z.array(moved).max(200).nullable().default(null) });

const size = { widthMm: between(20, 4000, "Width in mm"), heightMm: between(20, 30_000, "Height in mm") };

export const makePanelsInput = z.object({
  projectId, happenedAt: instant, placeId: id,
  count: z.number().int().min(1, "Make at least one.").max(100, "Not more than 100 at once."),
  ...size, thicknessMm: between(3, 60, "Thickness in mm"), filmFaces: z.union([z.literal(1), z.literal(2)]),
  sheetBatch: optionalLine(80), sheetCost: minorUnits.default(0), labourCost: minorUnits.default(0), sundryCost: minorUnits.default(0),
});
export const panelInput = z.object({ projectId, itemId: id });

const befell = { projectId, itemId: id, happenedAt: instant };
export const panelEventInput = z.discriminatedUnion("kind", [
  z.object({ ...befell, kind: z.literal("repaired"), reason: optionalLine(200), amount: minorUnits.default(0) }),
  z.object({ ...befell, kind: z.literal("damaged"), reason: line(200), amount: z.literal(0).default(0) }),
  z.object({ ...befell, kind: z.literal("turned"), reason: optionalLine(200), amount: z.literal(0).default(0) }),
  z.object({ ...befell, kind: z.literal("demoted"), reason: line(200), amount: z.literal(0).default(0) }),
  z.object({ ...befell, kind: z.literal("scrapped"), reason: line(200), amount: minorUnits.default(0) }),
]);
/** What is kept of what is left, as it was shown; not given, all that is worth keeping. */
export const rests = z.array(z.object(size)).max(6).optional();
export const cutDownInput = z.object({ ...befell, pieces: z.array(z.object(size)).min(1, "Give one piece or two.").max(2, "Cut it down again for more than two pieces."), rests, brought: minorUnits.default(0) });
export const withdrawPanelEventInput = z.object({ projectId, eventId: id, reason: line(200) });

export const FACE_LETTERS = ["A", "B", "C", "D"] as const;
export type FaceLetter = (typeof FACE_LETTERS)[number];
export const saveFormSetInput = z.object({
  projectId, setId: id.optional(), name: line(40),
  panels: z.array(z.object({ face: z.enum(FACE_LETTERS), itemId: id })).max(4)
    .refine((panels) => new Set(panels.map(({ face }) => face)).size === panels.length, "One panel to a face.")
    .refine((panels) => new Set(panels.map(({ itemId }) => itemId)).size === panels.length, "A panel closes one face."),
});
export const assignSetInput = z.object({ projectId, setId: id, columnId: id, happenedAt: instant });
export const fittingColumnsInput = z.object({ projectId, setId: id });
export const LABEL_KINDS = ["panel", "set", "column"] as const;
export type LabelKind = (typeof LABEL_KINDS)[number];
export const isLabelKind = (text: string | undefined): text is LabelKind => LABEL_KINDS.some((kind) => kind === text);
/** Without a level the columns of the lowest one. */
export const labelsInput = z.object({ projectId, kind: z.enum(LABEL_KINDS), levelId: id.optional() });
export const labelledInput = z.object({ projectId, kind: z.enum(LABEL_KINDS), id });
export const unassignSetInput = z.object({ projectId, assignmentId: id, reason: line(200) });
export const settleShortfallsInput = z.discriminatedUnion("as", [
  z.object({ projectId, shortfallIds: z.array(id).min(1).max(500), as: z.literal("added"), placeId: id, sourceId: id, happenedAt: instant }),
  z.object({ projectId, shortfallIds: z.array(id).min(1).max(500), as: z.literal("dismissed"), reason: line(200) }),
]);
