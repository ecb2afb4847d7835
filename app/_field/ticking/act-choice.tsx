"use client";

import { nextStage } from "#lib/trade/progress/next.ts";
import { hasDone, type Plumbing, type Stage } from "#lib/trade/progress/stages.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { ActDialog, type Act } from "#app/_field/ticking/acts/act-dialog.tsx";
import { GateForm } from "#app/_field/ticking/acts/gate-form.tsx";
import { HoldForm } from "#app/_field/ticking/acts/hold-form.tsx";
import { ReadingForm } from "#app/_field/ticking/acts/reading-form.tsx";
import { SetBackForm } from "#app/_field/ticking/acts/set-back-form.tsx";
import { StageButtons } from "./stage-buttons.tsx";
import { columnsWords, type TickColumn, type TickProject } from "./tick-column.ts";
import { WhenButton, whenWords, type When } from "./when-button.tsx";

/** The stage most of the columns have next. */
function commonNext(columns: readonly TickColumn[], plumbing: Plumbing): Stage | null {
  const votes = new Map<Stage, number>();
  for (const { done } of columns) {
    const stage = nextStage(done, { plumbing });
    if (stage !== null) votes.set(stage, (votes.get(stage) ?? 0) + 1);
  }
  return [...votes].sort((left, right) => right[1] - left[1])[0]?.[0] ?? null;
}

export type ActChoiceProps = {
  readonly columns: readonly TickColumn[]; readonly project: TickProject; readonly plumbing: Plumbing; readonly when: When;
  readonly setWhen: (when: When) => void; readonly isBusy: boolean; readonly act: Act; readonly onClear?: () => void;
};

/** Everything that can be recorded on the selection: its time, the stages, and what is not a stage. */
export function ActChoice({ columns, project, plumbing, when, setWhen, isBusy, act, onClear }: ActChoiceProps) {
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
