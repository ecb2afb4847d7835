"use client";

import { useSyncExternalStore } from "react";
import type { ColumnsSheet, SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { ALL_DONE } from "#lib/trade/progress/stages.ts";
import type { Shown, View } from "#app/(work)/projects/[projectId]/columns/_views/column-filter.ts";

const NARROW = "(max-width: 640px)";
const subscribe = (listener: () => void): (() => void) => {
  const query = window.matchMedia(NARROW);
  query.addEventListener("change", listener);
  return () => query.removeEventListener("change", listener);
};
const isNarrow = (): boolean => window.matchMedia(NARROW).matches;

/** What to show when the address does not say: the list on a phone, else the plan, of the level where work goes on. */
export function useWhichView(sheet: ColumnsSheet, columns: readonly SheetColumn[], shown: Shown): { view: View; level: SheetLevel | null; levels: readonly SheetLevel[] } {
  const narrow = useSyncExternalStore(subscribe, isNarrow, () => false);
  const used = new Set(columns.map(({ fromLevelId }) => fromLevelId));
  const levels = sheet.levels.filter(({ id }) => used.has(id));
  const asked = levels.find(({ id }) => id === shown.levelId);
  const open = new Set(columns.filter(({ done }) => done !== ALL_DONE).map(({ fromLevelId }) => fromLevelId));
  const level = asked ?? levels.find(({ id }) => open.has(id)) ?? levels.at(-1) ?? null;
  return { view: shown.view || (narrow ? "list" : "plan"), level, levels };
}
