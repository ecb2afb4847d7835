"use client";

import { useState, useSyncExternalStore } from "react";
import { can, rolesWith } from "#lib/access/permissions.ts";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import type { Plumbing } from "#lib/trade/progress/stages.ts";
import { UndoBar } from "#app/_ui/message/undo-bar.tsx";
import { ActChoice } from "#app/_field/ticking/act-choice.tsx";
import { actWords } from "#app/_field/ticking/act-words.ts";
import type { Act } from "#app/_field/ticking/acts/act-dialog.tsx";
import { leaveOut } from "#app/_field/ticking/outcome.ts";
import { OutcomeDialog } from "#app/_field/ticking/outcome-dialog.tsx";
import { columnName, columnsWords, type TickColumn, type TickPerson, type TickProject } from "#app/_field/ticking/tick-column.ts";
import { useRecording } from "#app/_field/ticking/use-recording.ts";
import type { When } from "#app/_field/ticking/when-button.tsx";

export type TickPanelProps = {
  readonly project: TickProject;
  readonly me: TickPerson;
  /** The project's setting; decides which stage is next. */
  readonly plumbing?: Plumbing;
  /** The selection. Keep the panel on the page when it is empty, so that undo and answers stay in sight. */
  readonly columns: readonly TickColumn[];
  /** `dock` lies at the foot of the screen under the thumb; `inline` is a part of the page. */
  readonly placement?: "dock" | "inline";
  /** The server's answer to what was recorded or taken back, for the page to draw at once. */
  readonly onTaken?: (answer: RecordAnswer) => void;
  /** Asks for the selection to become these columns: those that were skipped. */
  readonly onSelectOnly?: (columnIds: readonly string[]) => void;
  /** Asks for the selection to be given up: it has done its work, or the person is done with it. */
  readonly onClear?: () => void;
};

const never = () => () => undefined;
/** False until the page's code runs: a press before that would be lost without a word. */
const useAwake = () => useSyncExternalStore(never, () => true, () => false);

/** Turns one press into entries on every selected column. */
function useActs({ project, me, plumbing, columns, onTaken, onClear }: TickPanelProps) {
  const [when, setWhen] = useState<When>(null);
  const [tried, setTried] = useState<readonly TickColumn[]>([]);
  const recording = useRecording({ project, me, ...(plumbing ? { plumbing } : {}), ...(onTaken ? { onTaken } : {}), ...(onClear ? { onDone: onClear } : {}) });
  const act: Act = (fact, reason) => {
    const left = fact.kind === "stage-reached" ? leaveOut(columns, fact.stage) : { tried: columns, skipped: [] };
    const whole = { reason: reason ?? when?.reason ?? null, ...(when ? { happenedAt: when.at } : {}) };
    setTried(columns);
    setWhen(null);
    const drafts = left.tried.map((column) => ({ ...fact, ...whole, columnId: column.id, about: columnName(column) }));
    void recording.record(`${columnsWords(left.tried.length > 0 ? left.tried : columns)}: ${actWords({ ...fact, columnId: "" }, project.units)}`, drafts, left.skipped);
  };
  return { recording, act, when, setWhen, tried };
}

/** What can be recorded on the selected columns. */
export function TickPanel(props: TickPanelProps) {
  const { project, me, plumbing = "during-pour", columns, placement = "dock", onSelectOnly, onClear } = props;
  const { recording, act, when, setWhen, tried } = useActs(props);
  const { outcome, undoable } = recording;
  const isAwake = useAwake();
  const isBusy = recording.isBusy || !isAwake;
  const isDocked = placement === "dock";

  const undoBar = undoable ? (
    <UndoBar
      actionKey={undoable.key} message={undoable.words} isInline={isDocked}
      onUndo={() => void recording.undo()} onGone={recording.letUndoGo}
    />
  ) : null;
  const body = can(me.role, "progress.record")
    ? <ActChoice {...{ columns, project, plumbing, when, setWhen, isBusy, act }} {...(onClear ? { onClear } : {})} />
    : <p className="py-2">{columnsWords(columns)}. Recording is for: {rolesWith("progress.record").join(", ")}.</p>;
  const dialog = outcome ? (
    <OutcomeDialog
      outcome={outcome} columns={tried} timeZone={project.timeZone} isBusy={isBusy} onSelectOnly={onSelectOnly}
      onReason={(reason) => void recording.giveReason(reason)} onLeave={() => void recording.leave()}
    />
  ) : null;
  if (!isDocked) return <>{body}{undoBar}{dialog}</>;
  return (
    <div className="no-print fixed inset-x-0 bottom-[calc(3.5rem+2px+env(safe-area-inset-bottom))] z-20 lg:bottom-0">
      <div className="mx-auto max-w-4xl">
        {undoBar}
        {columns.length > 0 ? (
          <section aria-label="Record on the selected columns" className="max-h-[60dvh] overflow-y-auto border-t-4 border-accent bg-sheet p-2 sm:border-x-2 sm:border-x-ink sm:p-3">{body}</section>
        ) : null}
      </div>
      {dialog}
    </div>
  );
}
