"use client";

import { useRouter } from "next/navigation";
import { useCallback, useEffect, useState, useSyncExternalStore } from "react";
import type { ColumnsSheet } from "#lib/contracts/columns-sheet.ts";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import { useLive } from "#app/_field/use-live.ts";
import { useTicks } from "#app/_field/use-ticks.ts";
import type { TickPerson } from "#app/_field/ticking/tick-column.ts";
import { SheetStore } from "../sheet/sheet-store.ts";

/** The columns as they stand now: the sheet, what was heard since, and what waits on this phone. */
export function useLiveColumns(sheet: ColumnsSheet, me: TickPerson) {
  const router = useRouter();
  const [store, setStore] = useState(() => new SheetStore(sheet));
  if (store.sheet !== sheet) setStore(new SheetStore(sheet, store));
  useLive({
    projectId: sheet.projectId, since: sheet.seq,
    onMessage: ({ kind, seq, columns }) => (kind === "progress" ? store.hear(seq, columns) : router.refresh()),
  });
  const { pending, expect } = useTicks({ projectId: sheet.projectId, personId: me.id, personName: me.name, plumbing: sheet.plumbing });
  useEffect(() => store.expect({ ids: new Set(pending.map(({ event }) => event.columnId)), expect }), [store, pending, expect]);
  const hear = useCallback(({ seq, columns }: RecordAnswer) => store.hear(seq, columns), [store]);
  return { store, columns: useSyncExternalStore(store.subscribe, store.list, store.list), hear };
}
