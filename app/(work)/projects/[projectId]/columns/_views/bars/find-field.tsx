"use client";

import { useEffect, useRef, useState } from "react";
import { TextField } from "#app/_ui/field/text-field.tsx";

export type FindFieldProps = { readonly text: string; readonly onFind: (text: string) => void };

/** So long nobody types before the columns follow. */
const PAUSE_MS = 200;

/** Keeps what is being typed by itself: the address follows too slowly to type into. */
export function FindField({ text, onFind }: FindFieldProps) {
  const [typed, setTyped] = useState(text);
  const [known, setKnown] = useState(text);
  if (known !== text) {
    setKnown(text);
    setTyped(text);
  }
  const tell = useRef(onFind);
  useEffect(() => { tell.current = onFind; });
  useEffect(() => {
    if (typed === text) return;
    const later = setTimeout(() => tell.current(typed), PAUSE_MS);
    return () => clearTimeout(later);
  }, [typed, text]);
  return <TextField name="find" isFilter label="Grid reference" type="search" placeholder="B4, C4" value={typed} maxLength={40} onChange={setTyped} />;
}
