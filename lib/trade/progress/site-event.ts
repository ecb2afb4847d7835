import type { Cause, Gate, Stage } from "./stages.ts";

/** Head of the column against its foot, along the plan's x and y; positive towards greater x and y. */
export type Offsets = { readonly x: number; readonly y: number };
export type ReadingTime = "before-pour" | "after-pour";

/** Something seen or done at the column. */
export type Fact =
  | { readonly kind: "stage-reached"; readonly stage: Stage }
  /** `to` is the stage it is back at; null is nothing at all. */
  | { readonly kind: "set-back"; readonly to: Stage | null; readonly cause: Cause }
  | { readonly kind: "gate-released"; readonly gate: Gate }
  | { readonly kind: "gate-revoked"; readonly gate: Gate }
  | { readonly kind: "reading"; readonly when: ReadingTime; readonly offsets_mm: Offsets }
  | { readonly kind: "held" }
  | { readonly kind: "hold-lifted" };

/** Something said about an earlier event: taken out, decided when queried, or seen by the owner as an exception. */
export type Remark =
  | { readonly kind: "withdrawn"; readonly eventId: string }
  | { readonly kind: "settled"; readonly eventId: string; readonly stands: boolean }
  | { readonly kind: "acknowledged"; readonly eventId: string };

/** Made where the fact is made. `happenedAt` is an ISO 8601 instant in UTC by the device, `by` a person's id. */
type Told = {
  readonly id: string;
  readonly columnId: string;
  readonly happenedAt: string;
  readonly by: string;
  readonly reason: string | null;
};
/** Added on arrival. */
type Received = { readonly seq: number; readonly arrivedAt: string; readonly standing: "accepted" | "queried" };

export type ProposedEvent = Told & (Fact | Remark);
export type SiteEvent = Told & Received & (Fact | Remark);
export type FactEvent = Told & Received & Fact;
export type EventKind = SiteEvent["kind"];

export const isRemark = (kind: EventKind): kind is Remark["kind"] =>
  kind === "withdrawn" || kind === "settled" || kind === "acknowledged";
export const isFact = (event: SiteEvent): event is FactEvent => !isRemark(event.kind);

/** How long a tick can be taken back without saying why. */
export const UNDO_SECONDS = 10;

/** What takes an event back. Undoing an undo is the same again: withdrawing a withdrawal restores what it took out. */
export const undoOf = (event: { readonly id: string; readonly columnId: string }) =>
  ({ kind: "withdrawn", columnId: event.columnId, eventId: event.id }) as const;

const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?Z$/;
export const isInstant = (text: string): boolean => INSTANT.test(text) && Number.isFinite(Date.parse(text));

/** Milliseconds of an instant; an unreadable one lies before everything, so that sorting stays total. */
export function epochOf(instant: string): number {
  const epoch = Date.parse(instant);
  return Number.isNaN(epoch) ? -Infinity : epoch;
}

/** When the device made a version 7 id (RFC 9562 section 5.7), or null for any other id. */
export function madeAt(id: string): number | null {
  const parts = /^([0-9a-f]{8})-([0-9a-f]{4})-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/i.exec(id);
  return parts === null ? null : Number.parseInt(`${parts[1]}${parts[2]}`, 16);
}

/** Who said so, when on site, in which event. */
export type Mark = { readonly eventId: string; readonly at: string; readonly by: string };
type Placed = Pick<Mark, "eventId" | "at">;

export const markOf = (event: Told): Mark => ({ eventId: event.id, at: event.happenedAt, by: event.by });

/**
 * The order of the site: by when it happened, then by id. Ids sort by when the device made them, so two facts typed
 * for the same minute keep the order they were entered in; the order of arrival plays no part anywhere.
 */
export function siteOrder(left: Placed, right: Placed): number {
  const a = epochOf(left.at);
  const b = epochOf(right.at);
  if (a !== b) return a < b ? -1 : 1;
  return left.eventId === right.eventId ? 0 : left.eventId < right.eventId ? -1 : 1;
}

export const comesBefore = (left: Placed, right: Placed): boolean => siteOrder(left, right) < 0;
