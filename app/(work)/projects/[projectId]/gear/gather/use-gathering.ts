"use client";

import { useRouter } from "next/navigation";
import { useEffect, useMemo, useRef } from "react";
import { gatheredSince, isBuiltOn } from "#app/_field/outbox/expected-take.ts";
import { isGathering, isMove, type KeptGathering, type KeptItem, type KeptTakeBack, type MoveDraft } from "#app/_field/outbox/kept-item.ts";
import { makeEventId, randomBytes } from "#app/_field/outbox/make-event-ids.ts";
import { makeItems } from "#app/_field/outbox/make-items.ts";
import { splitGathering } from "#app/_field/outbox/split-gathering.ts";
import { outbox } from "#app/_field/outbox.ts";
import { readReception } from "#app/_field/reception.ts";
import type { TickPerson } from "#app/_field/ticking/tick-column.ts";
import { useOutbox } from "#app/_field/use-outbox.ts";

type Input = { readonly projectId: string; readonly me: TickPerson };

/** Saves moves on the phone, then sends them; a second press while the first is being saved is a stray thumb's. */
function useMoves({ projectId, me: { id: personId, name: personName } }: Input) {
  const isSaving = useRef(false);
  return useMemo(() => {
    const keepAll = async (drafts: readonly MoveDraft[]): Promise<void> => {
      if (isSaving.current) return;
      isSaving.current = true;
      const made = makeItems(drafts, { projectId, personId, personName }, () => Date.now(), (at) => makeEventId(at, randomBytes));
      await outbox().add(made).finally(() => (isSaving.current = false));
      void outbox().flush();
    };
    const keep = (draft: MoveDraft): Promise<void> => keepAll([draft]);
    /** What never left is struck out; what may have arrived is taken back after it. */
    const undo = async ({ event, about }: KeptItem<KeptGathering>): Promise<void> => {
      const left = await outbox().strikeOut([event.id]);
      if (left.length > 0) await keep({ kind: "taken-back", movementId: event.id, reason: "Undone on the phone", about });
    };
    /** The lines of one that was refused, each by itself: only those that cannot be taken are told again. */
    const oneByOne = async ({ event }: KeptItem<KeptGathering>, nameOf: (lines: KeptGathering["lines"]) => string): Promise<void> => {
      await keepAll(splitGathering(event, nameOf));
      await outbox().drop([event.id]);
    };
    return { keep, undo, oneByOne };
  }, [projectId, personId, personName]);
}

export type Gathering = ReturnType<typeof useGathering>;

/** What this phone has gathered for these columns, as far as a list read at `readAt` (the server's instant) does not know of it. */
export function useGathering({ projectId, me, readAt, columnIds }: Input & { readonly readAt: string; readonly columnIds: readonly string[] }) {
  const { items, isRead } = useOutbox(me.id);
  const moves = useMoves({ projectId, me });
  const own = items.filter(isMove).filter((item) => item.projectId === projectId && item.personId === me.id);
  useReadAgain(own, isRead);
  const concerns = ({ event }: KeptItem<KeptGathering>): boolean => event.lines.some(({ columnId }) => columnIds.includes(columnId));
  const kept = gatheredSince(own, readAt).filter(concerns);
  return {
    readAt, kept,
    /** Not taken, with the reason; they stay until they are dismissed. */
    refused: own.filter(isGathering).filter((item) => item.standing === "refused" && concerns(item)),
    mayUndo: (item: KeptItem<KeptGathering>): boolean => item.standing === "waiting" && !isBuiltOn(item, kept),
    ...moves,
  };
}

/** Several answers in a row make one reading of the page. */
const GATHER_MS = 600;

/** Reads the page again once the server has answered something kept here. */
function useReadAgain(own: readonly KeptItem[], isRead: boolean): void {
  const router = useRouter();
  const known = useRef<ReadonlySet<string> | null>(null);
  const answered = own.filter(({ standing }) => standing === "sent" || standing === "refused").map(({ event, standing }) => `${event.id} ${standing}`).join(",");
  useEffect(() => {
    if (!isRead) return;
    const [before, now] = [known.current, new Set(answered.split(","))];
    known.current = now;
    if (before === null || [...now].every((each) => before.has(each))) return;
    setTimeout(() => { if (readReception().isReached !== false) router.refresh(); }, GATHER_MS);
  }, [router, answered, isRead]);
}

/** Taking back a movement the page shows. */
export function useTakeBack({ projectId, me, movementId }: Input & { readonly movementId: string }) {
  const { items } = useOutbox(me.id);
  const { keep } = useMoves({ projectId, me });
  const isIt = (item: KeptItem): item is KeptItem<KeptTakeBack> => item.event.kind === "taken-back" && item.event.movementId === movementId && item.personId === me.id;
  return { kept: items.filter(isIt).at(-1), keep };
}
