"use client";

import { useSyncExternalStore } from "react";
import { ColumnsAtWork, type ColumnsAtWorkProps } from "./columns-at-work.tsx";

const never = () => () => undefined;

/**
 * Drawn in the browser alone: the sheet is small on its way there, the drawings made of it are not, and what to show
 * first depends on the screen.
 */
export function ColumnsBoard(props: ColumnsAtWorkProps) {
  const isInBrowser = useSyncExternalStore(never, () => true, () => false);
  return isInBrowser ? <ColumnsAtWork {...props} /> : <p role="status" className="min-h-96 text-ink-soft">Drawing the columns…</p>;
}
