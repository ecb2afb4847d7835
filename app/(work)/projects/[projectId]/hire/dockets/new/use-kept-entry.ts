import { useEffect, useRef, useState } from "react";
import type { Counts } from "./docket-fields.ts";
import { dropDraft, keepDraft } from "./kept-draft.ts";

const SETTLED_MS = 400;

/** Keeps the entry on the phone while it is filled in, so that no lost reception and no closed page loses it. */
export function useKeptEntry(key: string | null, counts: Counts, photos: readonly File[]) {
  const box = useRef<HTMLDivElement>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const isSent = useRef(false);
  const [isKept, setKept] = useState(false);
  const latest = useRef({ counts, photos });
  const keep = () => {
    clearTimeout(timer.current);
    const form = box.current?.querySelector("form");
    if (!form || key === null || isSent.current) return;
    const fields = Object.fromEntries([...new FormData(form)].flatMap(([name, value]) => (typeof value === "string" ? [[name, value] as const] : [])));
    void keepDraft(key, { ...latest.current, fields, keptAt: Date.now() }).then(setKept);
  };
  const note = () => {
    clearTimeout(timer.current);
    timer.current = setTimeout(keep, SETTLED_MS);
  };
  // A count or a photo is kept at once: leaving the field may be the last thing before the page is left.
  useEffect(() => {
    latest.current = { counts, photos };
    if (Object.keys(counts).length > 0 || photos.length > 0) keep();
  }, [key, counts, photos]);
  useEffect(() => () => clearTimeout(timer.current), []);
  const sent = () => {
    isSent.current = true;
    clearTimeout(timer.current);
    if (key !== null) void dropDraft(key);
  };
  return { box, note, sent, isKept };
}
