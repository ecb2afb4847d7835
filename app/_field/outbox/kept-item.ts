import type { EventAnswer } from "#lib/contracts/progress.ts";
import type { ProposedEvent } from "#lib/trade/progress/site-event.ts";

type Without<Event, Field extends PropertyKey> = Event extends unknown ? Omit<Event, Field> : never;

/** An event as the phone keeps and sends it; the server adds who. */
export type KeptEvent = Without<ProposedEvent, "by">;

/** What a screen hands over to be recorded: the phone adds the id, and the time unless it is given. */
export type Draft = Without<ProposedEvent, "id" | "by" | "happenedAt" | "reason"> & {
  readonly happenedAt?: string;
  readonly reason?: string | null;
  /** For the list of what is saved: "A4, Level 2". Never sent. */
  readonly about?: string;
};

/**
 * `waiting` is saved on this phone and not sent; `asks` came back for a reason; `refused` cannot be recorded as it is;
 * `sent` is kept a while to be looked at.
 */
export type KeptStanding = "waiting" | "asks" | "refused" | "sent";

export type KeptItem = {
  /** The order of entry on this phone, over all tabs. */
  readonly place: number;
  readonly event: KeptEvent;
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
  readonly answeredAt: number | null;
};
export type NewItem = Omit<KeptItem, "place">;
