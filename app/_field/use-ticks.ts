"use client";

import { useMemo } from "react";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { undoOf } from "#lib/trade/progress/site-event.ts";
import type { Plumbing } from "#lib/trade/progress/stages.ts";
import { expectedSign, type ExpectedSign, type SignState } from "#app/_field/outbox/expected-sign.ts";
import { isTick, type Draft, type KeptEvent, type KeptItem } from "#app/_field/outbox/kept-item.ts";
import { makeEventId, randomBytes } from "#app/_field/outbox/make-event-ids.ts";
import { makeItems, mergeAnswers } from "#app/_field/outbox/make-items.ts";
import { outbox } from "./outbox.ts";
import { useOutbox } from "./use-outbox.ts";

export type TickOutcome =
  | { readonly where: "sent"; readonly ids: readonly string[]; readonly answer: RecordAnswer }
  /** `late`: what comes of it once the sending that was not waited for has ended. */
  | { readonly where: "saved-on-phone"; readonly ids: readonly string[]; readonly late?: Promise<TickOutcome> };

export type TicksInput = {
  readonly projectId: string;
  readonly personId: string;
  readonly personName?: string;
  /** The project's setting; decides what *poured* implies before the server has answered. */
  readonly plumbing?: Plumbing;
};

export type Ticks = {
  /** Saves on the phone, then sends. Never throws for want of reception. `onSaved` is told the ids as soon as nothing can be lost. */
  readonly tick: (drafts: readonly Draft[], onSaved?: (ids: readonly string[]) => void) => Promise<TickOutcome>;
  /** Takes back what `tick` recorded, given its ids, wherever it has got to. */
  readonly undo: (ids: readonly string[]) => Promise<TickOutcome>;
  /** Answers the question for entries that came back as needs-reason; they go out as new entries, with new ids. */
  readonly giveReason: (ids: readonly string[], reason: string, onSaved?: (ids: readonly string[]) => void) => Promise<TickOutcome>;
  /** Forgets entries that were not taken. */
  readonly drop: (ids: readonly string[]) => Promise<void>;
  /** Ticks of this project waiting on this phone. */
  readonly pending: readonly KeptItem<KeptEvent>[];
  /** The sign to draw for a column, what waits on this phone counted in. */
  readonly expect: (column: SignState & { readonly id: string }) => ExpectedSign;
};

/** So long a screen waits for an answer before it says that the entry is saved; sending goes on. */
const PATIENCE_MS = 2_500;

const pause = (ms: number) => new Promise<void>((resolve) => void setTimeout(resolve, ms));

async function sendAndSee(ids: readonly string[]): Promise<TickOutcome> {
  const sending = outbox().flush();
  await Promise.race([sending, pause(PATIENCE_MS)]);
  const come = comeOf(ids);
  return come.where === "sent" ? come : { ...come, late: sending.then(() => comeOf(ids)) };
}

function comeOf(ids: readonly string[]): TickOutcome {
  const answers = ids.map(outbox().answerTo);
  const known = answers.filter((answer) => answer !== undefined);
  return known.length < ids.length ? { where: "saved-on-phone", ids } : { where: "sent", ids, answer: mergeAnswers(known, ids) };
}

/** Entries that never left are struck out; for the others a withdrawal follows them. */
async function undoAll(ids: readonly string[], record: (drafts: readonly Draft[]) => Promise<TickOutcome>): Promise<TickOutcome> {
  const left = (await outbox().strikeOut(ids)).filter(isTick);
  return left.length === 0 ? { where: "saved-on-phone", ids: [] } : record(left.map(({ event, about }) => ({ ...undoOf(event), about })));
}

export function useTicks({ projectId, personId, personName = "", plumbing = "during-pour" }: TicksInput): Ticks {
  const { items } = useOutbox(personId);
  const acts = useMemo(() => {
    const tick: Ticks["tick"] = async (drafts, onSaved) => {
      const made = makeItems(drafts, { projectId, personId, personName }, () => Date.now(), (at) => makeEventId(at, randomBytes));
      await outbox().add(made);
      const ids = made.map((item) => item.event.id);
      onSaved?.(ids);
      return sendAndSee(ids);
    };
    const giveReason: Ticks["giveReason"] = async (asked, reason, onSaved) => {
      const ids = await outbox().giveReason(asked, reason);
      onSaved?.(ids);
      return sendAndSee(ids);
    };
    return { tick, giveReason, undo: (ids: readonly string[]) => undoAll(ids, tick), drop: (ids: readonly string[]) => outbox().drop(ids) };
  }, [projectId, personId, personName]);
  return useMemo(() => {
    const pending = items.filter(isTick).filter((item) => item.standing === "waiting" && item.projectId === projectId && item.personId === personId);
    const byColumn = groupBy(pending.map((item) => item.event), (event) => event.columnId);
    const none: readonly KeptEvent[] = [];
    const expect: Ticks["expect"] = ({ id, done, flagged }) => expectedSign({ done, flagged }, id, byColumn.get(id) ?? none, plumbing);
    return { ...acts, pending, expect };
  }, [acts, items, projectId, personId, plumbing]);
}
