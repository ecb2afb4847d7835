import { useState, type KeyboardEvent } from "react";
import { neighbourOf, type Direction, type PlanColumn } from "./plan-model.ts";
import type { PlanViewState } from "./use-plan-view.ts";

type Input = {
  /** Before a column's id it makes the id of its element. */
  readonly base: string;
  readonly columns: readonly PlanColumn[];
  readonly plan: PlanViewState;
  readonly onOpen: (id: string) => void;
  readonly onToggle: (id: string) => void;
  readonly onSelect: (ids: ReadonlySet<string>) => void;
};

const WAYS: Readonly<Record<string, Direction>> = { ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down" };

/** One tab stop for the whole plan; arrows go from column to column. */
export function usePlanKeys({ base, columns, plan, onOpen, onToggle, onSelect }: Input) {
  const [asked, setAsked] = useState<string | null>(null);
  const current = columns.find(({ id }) => id === asked) ?? columns[0];

  const moveTo = (id: string) => {
    const column = columns.find((one) => one.id === id);
    if (!column) return;
    setAsked(id);
    plan.show({ x: column.x_mm, y: column.y_mm });
    document.getElementById(`${base}${id}`)?.focus({ preventScroll: true });
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (!current) return;
    const way = WAYS[event.key];
    const acts: Readonly<Record<string, () => void>> = {
      "Enter": () => onOpen(current.id),
      " ": () => onToggle(current.id),
      "Escape": () => onSelect(new Set()),
      "+": plan.zoomIn,
      "-": plan.zoomOut,
      "0": plan.fit,
    };
    const isAll = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "a";
    const act = way
      ? () => { const next = neighbourOf(columns, current, way); if (next) moveTo(next.id); }
      : isAll ? () => onSelect(new Set(columns.filter(({ isFaint }) => !isFaint).map(({ id }) => id))) : acts[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  };

  return { current: current?.id ?? null, moveTo, onKeyDown };
}
