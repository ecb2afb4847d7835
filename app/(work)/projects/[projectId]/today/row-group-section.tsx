"use client";

import type { ReactNode } from "react";
import { groupBy } from "#lib/kernel/group-by.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import type { RowGroup, TodayRow } from "./group-columns.ts";

export type RowGroupSectionProps = {
  readonly group: RowGroup;
  readonly selected: ReadonlySet<string>;
  readonly onSelect: (ids: readonly string[], isSelected: boolean) => void;
  readonly draw: (row: TodayRow) => ReactNode;
};

/** One group of columns, level by level; a level can be selected whole. */
export function RowGroupSection({ group, selected, onSelect, draw }: RowGroupSectionProps) {
  const levels = [...groupBy(group.rows, ({ level }) => level)].map(([level, rows]) => {
    const ids = rows.map(({ id }) => id);
    const isWhole = ids.every((id) => selected.has(id));
    return (
      <div key={level} className="mb-4 last:mb-0">
        <div className="mb-2 flex items-center justify-between gap-3">
          <h3>{level} <span className="font-normal text-ink-soft">({rows.length})</span></h3>
          <span className="no-print"><Button size="glove" onPress={() => onSelect(ids, !isWhole)}><span className="text-base">{isWhole ? "Select none" : "Select all"}<span className="sr-only">: {group.title}, {level}</span></span></Button></span>
        </div>
        <ul className="grid gap-2 sm:grid-cols-2 xl:grid-cols-3">{rows.map(draw)}</ul>
      </div>
    );
  });
  const count = `${group.rows.length}${group.note ? ` · ${group.note}` : ""}`;
  return (
    <Section title={group.title} note={count}>
      {group.isFolded ? (
        <details>
          <summary className="flex min-h-glove cursor-pointer items-center border-2 border-edge bg-sheet px-4 font-semibold">Show {group.rows.length} columns</summary>
          <div className="mt-3">{levels}</div>
        </details>
      ) : levels}
    </Section>
  );
}
