"use client";

import { useEffect, useState } from "react";
import { flushSync } from "react-dom";

/** True while the page is being laid out for paper, where everything is drawn and nothing scrolls. */
export function useIsPrinting(): boolean {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    const undo = new AbortController();
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    window.addEventListener("beforeprint", begin, { signal: undo.signal });
    window.addEventListener("afterprint", end, { signal: undo.signal });
    window.matchMedia("print").addEventListener("change", ({ matches }) => (matches ? begin() : end()), { signal: undo.signal });
    return () => undo.abort();
  }, []);
  return isPrinting;
}
