"use client";

import { useCallback, useRef, useState } from "react";
import { rangeOf, toggleAll } from "../sheet/select-columns.ts";

export type Toggle = (id: string, isRange: boolean, between?: (from: string, to: string) => readonly string[]) => void;

/** Which columns are selected; `inOrder` is the order in which shift selects from one to another, unless a view has its own. */
export function useSelection(inOrder: readonly string[]) {
  const [selected, setSelected] = useState<ReadonlySet<string>>(new Set());
  const [last, setLast] = useState<ReadonlySet<string>>(new Set());
  const anchor = useRef<string | null>(null);
  const toggle = useCallback<Toggle>((id, isRange, between) => {
    const from = anchor.current;
    if (!isRange || from === null) {
      anchor.current = id;
      setSelected((before) => toggleAll(before, [id]));
      return;
    }
    const ids = between ? between(from, id) : rangeOf(inOrder, from, id);
    setSelected((before) => new Set([...before, ...ids]));
  }, [inOrder]);
  const toggleMany = useCallback((ids: readonly string[]) => setSelected((before) => toggleAll(before, ids)), []);
  const clear = useCallback(() => {
    if (selected.size > 0) setLast(selected);
    setSelected(new Set());
  }, [selected]);
  return { selected, setSelected, toggle, toggleMany, clear, last };
}
