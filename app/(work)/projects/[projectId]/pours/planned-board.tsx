"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import { brokenRule, type Failure } from "#lib/kernel/result.ts";
import { dayIn } from "#lib/kernel/days.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { UndoBar } from "#app/_ui/message/undo-bar.tsx";
import { savePlannedDaysAction } from "./actions.ts";
import { DaysForm } from "./days-form.tsx";
import { asPlanned, pourGroups, type PlannedColumn, type PlannedDays } from "./planned-column.ts";
import { PlannedTable } from "./planned-table.tsx";

export type PlannedBoardProps = {
  readonly project: { readonly id: string; readonly workingDays: readonly number[]; readonly timeZone: string };
  readonly columns: readonly PlannedColumn[]; readonly canPlan: boolean; readonly now: string;
};
type Done = { readonly key: string; readonly message: string; readonly before: readonly PlannedDays[] };

/** One level's columns: choose some, then set, move or clear their days. */
export function PlannedBoard({ project, columns, canPlan, now }: PlannedBoardProps) {
  const router = useRouter();
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [failure, setFailure] = useState<Failure | null>(null);
  const [isPending, setPending] = useState(false);
  const [done, setDone] = useState<Done | null>(null);
  const selected = columns.filter(({ id }) => chosen.has(id));

  const send = async (days: readonly PlannedDays[], message: string, canUndo: boolean) => {
    setPending(true);
    const before = columns.filter(({ id }) => days.some(({ columnId }) => columnId === id)).map(asPlanned);
    const answer = await savePlannedDaysAction({ projectId: project.id, columns: [...days] }).catch(() => brokenRule("not-reached"));
    setPending(false);
    setFailure(answer.ok ? null : answer.failure);
    if (!answer.ok) return;
    setDone(canUndo ? { key: `${answer.value.seq}`, message, before } : null);
    router.refresh();
  };
  const choose = (ids: readonly string[]) => setChosen(new Set(ids));
  const undated = columns.filter(({ stood, poured }) => stood === null || poured === null);
  return (
    <div className="flex flex-col gap-4">
      {canPlan ? (
        <div className="no-print flex flex-wrap gap-2" role="group" aria-label="Choose columns">
          <Button onPress={() => choose(columns.filter(({ poured }) => !poured?.isRecorded).map(({ id }) => id))}>All to pour</Button>
          <Button onPress={() => choose(undated.map(({ id }) => id))} isDisabled={undated.length === 0}>Without a day ({undated.length})</Button>
          {pourGroups(columns).map(({ name, ids }) => <Button key={name} onPress={() => choose(ids)}>{name} ({ids.length})</Button>)}
          <Button onPress={() => choose([])} isDisabled={chosen.size === 0}>None</Button>
        </div>
      ) : null}
      {failure ? <FailureNotice failure={failure} /> : null}
      {canPlan ? <DaysForm selected={selected} workingDays={project.workingDays} isPending={isPending} onSend={(days, message) => void send(days, message, true)} /> : null}
      <PlannedTable
        columns={columns} chosen={chosen} canPlan={canPlan} workingDays={project.workingDays} today={dayIn(now, project.timeZone)}
        onToggle={(id) => choose(chosen.has(id) ? [...chosen].filter((each) => each !== id) : [...chosen, id])}
      />
      {done ? <UndoBar actionKey={done.key} message={done.message} onUndo={() => void send(done.before, "", false)} onGone={() => setDone(null)} /> : null}
    </div>
  );
}
