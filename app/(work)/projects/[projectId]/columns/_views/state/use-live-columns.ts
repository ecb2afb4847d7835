"use client";

import { useRouter } from "next/navigation";
import { useMemo } from "react";
import type { ColumnsSheet, SheetColumn } from "#lib/contracts/columns-sheet.ts";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import { useLive } from "#app/_field/use-live.ts";
import { useTicks } from "#app/_field/use-ticks.ts";
import type { TickPerson } from "#app/_field/ticking/tick-column.ts";
import { SheetStore, useSheetColumns } from "#app/(work)/projects/[projectId]/columns/_views/sheet-store.ts";

/** The columns as they stand now: the sheet, what was heard since, and what waits on this phone. */
export function useLiveColumns(sheet: ColumnsSheet, me: TickPerson) {
  const router = useRouter();
  const store = useMemo(() => new SheetStore(sheet), [sheet]);
  useLive({
    projectId: sheet.projectId, since: sheet.seq,
    onMessage: ({ kind, seq, columns }) => (kind === "progress" ? store.hear(seq, columns) : router.refresh()),
  });
  const known = useSheetColumns(store);
  const { pending, expect } = useTicks({ projectId: sheet.projectId, personId: me.id, personName: me.name, plumbing: sheet.plumbing });
  const columns = useMemo(() => {
    if (pending.length === 0) return known;
    const waiting = new Set(pending.map(({ event }) => event.columnId));
    return known.map((column): SheetColumn => {
      if (!waiting.has(column.id)) return column;
      const { done, flagged } = expect(column);
      return { ...column, done, flagged };
    });
  }, [known, pending, expect]);
  return { columns, hear: ({ seq, columns: states }: RecordAnswer) => store.hear(seq, states) };
}
