"use client";

import { useState } from "react";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import type { Plumbing } from "#lib/trade/progress/stages.ts";
import type { Draft } from "#app/_field/outbox/kept-item.ts";
import { useTicks, type TickOutcome, type Ticks } from "#app/_field/use-ticks.ts";
import { needsTelling, readOutcome, type Outcome, type Skipped } from "./outcome.ts";
import type { TickPerson, TickProject } from "./tick-column.ts";

export type RecordingInput = {
  readonly project: Pick<TickProject, "id">;
  readonly me: TickPerson;
  readonly plumbing?: Plumbing;
  readonly onTaken?: (answer: RecordAnswer) => void;
  /** Everything that was tried is recorded or saved, so the selection has done its work. */
  readonly onDone?: () => void;
};
/** What can still be taken back, for ten seconds. */
export type Undoable = { readonly key: string; readonly words: string; readonly ids: readonly string[] };

export type Recording = {
  readonly ticks: Ticks;
  readonly isBusy: boolean;
  readonly undoable: Undoable | null;
  /** Shown until the person has read it. */
  readonly outcome: Outcome | null;
  readonly record: (words: string, drafts: readonly Draft[], skipped?: readonly Skipped[]) => Promise<void>;
  readonly undo: () => Promise<void>;
  readonly letUndoGo: () => void;
  readonly giveReason: (reason: string) => Promise<void>;
  /** Leaves what was skipped as it is. */
  readonly leave: () => Promise<void>;
};

const idsOf = (skipped: readonly Skipped[], kinds: readonly Skipped["kind"][]): string[] =>
  skipped.flatMap(({ id, kind }) => (id !== null && kinds.includes(kind) ? [id] : []));

/** After the answer only what was kept can be taken back; gone is gone, and a later press has its own. */
function narrow(before: Undoable | null, told: Outcome, ids: readonly string[]): Undoable | null {
  if (before === null || before.key !== ids[0]) return before;
  const lost = new Set(idsOf(told.skipped, ["asks", "refused"]));
  const kept = ids.filter((id) => !lost.has(id));
  return kept.length === 0 ? null : { ...before, words: told.isSaved ? `${told.words}. Saved on this phone.` : told.words, ids: kept };
}

/** One press of a button after another: recorded, told about, taken back. */
export function useRecording({ project, me, plumbing, onTaken, onDone }: RecordingInput): Recording {
  const ticks = useTicks({ projectId: project.id, personId: me.id, personName: me.name, ...(plumbing ? { plumbing } : {}) });
  const [isBusy, setBusy] = useState(false);
  const [undoable, setUndoable] = useState<Undoable | null>(null);
  const [outcome, setOutcome] = useState<Outcome | null>(null);

  const tell = (words: string, ticked: TickOutcome, columnIds: readonly string[], skipped: readonly Skipped[]): void => {
    const told = readOutcome(words, ticked, columnIds, skipped);
    if (ticked.where === "sent") onTaken?.(ticked.answer);
    setUndoable((before) => narrow(before, told, ticked.ids));
    setOutcome(needsTelling(told) ? told : null);
    if (!needsTelling(told)) onDone?.();
    if (ticked.where === "saved-on-phone") void ticked.late?.then((come) => tellLate(words, come, columnIds));
  };
  /** An answer that came after the screen had said "saved": what it asks is asked still, and nothing else is closed for it. */
  const tellLate = (words: string, come: TickOutcome, columnIds: readonly string[]): void => {
    if (come.where !== "sent") return;
    const told = readOutcome(words, come, columnIds, []);
    onTaken?.(come.answer);
    setUndoable((before) => narrow(before, told, come.ids));
    if (needsTelling(told)) setOutcome(told);
  };
  const offerUndo = (words: string) => ([key, ...rest]: readonly string[]): void => {
    if (key !== undefined) setUndoable({ key, words, ids: [key, ...rest] });
  };
  const busy = async (work: () => Promise<void>): Promise<void> => {
    setBusy(true);
    await work().finally(() => setBusy(false));
  };

  return {
    ticks, isBusy, undoable, outcome,
    record: (words, drafts, skipped = []) => busy(async () => {
      const nothing: TickOutcome = { where: "saved-on-phone", ids: [] };
      const ticked = drafts.length > 0 ? await ticks.tick(drafts, offerUndo(words)) : nothing;
      tell(words, ticked, drafts.map(({ columnId }) => columnId), skipped);
    }),
    undo: () => busy(async () => {
      setUndoable(null);
      if (!undoable) return;
      const undone = await ticks.undo(undoable.ids);
      if (undone.where === "sent") onTaken?.(undone.answer);
    }),
    letUndoGo: () => setUndoable(null),
    giveReason: (reason) => busy(async () => {
      const asked = outcome?.skipped.filter(({ kind }) => kind === "asks") ?? [];
      const words = outcome?.words ?? "";
      const ticked = await ticks.giveReason(idsOf(asked, ["asks"]), reason, offerUndo(words));
      tell(words, ticked, asked.map(({ columnId }) => columnId), []);
    }),
    leave: async () => {
      await ticks.drop(idsOf(outcome?.skipped ?? [], ["asks", "refused"]));
      setOutcome(null);
    },
  };
}
