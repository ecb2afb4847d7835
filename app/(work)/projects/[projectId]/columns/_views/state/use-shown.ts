"use client";

import { useSearchParams } from "next/navigation";
import { useMemo } from "react";
import { readShown, writeShown, type Shown } from "../sheet/column-filter.ts";

/** What the address says is shown. Changing a filter rewrites the address; changing view or level can be gone back from. */
export function useShown(): { readonly shown: Shown; readonly show: (next: Shown) => void } {
  const query = useSearchParams();
  const shown = useMemo(() => readShown(new URLSearchParams(query.toString())), [query]);
  const show = (next: Shown): void => {
    const written = writeShown(next);
    const address = written === "" ? window.location.pathname : `${window.location.pathname}?${written}`;
    if (next.view !== shown.view || next.levelId !== shown.levelId) window.history.pushState(null, "", address);
    else window.history.replaceState(null, "", address);
  };
  return { shown, show };
}
