"use client";

import { useEffect, useRef, useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";

export type UndoBarProps = {
  /** Changes with every new action, so that the time starts again. */
  readonly actionKey: string;
  /** What was done: "B4 level 2: clamped". */
  readonly message: string;
  readonly onUndo: () => void;
  /** The time is over, or undo was pressed. */
  readonly onGone: () => void;
  readonly seconds?: number;
  /** A part of what it stands in, rather than at the foot of the screen. */
  readonly isInline?: boolean;
};

const AT_THE_FOOT = "fixed inset-x-2 bottom-[calc(4.5rem+env(safe-area-inset-bottom))] z-30 mx-auto max-w-xl lg:bottom-4";


/** Ten seconds to take back what a stray thumb did. Announced once; the bar shows the time, no voice counts it down. */
export function UndoBar({ actionKey, message, onUndo, onGone, seconds = 10, isInline = false }: UndoBarProps) {
  const [left, setLeft] = useState(seconds);
  const gone = useRef(onGone);
  useEffect(() => { gone.current = onGone; });
  useEffect(() => {
    const until = performance.now() + seconds * 1000;
    setLeft(seconds);
    const tick = setInterval(() => {
      const rest = Math.ceil((until - performance.now()) / 1000);
      if (rest <= 0) gone.current();
      else setLeft(rest);
    }, 250);
    return () => clearInterval(tick);
  }, [actionKey, seconds]);
  return (
    <div className={`no-print border-2 border-ink bg-ink text-white ${isInline ? "" : AT_THE_FOOT}`}>
      <div className="flex items-center gap-3 py-1 pl-4 pr-1">
        <p role="status" className="min-w-0 grow font-semibold">{message}</p>
        <Button size="glove" onPress={() => { onUndo(); onGone(); }}>
          Undo<span aria-hidden className="w-6 text-right font-normal">{left}</span>
        </Button>
      </div>
      <div aria-hidden key={actionKey} className="h-1 origin-left animate-undo bg-white" style={{ animationDuration: `${seconds}s` }} />
    </div>
  );
}
