"use client";

import { useId } from "react";

export type PhotoPickerProps = { readonly photos: readonly File[]; readonly onChange: (photos: readonly File[]) => void; /** What to photograph. */ readonly hint?: string; /** What they go with. */ readonly to?: string };
const MOST = 12;

/** Photos of the bins at the gate: the defence when the supplier's yard counts otherwise. */
export function PhotoPicker({ photos, onChange, hint = "Photograph the bins before they leave.", to = "docket" }: PhotoPickerProps) {
  const id = useId();
  return (
    <div className="flex flex-wrap items-center gap-3">
      <label htmlFor={id} className="flex min-h-glove cursor-pointer items-center border-2 border-ink bg-sheet px-5 text-lg font-semibold focus-within:outline-3 focus-within:outline-offset-2 focus-within:outline-accent hover:bg-accent-wash">
        Add photos
        <input
          id={id} type="file" accept="image/*" capture="environment" multiple className="sr-only"
          onChange={(event) => { onChange([...photos, ...(event.target.files ?? [])].slice(0, MOST)); event.target.value = ""; }}
        />
      </label>
      <p role="status">{photos.length === 0 ? hint : `${photos.length} to go with the ${to}`}</p>
      {photos.length > 0 ? <button type="button" className="min-h-hand cursor-pointer underline" onClick={() => onChange([])}>Leave them out</button> : null}
    </div>
  );
}
