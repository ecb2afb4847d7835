"use client";

import { useEffect, useRef, useState } from "react";
import type { LiveMessage } from "#lib/contracts/columns-sheet.ts";
import { LiveLine, type LiveState } from "./live-line.ts";

export type LiveInput = {
  readonly projectId: string;
  /** The last number the screen was drawn with. */
  readonly since: number;
  readonly onMessage: (message: LiveMessage) => void;
};

/** What others do, as it happens; after a gap everything missed comes first. */
export function useLive({ projectId, since, onMessage }: LiveInput): LiveState {
  const [state, setState] = useState<LiveState>({ standing: "connecting", seq: since });
  const hear = useRef(onMessage);
  const from = useRef(since);
  useEffect(() => {
    hear.current = onMessage;
    from.current = since;
  });
  useEffect(() => {
    const line = new LiveLine(projectId, from.current, { onMessage: (message) => hear.current(message), onState: setState });
    line.open();
    return () => line.close();
  }, [projectId]);
  return state;
}
