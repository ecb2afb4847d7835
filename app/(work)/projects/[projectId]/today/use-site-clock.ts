"use client";

import { useEffect, useState } from "react";

const STEP_MS = 20_000;

/** The time, starting from when the page was read, so that a strip time runs out before the eyes of the crew. */
export function useSiteClock(readAt: string): string {
  const [now, setNow] = useState(readAt);
  useEffect(() => {
    const step = () => setNow(new Date().toISOString());
    step();
    const timer = setInterval(step, STEP_MS);
    return () => clearInterval(timer);
  }, [readAt]);
  return now;
}
