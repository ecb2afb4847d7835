"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import { brokenRule, type Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { acceptReturnsAction } from "./actions.ts";

export type ShownLine = {
  readonly supplierId: string; readonly supplier: string; readonly on: string; readonly way: "take" | "bring"; readonly callOn: string; readonly trips: number;
  readonly items: readonly { readonly itemId: string; readonly item: string; readonly quantity: number; readonly kg: number; readonly isAccepted: boolean }[];
};
export type PlanLinesProps = { readonly projectId: string; readonly planId: string; readonly lines: readonly ShownLine[]; readonly today: string; readonly canAccept: boolean; readonly isNamed: boolean };

const keyOf = (supplierId: string, on: string, itemId: string): string => `${supplierId} ${on} ${itemId}`;

/** The plan by date: what to call, what the truck takes and brings, naming the supplier where there are several; returns are accepted all together or one by one. */
export function PlanLines({ projectId, planId, lines, today, canAccept, isNamed }: PlanLinesProps) {
  const router = useRouter();
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [failure, setFailure] = useState<Failure | null>(null);
  const [done, setDone] = useState(0);
  const [isPending, setPending] = useState(false);
  const open = lines.filter(({ way, callOn }) => way === "take" && callOn >= today).flatMap(({ supplierId, on, items }) => items.filter(({ isAccepted }) => !isAccepted).map(({ itemId }) => ({ supplierId, collectOn: on, itemId })));

  const accept = async (wanted: typeof open) => {
    setPending(true);
    const answer = await acceptReturnsAction({ projectId, planId, lines: wanted }).catch(() => brokenRule("not-reached"));
    setPending(false);
    setFailure(answer.ok ? null : answer.failure);
    if (!answer.ok) return;
    setDone(wanted.length);
    setChosen(new Set());
    router.refresh();
  };
  const toggle = (key: string) => setChosen((before) => new Set(before.has(key) ? [...before].filter((each) => each !== key) : [...before, key]));
  const picked = open.filter(({ supplierId, collectOn, itemId }) => chosen.has(keyOf(supplierId, collectOn, itemId)));
  return (
    <div className="flex flex-col gap-4">
      {failure ? <FailureNotice failure={failure} /> : null}
      {done > 0 ? <Notice kind="done">{done === 1 ? "One line is a task now" : `${done} lines are tasks now`}; they stand above, and on Today when they are due.</Notice> : null}
      {canAccept && open.length > 0 ? (
        <div className="no-print flex flex-wrap gap-3">
          <Button kind="primary" size="glove" isPending={isPending} onPress={() => void accept(open)}>Accept all returns ({open.length})</Button>
          <Button size="glove" isDisabled={picked.length === 0 || isPending} onPress={() => void accept(picked)}>Accept the chosen ({picked.length})</Button>
        </div>
      ) : null}
      <ol className="flex flex-col gap-3">
        {lines.map((line) => (
          <li key={`${line.supplierId} ${line.on} ${line.way}`} className="border-2 border-ink bg-sheet">
            <div className="flex flex-wrap justify-between gap-x-6 border-b border-ink bg-wash px-3 py-1.5">
              <h3>{line.way === "take" ? "Send back" : "Hire more"}{isNamed ? ` ${line.way === "take" ? "to" : "from"} ${line.supplier}` : ""} · <DayText day={line.on} /></h3>
              <p className="text-sm">{line.way === "take" ? <>Call by <DayText day={line.callOn} />{line.callOn < today ? <strong className="ml-1 text-flag-deep">(passed)</strong> : null} · </> : null}{line.trips} {line.trips === 1 ? "trip" : "trips"} that day</p>
            </div>
            <ul className="divide-y divide-rule-soft">
              {line.items.map(({ itemId, item, quantity, kg, isAccepted }) => {
                const key = keyOf(line.supplierId, line.on, itemId);
                const text = `${quantity.toLocaleString("en")} × ${item}`;
                return (
                  <li key={itemId} className="flex flex-wrap items-center justify-between gap-x-4 px-3 py-1">
                    {canAccept && line.way === "take" && !isAccepted && line.callOn >= today
                      ? <CheckField name={`accept-${key}`} label={text} size="glove" isSelected={chosen.has(key)} onChange={() => toggle(key)} />
                      : <span className="flex min-h-hand items-center font-semibold">{text}</span>}
                    <span className="text-sm text-ink-soft">{isAccepted ? "accepted · " : ""}{kg.toLocaleString("en")} kg</span>
                  </li>
                );
              })}
            </ul>
          </li>
        ))}
      </ol>
    </div>
  );
}
