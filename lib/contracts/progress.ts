import { z } from "zod";
import { CAUSES, GATES, STAGES } from "#lib/trade/progress/stages.ts";
import type { Finding } from "#lib/trade/progress/finding.ts";
import type { Next } from "#lib/trade/progress/next.ts";
import type { SiteEvent } from "#lib/trade/progress/site-event.ts";
import { between, id, instant, optionalLine } from "./fields.ts";

const fact = {
  id, columnId: id, happenedAt: instant, reason: optionalLine(300),
};
const offset = between(-500, 500, "Offset in mm");

export const proposedEvent = z.discriminatedUnion("kind", [
  z.object({ ...fact, kind: z.literal("stage-reached"), stage: z.enum(STAGES) }),
  z.object({ ...fact, kind: z.literal("set-back"), to: z.enum(STAGES).nullable(), cause: z.enum(CAUSES) }),
  z.object({ ...fact, kind: z.literal("gate-released"), gate: z.enum(GATES) }),
  z.object({ ...fact, kind: z.literal("gate-revoked"), gate: z.enum(GATES) }),
  z.object({
    ...fact, kind: z.literal("reading"), when: z.enum(["before-pour", "after-pour"]),
    offsets_mm: z.object({ x: offset, y: offset }),
  }),
  z.object({ ...fact, kind: z.literal("held") }),
  z.object({ ...fact, kind: z.literal("hold-lifted") }),
  z.object({ ...fact, kind: z.literal("withdrawn"), eventId: id }),
  z.object({ ...fact, kind: z.literal("settled"), eventId: id, stands: z.boolean() }),
  z.object({ ...fact, kind: z.literal("acknowledged"), eventId: id }),
]);
export type ProposedEventInput = z.input<typeof proposedEvent>;

export const MOST_EVENTS = 2000;
export const recordSiteEventsInput = z.object({
  projectId: id,
  /** Whom the sender takes to be signed in; on a phone that passes from hand to hand it may be somebody else by now. */
  personId: id.optional(),
  /** True when a phone sends what it saved while out of reach: nobody can be asked for a reason any more. */
  saved: z.boolean().default(false),
  events: z.array(proposedEvent).min(1).max(MOST_EVENTS, `Not more than ${MOST_EVENTS} events at once.`),
});

/** `repeat` is taken in and told nothing new; `needs-reason` and `refused` are not kept. */
export type EventAnswer = {
  readonly id: string;
  readonly columnId: string;
  readonly outcome: "accepted" | "repeat" | "queried" | "needs-reason" | "refused";
  readonly findings: readonly (Finding | { readonly code: "unknown-column" | "id-used" | "owner-only"; readonly values: Readonly<Record<string, never>> })[];
};
export type RecordAnswer = {
  readonly seq: number;
  readonly answers: readonly EventAnswer[];
  readonly columns: readonly { id: string; done: number; flagged: boolean }[];
};

export const changesSinceInput = z.object({ projectId: id, since: z.number().int().min(0) });
export const todayInput = z.object({ projectId: id, levelId: id.optional() });

/** An entry to be settled, and what speaks against it as things stand now; null when nothing does any more. */
export type QueriedEntry = { readonly event: SiteEvent; readonly byName: string; readonly because: Finding | null };
/** A column as the page of the day shows it. */
export type TodayColumn = {
  readonly id: string; readonly gridRef: string; readonly mark: string; readonly levelId: string; readonly level: string;
  readonly shape: "rectangle" | "circle"; readonly widthMm: number; readonly depthMm: number;
  readonly done: number; readonly flagged: boolean; readonly next: Next; readonly asksForReading: boolean;
  readonly queried: readonly QueriedEntry[];
  readonly held: { readonly at: string; readonly reason: string | null } | null;
  /** Those the owner has not acknowledged. */
  readonly exceptions: readonly (Finding & { readonly eventId: string; readonly reason: string | null })[];
};
