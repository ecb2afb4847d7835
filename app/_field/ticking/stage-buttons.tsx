"use client";

import { bitOf, hasDone, placeOf, STAGES, type Stage } from "#lib/trade/progress/stages.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { ConfirmButton } from "#app/_ui/control/confirm-button.tsx";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { columnsWords, type TickColumn } from "./tick-column.ts";

export type StageButtonsProps = {
  readonly columns: readonly TickColumn[];
  /** The stage most of them have next. */
  readonly next: Stage | null;
  /** "just now", or the time it happened. */
  readonly when: string;
  readonly isBusy: boolean;
  readonly onStage: (stage: Stage) => void;
};

/** What cannot be cheaply taken back asks before it is recorded. */
const ASKED_FIRST: readonly Stage[] = ["poured", "stripped"];

const EXPLAIN: Readonly<Partial<Record<Stage, string>>> = {
  poured: "The strip time counts from this pour. If it was poured at another time, set the time first.",
  stripped: "The form comes off only after its strip time and any release the project asks for.",
};

/** The six stages, each with the sign a column will have; the next one stands out. */
export function StageButtons({ columns, next, when, isBusy, onStage }: StageButtonsProps) {
  const drawn = columns[0];
  return (
    <div role="group" aria-label="Stages" className="grid grid-cols-3 gap-2 sm:grid-cols-6">
      {STAGES.map((stage) => {
        const left = columns.filter(({ done }) => !hasDone(done, stage)).length;
        const look = { kind: stage === next ? "primary" as const : "plain" as const, size: "glove" as const, wide: true, isDisabled: left === 0 || isBusy };
        const face = (
          <span className="-mx-4 flex items-center gap-1.5 sm:gap-2">
            {drawn ? <ColumnSign shape={drawn.shape} width_mm={drawn.widthMm} depth_mm={drawn.depthMm} done={upTo(stage)} flagged={false} size={24} /> : null}
            <span className="flex flex-col text-left text-base">
              <span>{stage}</span>
              {left < columns.length ? <span className="text-xs font-normal">{left === 0 ? "done" : `${left} of ${columns.length}`}</span> : null}
            </span>
          </span>
        );
        if (!ASKED_FIRST.includes(stage)) return <Button key={stage} {...look} onPress={() => onStage(stage)}>{face}</Button>;
        return (
          <ConfirmButton
            key={stage} {...look} title={`Record as ${stage}: ${columnsWords(columns)}?`} confirmLabel={`Record as ${stage}`} onConfirm={() => onStage(stage)}
            explain={<><p className="font-semibold">When: {when}</p><p className="mt-1">{EXPLAIN[stage]}</p></>}
          >
            {face}
          </ConfirmButton>
        );
      })}
    </div>
  );
}

const upTo = (stage: Stage): number => STAGES.filter((each) => placeOf(each) <= placeOf(stage)).reduce((mask, each) => mask + bitOf(each), 0);
