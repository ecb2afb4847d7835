"use client";

import { useId, useRef, useState, type DragEvent } from "react";

export type FileDropProps = {
  readonly isPending: boolean;
  readonly onFile: (file: File) => void;
};

const LOOK =
  "flex min-h-40 cursor-pointer flex-col items-center justify-center gap-2 border-2 border-dashed border-ink bg-sheet p-6 text-center hover:bg-accent-wash " +
  "focus-within:outline-3 focus-within:outline-offset-2 focus-within:outline-accent";

/** A file dropped on it or chosen with it; the same file can be chosen again after it was corrected. */
export function FileDrop({ isPending, onFile }: FileDropProps) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [isOver, setOver] = useState(false);
  const take = (files: FileList | null) => {
    const file = files?.[0];
    if (file) onFile(file);
    if (input.current) input.current.value = "";
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    if (!isPending) take(event.dataTransfer.files);
  };
  return (
    <label
      htmlFor={id} className={`${LOOK} ${isOver ? "bg-accent-wash" : ""}`}
      onDragOver={(event) => { event.preventDefault(); setOver(true); }} onDragLeave={() => setOver(false)} onDrop={drop}
    >
      <span className="text-lg font-semibold">{isPending ? "Reading the file …" : "Choose the column schedule, or drop it here"}</span>
      <span className="text-ink-soft">CSV or XLSX, up to 10 MB. You see what it would do before anything is written.</span>
      <input
        ref={input} id={id} type="file" className="sr-only" disabled={isPending}
        accept=".csv,.xlsx,text/csv,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
        onChange={(event) => take(event.target.files)}
      />
    </label>
  );
}
