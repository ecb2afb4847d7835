"use client";

import { useMemo } from "react";
import type { SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { passes } from "../sheet/column-filter.ts";
import type { SheetStore } from "../sheet/sheet-store.ts";
import { useShown } from "./use-shown.ts";
import { useSteady } from "./use-steady.ts";
import { useWhichView } from "./use-which-view.ts";

/** The columns the address asks for. Their ids stay the same list until a tick moves a column in or out of the filter. */
export function useInView(store: SheetStore, columns: readonly SheetColumn[]) {
  const { shown, show } = useShown();
  const which = useWhichView(store, shown);
  const { level } = which;
  const { filter } = shown;
  const inView = useMemo(
    () => columns.filter((column) => (level === null || column.fromLevelId === level.id) && passes(column, filter)),
    [columns, filter, level],
  );
  const ids = useSteady(useMemo(() => inView.map(({ id }) => id), [inView]));
  const shownIds = useMemo(() => new Set(ids), [ids]);
  return { which, shown, show, inView, ids, shownIds };
}
