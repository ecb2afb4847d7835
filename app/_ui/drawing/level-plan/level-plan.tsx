"use client";

import { useId, useMemo, useRef, type MouseEvent } from "react";
import { boundsOf, columnsOnAxis, type GridAxis, type PlanColumn } from "./plan-model.ts";
import { PlanBubbles, PlanLines } from "./plan-axes.tsx";
import { PlanMarks, type PlacedColumn } from "./plan-marks.tsx";
import { PlanTools } from "./plan-tools.tsx";
import { toScreen } from "./plan-view.ts";
import { usePlanKeys } from "./use-plan-keys.ts";
import { usePlanView } from "./use-plan-view.ts";

export type LevelPlanProps = {
  /** "Level 2". */
  readonly levelName: string;
  readonly columns: readonly PlanColumn[];
  readonly axes: readonly GridAxis[];
  readonly selected: ReadonlySet<string>;
  readonly onSelect: (ids: ReadonlySet<string>) => void;
  readonly onOpen: (id: string) => void;
  /** What a tap does; keyboard always opens with Enter and picks with Space. */
  readonly tap?: "open" | "select";
};

/** A gloved fingertip reaches this far from a column and still means it. */
const TAP_REACH = 30;

export function toggled(selected: ReadonlySet<string>, ids: readonly string[]): ReadonlySet<string> {
  const next = new Set(selected);
  const isAllIn = ids.every((id) => next.has(id));
  for (const id of ids) if (isAllIn) next.delete(id); else next.add(id);
  return next;
}

/** The plan of one level: grid lines, and every column in its place and its state. */
export function LevelPlan({ levelName, columns, axes, selected, onSelect, onOpen, tap = "open" }: LevelPlanProps) {
  const base = useId();
  const box = useRef<HTMLDivElement>(null);
  const bounds = useMemo(() => boundsOf(columns, axes), [columns, axes]);
  const plan = usePlanView(bounds, box);
  const { view, frame } = plan;
  const toggle = (id: string) => onSelect(toggled(selected, [id]));
  const keys = usePlanKeys({ base, columns, plan, onOpen, onToggle: toggle, onSelect });
  const placed = useMemo(
    () => columns.map((column) => ({ column, at: toScreen(view, frame, { x: column.x_mm, y: column.y_mm }) })),
    [columns, view, frame],
  );

  const press = (event: MouseEvent<SVGSVGElement>) => {
    const id = plan.wasDragged() ? null : pressedColumn(event, placed);
    if (id === null) return;
    keys.moveTo(id);
    if (tap === "open") onOpen(id); else toggle(id);
  };
  const pressAxis = (axis: GridAxis) => onSelect(toggled(selected, columnsOnAxis(columns, axis).filter(({ isFaint }) => !isFaint).map(({ id }) => id)));
  const axisProps = { axes, view, frame, onPress: pressAxis };
  return (
    <div className="border-2 border-ink bg-sheet">
      <PlanTools plan={plan} />
      <div ref={box} className={plan.isFitted ? "touch-pan-y touch-pan-x" : "touch-none"}>
        <svg role="group" aria-label={`Plan of ${levelName}`} className="drawing w-full select-none" viewBox={`0 0 ${frame.width} ${frame.height}`} onClick={press}>
          <PlanLines {...axisProps} />
          <PlanMarks base={base} label={`Columns of ${levelName}`} placed={placed} scale={view.scale} selected={selected} current={keys.current} onKeyDown={keys.onKeyDown} />
          <PlanBubbles {...axisProps} />
        </svg>
      </div>
    </div>
  );
}

/** The column pressed, or the nearest one within reach of the finger. */
function pressedColumn(event: MouseEvent<SVGSVGElement>, placed: readonly PlacedColumn[]): string | null {
  const direct = event.target instanceof Element ? event.target.closest("[data-column]")?.getAttribute("data-column") : null;
  if (direct) return direct;
  const { left, top } = event.currentTarget.getBoundingClientRect();
  let nearest: string | null = null;
  let reach = TAP_REACH;
  for (const { column, at } of placed) {
    const far = Math.hypot(at.x - (event.clientX - left), at.y - (event.clientY - top));
    if (far <= reach) [nearest, reach] = [column.id, far];
  }
  return nearest;
}
