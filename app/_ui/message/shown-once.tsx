"use client";

import { useId, useState } from "react";
import { Button } from "../control/button.tsx";
import { Notice } from "./notice.tsx";

export type ShownOnceProps = {
  readonly title: string;
  /** What it is: "The link". */
  readonly label: string;
  readonly text: string;
  readonly copyLabel: string;
  /** How far it opens, and who must not get it. */
  readonly note: string;
};

/** Something that opens a door, to be copied now: the server keeps only its print. */
export function ShownOnce({ title, label, text, copyLabel, note }: ShownOnceProps) {
  const id = useId();
  const [copied, setCopied] = useState<"yes" | "no" | undefined>(undefined);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setCopied("yes");
    } catch {
      setCopied("no");
    }
  };
  return (
    <Notice title={title}>
      <label htmlFor={id} className="mt-2 block font-semibold">{label}</label>
      <div className="mt-1 flex flex-wrap gap-3">
        <input id={id} readOnly value={text} onFocus={(event) => event.target.select()} className="min-h-hand min-w-0 grow border-2 border-edge bg-sheet px-3 font-mono text-sm" />
        <Button kind="primary" onPress={() => void copy()}>{copyLabel}</Button>
      </div>
      <p aria-live="polite" className="mt-2 text-sm">
        {copied === "yes" ? "Copied." : copied === "no" ? "Copying is not allowed here: select it and copy it by hand." : note}
      </p>
    </Notice>
  );
}
