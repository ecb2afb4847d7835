"use client";

import { memo, useSyncExternalStore } from "react";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { columnWords, type Names } from "../sheet/column-words.ts";
import type { SheetStore } from "../sheet/sheet-store.ts";

export type MatrixCellProps = {
  readonly store: SheetStore;
  readonly id: string;
  readonly names: Names;
  readonly isFaint: boolean;
  readonly isSelected: boolean;
};

/** One column in the matrix; it listens for itself, so that a tick draws this cell anew and no other. */
export const MatrixCell = memo(function MatrixCell({ store, id, names, isFaint, isSelected }: MatrixCellProps) {
  const read = () => store.get(id);
  const column = useSyncExternalStore(store.subscribe, read, read);
  if (!column) return null;
  const { shape, width_mm, depth_mm, done, flagged } = column;
  return (
    <span className={`relative grid size-full place-items-center ${isSelected ? "bg-accent-wash outline-3 -outline-offset-3 outline-accent" : ""}`}>
      <span className={isFaint ? "opacity-25" : ""}>
        <ColumnSign shape={shape} width_mm={width_mm} depth_mm={depth_mm} done={done} flagged={flagged} size={36} label={columnWords(column, names)} />
      </span>
      {isSelected ? (
        <svg aria-hidden viewBox="0 0 16 16" className="absolute left-0 top-0 size-4 bg-accent"><path d="M3 8.5l3.4 3.5L13 4" fill="none" className="stroke-white" strokeWidth={2.4} /></svg>
      ) : null}
    </span>
  );
});
