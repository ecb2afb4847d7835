"use client";

import { useId, useMemo, useRef, type MouseEvent } from "react";
import { boundsOf, columnsOnAxis, type GridAxis, type PlanColumn } from "./plan-model.ts";
import { PlanBubbles, PlanLines } from "./plan-axes.tsx";
import { PlanMark } from "./plan-mark.tsx";
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
/** In pixels: smaller than this a sign is hard to read; only a crowded plan goes below it. */
const LEAST_SIGN = 13;
const ROOM_FOR_NAME = 44;

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
  const closest = useMemo(() => closestPair(columns), [columns]);
  const apart = closest * view.scale;

  const press = (event: MouseEvent<SVGSVGElement>) => {
    if (plan.wasDragged()) return;
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const direct = event.target instanceof Element ? event.target.closest("[data-column]")?.getAttribute("data-column") : null;
    const near = placed
      .map(({ column, at }) => ({ id: column.id, far: Math.hypot(at.x - (event.clientX - left), at.y - (event.clientY - top)) }))
      .reduce<{ id: string; far: number } | undefined>((best, next) => (!best || next.far < best.far ? next : best), undefined);
    const id = direct ?? (near && near.far <= TAP_REACH ? near.id : null);
    if (!id) return;
    keys.moveTo(id);
    if (tap === "open") onOpen(id); else toggle(id);
  };
  const pressAxis = (axis: GridAxis) => onSelect(toggled(selected, columnsOnAxis(columns, axis).map(({ id }) => id)));
  const axisProps = { axes, view, frame, onPress: pressAxis };
  return (
    <div className="border-2 border-ink bg-sheet">
      <PlanTools plan={plan} picked={selected.size} onClear={() => onSelect(new Set())} />
      <div ref={box} className={plan.isFitted ? "touch-pan-y touch-pan-x" : "touch-none"}>
        <svg role="group" aria-label={`Plan of ${levelName}`} className="drawing w-full select-none" viewBox={`0 0 ${frame.width} ${frame.height}`} onClick={press}>
          <PlanLines {...axisProps} />
          <g role="listbox" aria-multiselectable aria-label={`Columns of ${levelName}`} onKeyDown={keys.onKeyDown}>
            {placed.map(({ column, at }) => (
              <g key={column.id} role="presentation" transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}>
                <PlanMark
                  id={`${base}${column.id}`}
                  column={column}
                  scale={view.scale}
                  least={Math.min(Math.max(apart * 0.5, 6), LEAST_SIGN)}
                  isNamed={apart > ROOM_FOR_NAME}
                  isSelected={selected.has(column.id)}
                  isInTabOrder={column.id === keys.current}
                />
              </g>
            ))}
          </g>
          <PlanBubbles {...axisProps} />
        </svg>
      </div>
    </div>
  );
}

/** Smallest distance between two columns that follow each other along a row, as a measure of how crowded the plan is. */
function closestPair(columns: readonly PlanColumn[]): number {
  const row = [...columns].sort((a, b) => a.y_mm - b.y_mm || a.x_mm - b.x_mm);
  return row.slice(1).reduce((least, column, index) => {
    const before = row[index];
    return before ? Math.min(least, Math.max(Math.hypot(column.x_mm - before.x_mm, column.y_mm - before.y_mm), 1)) : least;
  }, Infinity);
}
