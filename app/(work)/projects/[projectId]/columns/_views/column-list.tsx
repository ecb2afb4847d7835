"use client";

import { useWindowVirtualizer } from "@tanstack/react-virtual";
import { memo, useEffect, useRef, useState, type RefObject } from "react";
import type { SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { signWords } from "#app/_ui/drawing/sign/sign-words.ts";
import { sizeWords, type Names } from "./sheet/column-words.ts";

export type ColumnListProps = {
  readonly columns: readonly SheetColumn[];
  readonly names: Names;
  readonly selected: ReadonlySet<string>;
  readonly onToggle: (id: string, isRange: boolean) => void;
  readonly hrefOf: (id: string) => string;
};

const ROW_PX = 72;

/** How far down the page an element begins; what stands above it may open, close or wrap. */
function usePageTop(element: RefObject<HTMLElement | null>): number {
  const [top, setTop] = useState(0);
  useEffect(() => {
    const look = () => setTop(Math.round((element.current?.getBoundingClientRect().top ?? 0) + window.scrollY));
    const watch = new ResizeObserver(look);
    watch.observe(document.body);
    return () => watch.disconnect();
  }, [element]);
  return top;
}

/** The shown columns one under the other, for a phone; only the rows in sight are drawn. */
export function ColumnList({ columns, names, selected, onToggle, hrefOf }: ColumnListProps) {
  const list = useRef<HTMLUListElement>(null);
  const top = usePageTop(list);
  const rows = useWindowVirtualizer({ count: columns.length, estimateSize: () => ROW_PX, overscan: 8, scrollMargin: top });
  return (
    <ul ref={list} aria-label="Columns" className="relative print:hidden" style={{ height: rows.getTotalSize() }}>
      {rows.getVirtualItems().map(({ index, start }) => {
        const column = columns[index];
        if (!column) return null;
        return (
          <li key={column.id} aria-setsize={columns.length} aria-posinset={index + 1} className="absolute inset-x-0" style={{ transform: `translateY(${start - top}px)` }}>
            <ColumnRow column={column} names={names} isSelected={selected.has(column.id)} onToggle={onToggle} href={hrefOf(column.id)} />
          </li>
        );
      })}
    </ul>
  );
}

type ColumnRowProps = {
  readonly column: SheetColumn; readonly names: Names; readonly isSelected: boolean; readonly href: string;
  readonly onToggle: ColumnListProps["onToggle"];
};

const ColumnRow = memo(function ColumnRow({ column, names, isSelected, onToggle, href }: ColumnRowProps) {
  const level = names.level(column.fromLevelId);
  return (
    <div className={`flex h-16 border-2 ${isSelected ? "border-accent bg-accent-wash" : "border-edge bg-sheet"}`}>
      <button
        type="button" aria-pressed={isSelected} onClick={(event) => onToggle(column.id, event.shiftKey)}
        className="flex min-w-0 grow cursor-pointer items-center gap-3 px-3 text-left hover:bg-accent-wash"
      >
        <span aria-hidden className={`grid size-6 shrink-0 place-items-center border-2 border-ink ${isSelected ? "bg-accent" : "bg-sheet"}`}>
          {isSelected ? <svg viewBox="0 0 16 16" className="size-5"><path d="M3 8.5l3.4 3.5L13 4" fill="none" className="stroke-white" strokeWidth={2.4} /></svg> : null}
        </span>
        <ColumnSign shape={column.shape} width_mm={column.width_mm} depth_mm={column.depth_mm} done={column.done} flagged={column.flagged} size={44} />
        <span className="min-w-0 leading-tight">
          <span className="block truncate"><strong className="text-lg font-semibold">{column.gridRef}</strong>, {signWords(column.done, column.flagged)}</span>
          <span className="block truncate text-sm text-ink-soft">{level} · {sizeWords(column, names)}</span>
        </span>
      </button>
      <Link
        href={href} aria-label={`Open ${column.gridRef}, ${level}`}
        className="flex w-16 shrink-0 items-center justify-center border-l border-rule-soft text-sm font-semibold text-accent no-underline hover:bg-accent-wash"
      >
        Open
      </Link>
    </div>
  );
});
