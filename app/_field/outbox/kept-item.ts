import type { EventAnswer } from "#lib/contracts/progress.ts";
import type { Failure } from "#lib/kernel/result.ts";
import type { ProposedEvent } from "#lib/trade/progress/site-event.ts";

type Without<Event, Field extends PropertyKey> = Event extends unknown ? Omit<Event, Field> : never;

/** An event as the phone keeps and sends it; the server adds who. */
export type KeptEvent = Without<ProposedEvent, "by">;

type GatheredLine = { readonly itemId: string; readonly fromId: string; readonly columnId: string; readonly quantity: number };
type Told = { readonly id: string; readonly happenedAt: string; readonly reason: string | null };

/** Gear taken to where it is needed; the id becomes the movement's. */
export type KeptGathering = Told & {
  readonly kind: "gathered";
  readonly to: { readonly what: "truck"; readonly truckId: string } | { readonly what: "columns" };
  readonly lines: readonly GatheredLine[];
  /** When the list was read, by the server's clock: what others gathered since is not gathered again. */
  readonly readAt: string;
};
/** Gear put back to where it lay before a movement. */
export type KeptTakeBack = Told & { readonly kind: "taken-back"; readonly movementId: string };
export type KeptMove = KeptGathering | KeptTakeBack;

/** What is kept and sent: an event of a column, or what was done with gear. */
export type KeptEntry = KeptEvent | KeptMove;

/** What a screen hands over to be recorded: the phone adds the id, and the time unless it is given. */
type DraftOf<Entry> = Without<Entry, "id" | "happenedAt" | "reason"> & {
  readonly happenedAt?: string;
  readonly reason?: string | null;
  /** For the list of what is saved: "A4, Level 2". Never sent. */
  readonly about?: string;
};
export type Draft = DraftOf<KeptEvent>;
export type MoveDraft = DraftOf<KeptMove>;

/**
 * `waiting` is saved on this phone and not sent; `asks` came back for a reason; `refused` cannot be recorded as it is;
 * `sent` is kept a while to be looked at.
 */
export type KeptStanding = "waiting" | "asks" | "refused" | "sent";

export type KeptItem<Entry extends KeptEntry = KeptEntry> = {
  /** The order of entry on this phone, over all tabs. */
  readonly place: number;
  readonly event: Entry;
  readonly about: string;
  readonly projectId: string;
  readonly personId: string;
  readonly personName: string;
  readonly madeAt: number;
  readonly standing: KeptStanding;
  /** How often it was on its way; above 0 the server may know it although nobody heard back. */
  readonly tries: number;
  /** How often the server failed over it or over what went with it. */
  readonly stumbles: number;
  readonly outcome: EventAnswer["outcome"] | null;
  readonly findings: EventAnswer["findings"];
  /** Why the whole message was refused: the code of a failure, as not-allowed. */
  readonly failure: string | null;
  /** Why gear was not moved. */
  readonly refusal?: Failure;
  readonly answeredAt: number | null;
  /** When the server moved the gear, by its clock: lists read later know of it. */
  readonly takenAt?: string | null;
};
export type NewItem = Omit<KeptItem, "place">;

const MOVES: readonly string[] = ["gathered", "taken-back"] satisfies readonly KeptMove["kind"][];
export const isMove = (item: KeptItem): item is KeptItem<KeptMove> => MOVES.includes(item.event.kind);
export const isTick = (item: KeptItem): item is KeptItem<KeptEvent> => !isMove(item);
export const isGathering = (item: KeptItem): item is KeptItem<KeptGathering> => item.event.kind === "gathered";
