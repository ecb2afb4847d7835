"use client";

import { useRouter } from "next/navigation";
import { useCallback, useEffect, useRef, useState } from "react";
import type { SignState } from "#app/_field/outbox/expected-sign.ts";

type News = SignState & { readonly seq: number };
export type NewsOfColumns = {
  readonly of: (columnId: string) => SignState | undefined;
  readonly hear: (seq: number, columns: readonly (SignState & { readonly id: string })[]) => void;
};

/** Several ticks in a row make one reading of the page. */
const GATHER_MS = 600;

/** Draws what was heard at once, and soon reads the page again for what follows from it. */
export function useNews(readSeq: number): NewsOfColumns {
  const router = useRouter();
  const [news, setNews] = useState<ReadonlyMap<string, News>>(new Map());
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  const hear = useCallback<NewsOfColumns["hear"]>((seq, columns) => {
    setNews((known) => new Map([...known, ...columns.map(({ id, done, flagged }) => [id, { done, flagged, seq }] as const)]));
    clearTimeout(timer.current);
    timer.current = setTimeout(() => router.refresh(), GATHER_MS);
  }, [router]);
  const of = (columnId: string): SignState | undefined => {
    const heard = news.get(columnId);
    return heard !== undefined && heard.seq > readSeq ? heard : undefined;
  };
  return { of, hear };
}
