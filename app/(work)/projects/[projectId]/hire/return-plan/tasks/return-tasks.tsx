"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import { brokenRule, type Failure } from "#lib/kernel/result.ts";
import { daysBetween, toDay } from "#lib/kernel/days.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Link } from "#app/_ui/control/link.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { paths } from "#app/paths.ts";
import { setReturnTaskAction } from "../actions.ts";
import { TASK_WORDS } from "./task-words.ts";

export type ShownTask = {
  readonly id: string; readonly kind: "call" | "load" | "collect"; readonly on: string; readonly collectOn: string; readonly supplierId: string; readonly supplier: string;
  readonly state: "open" | "done" | "withdrawn"; readonly lines: readonly { readonly itemId: string; readonly item: string; readonly quantity: number }[];
};
export type ReturnTasksProps = { readonly projectId: string; readonly tasks: readonly ShownTask[]; readonly today: string; readonly canWithdraw: boolean };

/** Tasks by day, those that are late first and loud. */
export function ReturnTasks({ projectId, tasks, today, canWithdraw }: ReturnTasksProps) {
  const router = useRouter();
  const [failure, setFailure] = useState<Failure | null>(null);
  const [pending, setPending] = useState<string | null>(null);
  const set = async (taskId: string, to: "done" | "open" | "withdrawn") => {
    setPending(taskId);
    const answer = await setReturnTaskAction({ projectId, taskId, to }).catch(() => brokenRule("not-reached"));
    setPending(null);
    setFailure(answer.ok ? null : answer.failure);
    if (answer.ok) router.refresh();
  };
  return (
    <div className="flex flex-col gap-3">
      {failure ? <FailureNotice failure={failure} /> : null}
      <ul className="flex flex-col gap-2">
        {tasks.filter(({ state }) => state !== "withdrawn").map((task) => {
          const late = task.state === "open" ? daysBetween(toDay(task.on), toDay(today)) : 0;
          return (
            <li key={task.id} className={`flex flex-wrap items-center justify-between gap-3 border-2 p-3 ${late > 0 ? "border-flag bg-flag-wash" : "border-ink bg-sheet"}`}>
              <div className="min-w-0">
                {late > 0 ? <p className="font-bold uppercase text-flag-deep">{late === 1 ? "One day late" : `${late} days late`}</p> : null}
                <p className="font-semibold">{TASK_WORDS[task.kind]} · <DayText day={task.on} />{late === 0 && task.on === today && task.state === "open" ? " · today" : ""}{task.state === "done" ? " · done" : ""}</p>
                <p className="text-sm text-ink-soft">{task.supplier}{task.kind === "collect" ? "" : <>, for <DayText day={task.collectOn} /></>}: {task.lines.map(({ item, quantity }) => `${quantity} × ${item}`).join(", ")}</p>
              </div>
              <div className="no-print flex flex-wrap items-center gap-2">
                {canWithdraw && task.kind === "call" && task.state === "open" ? <Link href={paths.hirePart(projectId, "dockets/new", { kind: "off-hire", supplier: task.supplierId })} className="min-h-hand content-center">Enter the call</Link> : null}
                {task.state === "open"
                  ? <Button kind="primary" size="glove" isPending={pending === task.id} onPress={() => void set(task.id, "done")}>Done</Button>
                  : <Button size="glove" isPending={pending === task.id} onPress={() => void set(task.id, "open")}>Not done after all</Button>}
                {canWithdraw && task.state === "open" ? <Button size="glove" isDisabled={pending === task.id} onPress={() => void set(task.id, "withdrawn")}>Withdraw</Button> : null}
              </div>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
