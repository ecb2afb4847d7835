import type { ReactNode } from "react";

export type FieldSetProps = { readonly legend: string; readonly note?: string; readonly children: ReactNode };

/** Entries that belong together, two beside each other. */
export function FieldSet({ legend, note, children }: FieldSetProps) {
  return (
    <fieldset className="min-w-0">
      <legend className="mb-2 w-full border-b-2 border-ink pb-1 font-semibold">
        {legend}
        {note ? <span className="ml-2 text-sm font-normal text-ink-soft">{note}</span> : null}
      </legend>
      <div className="grid grid-cols-2 items-start gap-x-4 gap-y-3">{children}</div>
    </fieldset>
  );
}

/** Takes the whole width; left out of sight where the method does not read it, yet posted, so that it comes back with the method. */
export function Wide({ isShown = true, children }: { readonly isShown?: boolean; readonly children: ReactNode }) {
  return <div hidden={!isShown} className={isShown ? "col-span-full min-w-0" : undefined}>{children}</div>;
}

export function Half({ isShown = true, children }: { readonly isShown?: boolean; readonly children: ReactNode }) {
  return <div hidden={!isShown} className="min-w-0">{children}</div>;
}
