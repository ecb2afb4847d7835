"use client";

import { useWindowVirtualizer } from "@tanstack/react-virtual";
import { useLayoutEffect, useRef, useState } from "react";
import type { SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { signWords } from "#app/_ui/drawing/sign/sign-words.ts";
import { sizeWords, type Names } from "./column-words.ts";

export type ColumnListProps = {
  readonly columns: readonly SheetColumn[];
  readonly names: Names;
  readonly selected: ReadonlySet<string>;
  readonly onToggle: (id: string, isRange: boolean) => void;
  readonly hrefOf: (id: string) => string;
};

const ROW_PX = 68;

/** The shown columns one under the other, for a phone; only the rows in sight are drawn. */
export function ColumnList({ columns, names, selected, onToggle, hrefOf }: ColumnListProps) {
  const list = useRef<HTMLUListElement>(null);
  const [top, setTop] = useState(0);
  useLayoutEffect(() => setTop(list.current?.offsetTop ?? 0), []);
  const rows = useWindowVirtualizer({ count: columns.length, estimateSize: () => ROW_PX, overscan: 8, scrollMargin: top });
  return (
    <ul ref={list} aria-label="Columns" className="relative" style={{ height: rows.getTotalSize() }}>
      {rows.getVirtualItems().map(({ index, start }) => {
        const column = columns[index];
        if (!column) return null;
        const isSelected = selected.has(column.id);
        return (
          <li
            key={column.id} aria-setsize={columns.length} aria-posinset={index + 1}
            className={`absolute inset-x-0 flex h-16 border-2 ${isSelected ? "border-accent bg-accent-wash" : "border-edge bg-sheet"}`}
            style={{ transform: `translateY(${start - top}px)` }}
          >
            <button
              type="button" aria-pressed={isSelected}
              onClick={(event) => onToggle(column.id, event.shiftKey)}
              className="flex min-w-0 grow cursor-pointer items-center gap-3 px-3 text-left hover:bg-accent-wash"
            >
              <ColumnSign shape={column.shape} width_mm={column.width_mm} depth_mm={column.depth_mm} done={column.done} flagged={column.flagged} size={44} />
              <span className="min-w-0 leading-tight">
                <span className="block text-lg font-semibold">{column.gridRef}<span className="sr-only">, {signWords(column.done, column.flagged)}</span></span>
                <span className="block truncate text-sm text-ink-soft">{names.level(column.fromLevelId)} · {sizeWords(column, names)}</span>
              </span>
            </button>
            <Link
              href={hrefOf(column.id)} prefetch={false} aria-label={`Open ${column.gridRef}, ${names.level(column.fromLevelId)}`}
              className="flex w-16 shrink-0 items-center justify-center border-l border-rule-soft text-sm font-semibold text-accent no-underline hover:bg-accent-wash"
            >
              Open
            </Link>
          </li>
        );
      })}
    </ul>
  );
}
