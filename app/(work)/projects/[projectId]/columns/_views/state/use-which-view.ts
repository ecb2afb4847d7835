"use client";

import { useState, useSyncExternalStore } from "react";
import type { SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import { EVERY_LEVEL, type Shown, type View } from "../sheet/column-filter.ts";
import type { SheetStore } from "../sheet/sheet-store.ts";

const NARROW = "(max-width: 640px)";
const subscribe = (listener: () => void): (() => void) => {
  const query = window.matchMedia(NARROW);
  query.addEventListener("change", listener);
  return () => query.removeEventListener("change", listener);
};
const isNarrow = (): boolean => window.matchMedia(NARROW).matches;

const levelsIn = ({ sheet }: SheetStore, columns: readonly SheetColumn[]): readonly SheetLevel[] => {
  const used = new Set(columns.map(({ fromLevelId }) => fromLevelId));
  return sheet.levels.filter(({ id }) => used.has(id));
};

/** The lowest level with a column still to strip: where work goes on. */
const workingLevel = (columns: readonly SheetColumn[]): string | undefined => columns.find(({ done }) => !hasDone(done, "stripped"))?.fromLevelId;

export type WhichView = { readonly view: View; /** Null is every level. */ readonly level: SheetLevel | null; readonly levels: readonly SheetLevel[] };

/** What to show when the address does not say: the list on a phone, else the plan, of the level where work goes on. */
export function useWhichView(store: SheetStore, shown: Shown): WhichView {
  const narrow = useSyncExternalStore(subscribe, isNarrow, () => false);
  // Kept from the start, so that the last column of a level does not turn the page under somebody's thumb.
  const [working, setWorking] = useState(() => ({ store, levels: levelsIn(store, store.list()), levelId: workingLevel(store.list()) }));
  if (working.store !== store) setWorking({ ...working, store, levels: levelsIn(store, store.list()) });
  const { levels } = working;
  const view = shown.view || (narrow ? "list" : "plan");
  const asked = levels.find(({ id }) => id === shown.levelId) ?? null;
  const usual = levels.find(({ id }) => id === working.levelId) ?? levels.at(-1) ?? null;
  const mayBeEvery = view === "levels" || (view === "list" && shown.levelId === EVERY_LEVEL);
  return { view, level: asked ?? (mayBeEvery ? null : usual), levels };
}
