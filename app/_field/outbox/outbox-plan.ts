import type { EventAnswer, RecordAnswer } from "#lib/contracts/progress.ts";
import type { Failure } from "#lib/kernel/result.ts";
import { isGathering, isMove, type KeptItem } from "./kept-item.ts";

/** What goes off in one message. */
export type Batch = { readonly projectId: string; readonly saved: boolean; readonly items: readonly KeptItem[] };

export const MOST_TOGETHER = 50;
/** After so many failures of the server an item goes alone, so that one bad item is found and holds up no other. */
export const STUMBLES_TOGETHER = 3;
const ASKED_WITHIN_MS = 60_000;
const OVERDUE_MS = 24 * 3_600_000;
const KEEP_SENT_MS = 12 * 3_600_000;
const MOST_SENT = 60;

/** Whoever made it an age ago is no longer looking at the screen, so a reason cannot be asked for. */
const isLate = (item: KeptItem, now: number): boolean => Math.abs(now - item.madeAt) > ASKED_WITHIN_MS;

const inOrder = (items: readonly KeptItem[]): KeptItem[] => [...items].sort((left, right) => left.place - right.place);

/**
 * The next message for one person: the oldest waiting items of one project, in the order they were made, so that what
 * was gathered for a column arrives before the tick that it stands. Items of anyone else who used this phone are never in it.
 */
export function nextBatch(items: readonly KeptItem[], personId: string, now: number, passOver: ReadonlySet<string>): Batch | null {
  const waiting = inOrder(items).filter(
    (item) => item.standing === "waiting" && item.personId === personId && !passOver.has(item.event.id),
  );
  const first = waiting[0];
  if (first === undefined) return null;
  const saved = isLate(first, now);
  const ofProject = waiting.filter((item) => item.projectId === first.projectId);
  const breakAt = ofProject.findIndex((item) => isLate(item, now) !== saved || goesAlone(item));
  const most = goesAlone(first) ? 1 : Math.min(MOST_TOGETHER, breakAt === -1 ? MOST_TOGETHER : breakAt);
  return { projectId: first.projectId, saved, items: ofProject.slice(0, most) };
}

/** What moves gear is taken or refused by itself. */
const goesAlone = (item: KeptItem): boolean => item.stumbles >= STUMBLES_TOGETHER || isMove(item);

export const onItsWay = (items: readonly KeptItem[]): KeptItem[] => items.map((item) => ({ ...item, tries: item.tries + 1 }));

/** Back as before: the message did not leave the phone. */
export const stayed = (items: readonly KeptItem[]): KeptItem[] => items.map((item) => ({ ...item, tries: Math.max(0, item.tries - 1) }));

const STANDING_AFTER: Readonly<Record<EventAnswer["outcome"], KeptItem["standing"]>> = {
  accepted: "sent", repeat: "sent", queried: "sent", "needs-reason": "asks", refused: "refused",
};

/** Items as they stand after an answer; one the answer passes over in silence goes on waiting. */
export function settle(items: readonly KeptItem[], answer: RecordAnswer, now: number): KeptItem[] {
  const byId = new Map(answer.answers.map((each) => [each.id, each]));
  return items.map((item) => {
    const told = byId.get(item.event.id);
    if (told === undefined) return item;
    const { outcome, findings } = told;
    return { ...item, standing: STANDING_AFTER[outcome], outcome, findings, failure: null, answeredAt: now };
  });
}

/** Gear that was moved; `takenAt` as the server told it. */
export const settleMoves = (items: readonly KeptItem[], takenAt: string | null, now: number): KeptItem[] =>
  items.map((item) => ({ ...item, standing: "sent", outcome: "accepted", takenAt, answeredAt: now }));

/** A message refused as a whole: alone, the item is parked; together, each goes alone to find the one at fault. */
export function park(items: readonly KeptItem[], failure: Failure, now: number): KeptItem[] {
  if (items.length > 1) return items.map((item) => ({ ...item, stumbles: STUMBLES_TOGETHER }));
  return items.map((item) => ({ ...item, standing: "refused", outcome: "refused", failure: failure.kind, refusal: failure, answeredAt: now }));
}

/** What was gathered and refused although it is to be taken back anyway, and the taking back: neither has anything to tell. */
export function pointless(items: readonly KeptItem[]): string[] {
  const refused = new Set(items.filter((item) => isGathering(item) && item.standing === "refused").map(({ event }) => event.id));
  return items.flatMap(({ event, standing }) =>
    event.kind === "taken-back" && standing === "waiting" && refused.has(event.movementId) ? [event.id, event.movementId] : []);
}

export const stumble = (items: readonly KeptItem[]): KeptItem[] => items.map((item) => ({ ...item, stumbles: item.stumbles + 1 }));

/** The server keeps nothing of what it asked about or refused, nor of what never left. */
export const neverArrived = ({ standing, tries }: KeptItem): boolean =>
  standing === "asks" || standing === "refused" || (standing === "waiting" && tries === 0);

/** Back in the queue, as after a reason was given or a hindrance removed. */
export const requeue = (item: KeptItem, reason: string | null): KeptItem => ({
  ...item, standing: "waiting", stumbles: 0, outcome: null, findings: [], failure: null, refusal: undefined, answeredAt: null,
  event: reason === null ? item.event : { ...item.event, reason },
});

/** What is sent is kept long enough to be looked at in the evening. */
export const outlived = (items: readonly KeptItem[], now: number): KeptItem[] => {
  const sent = inOrder(items.filter((item) => item.standing === "sent")).reverse();
  return sent.filter((item, index) => index >= MOST_SENT || now - (item.answeredAt ?? now) > KEEP_SENT_MS);
};

/** Doubles from two seconds up to a minute, spread so that a crew's phones do not all call at once. */
export const retryPause = (failures: number, spread: number): number =>
  Math.min(60_000, 1_000 * 2 ** Math.min(failures, 6)) * (0.75 + spread / 2);

export type OutboxCounts = {
  readonly waiting: number;
  readonly asks: number;
  readonly refused: number;
  /** Waiting, but made by somebody else on this phone. */
  readonly ofOthers: number;
  /** Something has been waiting for more than a day. */
  readonly isOverdue: boolean;
};

export function countKept(items: readonly KeptItem[], personId: string, now: number): OutboxCounts {
  const own = items.filter((item) => item.personId === personId);
  const waiting = own.filter((item) => item.standing === "waiting");
  const of = (standing: KeptItem["standing"]): number => own.filter((item) => item.standing === standing).length;
  return {
    waiting: waiting.length,
    asks: of("asks"),
    refused: of("refused"),
    ofOthers: items.filter((item) => item.personId !== personId && item.standing === "waiting").length,
    isOverdue: waiting.some((item) => now - item.madeAt > OVERDUE_MS),
  };
}
