"use client";

import { useRef, useState } from "react";
import { rangeOf, toggleAll } from "#app/(work)/projects/[projectId]/columns/_views/place-columns.ts";

/** Which columns are selected; `inOrder` is the order in which shift selects from one to another. */
export function useSelection(inOrder: readonly string[]) {
  const [selected, setSelected] = useState<ReadonlySet<string>>(new Set());
  const [last, setLast] = useState<ReadonlySet<string>>(new Set());
  const anchor = useRef<string | null>(null);
  const toggle = (id: string, isRange: boolean): void => {
    const from = anchor.current;
    if (isRange && from !== null) setSelected((before) => new Set([...before, ...rangeOf(inOrder, from, id)]));
    else setSelected((before) => toggleAll(before, [id]));
    anchor.current = id;
  };
  const clear = (): void => {
    if (selected.size > 0) setLast(selected);
    setSelected(new Set());
  };
  return { selected, setSelected, toggle, toggleMany: (ids: readonly string[]) => setSelected((before) => toggleAll(before, ids)), clear, last };
}
