"use client";

import { useState } from "react";
import { can, rolesWith } from "#lib/access/permissions.ts";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import { nextStage } from "#lib/trade/progress/next.ts";
import type { Fact } from "#lib/trade/progress/site-event.ts";
import { hasDone, type Plumbing, type Stage } from "#lib/trade/progress/stages.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { UndoBar } from "#app/_ui/message/undo-bar.tsx";
import { actWords } from "#app/_field/ticking/act-words.ts";
import { ActDialog, type Act } from "#app/_field/ticking/acts/act-dialog.tsx";
import { GateForm } from "#app/_field/ticking/acts/gate-form.tsx";
import { HoldForm } from "#app/_field/ticking/acts/hold-form.tsx";
import { ReadingForm } from "#app/_field/ticking/acts/reading-form.tsx";
import { SetBackForm } from "#app/_field/ticking/acts/set-back-form.tsx";
import { leaveOut } from "#app/_field/ticking/outcome.ts";
import { OutcomeDialog } from "#app/_field/ticking/outcome-dialog.tsx";
import { StageButtons } from "#app/_field/ticking/stage-buttons.tsx";
import { columnName, columnsWords, type TickColumn, type TickPerson, type TickProject } from "#app/_field/ticking/tick-column.ts";
import { useRecording } from "#app/_field/ticking/use-recording.ts";
import { WhenButton, whenWords, type When } from "#app/_field/ticking/when-button.tsx";

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

/** The stage most of the columns have next. */
function commonNext(columns: readonly TickColumn[], plumbing: Plumbing): Stage | null {
  const votes = new Map<Stage, number>();
  for (const { done } of columns) {
    const stage = nextStage(done, { plumbing });
    if (stage !== null) votes.set(stage, (votes.get(stage) ?? 0) + 1);
  }
  return [...votes].sort((left, right) => right[1] - left[1])[0]?.[0] ?? null;
}

/** What can be recorded on the selected columns. */
export function TickPanel(props: TickPanelProps) {
  const { project, me, plumbing = "during-pour", columns, placement = "dock", onTaken, onSelectOnly, onClear } = props;
  const [when, setWhen] = useState<When>(null);
  const [tried, setTried] = useState<readonly TickColumn[]>([]);
  const recording = useRecording({ project, me, plumbing, ...(onTaken ? { onTaken } : {}), ...(onClear ? { onDone: onClear } : {}) });
  const { outcome, undoable, isBusy } = recording;

  const record = (fact: Fact, reason: string | null, on: readonly TickColumn[]) => {
    const left = fact.kind === "stage-reached" ? leaveOut(on, fact.stage) : { tried: on, skipped: [] };
    const whole = { reason: reason ?? when?.reason ?? null, ...(when ? { happenedAt: when.at } : {}) };
    setTried(on);
    setWhen(null);
    const drafts = left.tried.map((column) => ({ ...fact, ...whole, columnId: column.id, about: columnName(column) }));
    void recording.record(`${columnsWords(on)}: ${actWords({ ...fact, columnId: "" }, project.units)}`, drafts, left.skipped);
  };
  const act: Act = (fact, reason) => record(fact, reason, columns);
  const isDocked = placement === "dock";

  const undoBar = undoable ? (
    <UndoBar
      actionKey={undoable.key} message={undoable.words} isInline={isDocked}
      onUndo={() => void recording.undo()} onGone={recording.letUndoGo}
    />
  ) : null;
  const body = can(me.role, "progress.record")
    ? <Body {...{ columns, project, plumbing, when, setWhen, isBusy, act }} {...(onClear ? { onClear } : {})} />
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

type BodyProps = {
  readonly columns: readonly TickColumn[]; readonly project: TickProject; readonly plumbing: Plumbing; readonly when: When;
  readonly setWhen: (when: When) => void; readonly isBusy: boolean; readonly act: Act; readonly onClear?: () => void;
};

function Body({ columns, project, plumbing, when, setWhen, isBusy, act, onClear }: BodyProps) {
  const done = columns.reduce((mask, column) => mask | column.done, 0);
  const [only] = columns;
  const off = isBusy || columns.length === 0;
  return (
    <div className="flex flex-col gap-2">
      <div className="flex items-center gap-2">
        <p className="min-w-0 grow leading-tight">
          <strong className="font-semibold">{columns.length === 1 ? only?.gridRef : `${columns.length} columns`}</strong>
          <span className="line-clamp-1 text-sm text-ink-soft">{columns.length === 1 ? only?.level : columnsWords(columns)}</span>
        </p>
        <WhenButton when={when} timeZone={project.timeZone} onChange={setWhen} />
        {onClear ? <Button size="glove" onPress={onClear}><span className="-mx-2 text-base">Clear</span></Button> : null}
      </div>
      <StageButtons
        columns={columns} next={commonNext(columns, plumbing)} when={whenWords(when, project.timeZone)} isBusy={isBusy}
        onStage={(stage) => act({ kind: "stage-reached", stage }, null)}
      />
      <div className="grid grid-cols-4 gap-2">
        <ActDialog label="Gates" title={`Gates: ${columnsWords(columns)}`} isDisabled={off} onAct={act}>{(onAct) => <GateForm onAct={onAct} />}</ActDialog>
        <ActDialog label="Reading" title={`Reading: ${columnsWords(columns)}`} isDisabled={off || columns.length !== 1} onAct={act}>
          {(onAct) => <ReadingForm onAct={onAct} units={project.units} isPoured={hasDone(done, "poured")} />}
        </ActDialog>
        <ActDialog label="Hold" title={`Hold: ${columnsWords(columns)}`} isDisabled={off} onAct={act}>
          {(onAct) => <HoldForm onAct={onAct} mayLift={columns.some(({ flagged }) => flagged)} />}
        </ActDialog>
        <ActDialog label="Set back" title={`Set back: ${columnsWords(columns)}`} isDisabled={off || done === 0} onAct={act}>
          {(onAct) => <SetBackForm onAct={onAct} done={done} />}
        </ActDialog>
      </div>
    </div>
  );
}
