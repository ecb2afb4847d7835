"use client";

import { memo } from "react";
import type { SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";

export type MatrixCellProps = {
  readonly column: SheetColumn;
  readonly words: string;
  readonly isFaint: boolean;
  readonly isSelected: boolean;
};

/** One column in the matrix; drawn anew only when it has changed. */
export const MatrixCell = memo(function MatrixCell({ column, words, isFaint, isSelected }: MatrixCellProps) {
  const { shape, width_mm, depth_mm, done, flagged } = column;
  return (
    <span className={`grid size-full place-items-center ${isFaint ? "opacity-25" : ""} ${isSelected ? "bg-accent-wash outline-3 -outline-offset-3 outline-accent" : ""}`}>
      <ColumnSign shape={shape} width_mm={width_mm} depth_mm={depth_mm} done={done} flagged={flagged} size={36} label={words} />
    </span>
  );
});
