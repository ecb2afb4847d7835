import type { ReactNode } from "react";

export type CautionProps = {
  /** The number the caution belongs to: "clamp layout", "pour rate", "strip time". */
  readonly of: string;
  /** Limits and assumptions particular to this answer. */
  readonly children?: ReactNode;
};

/** Stands beside every computed layout, rate and strip time, on screen and in print. */
export function Caution({ of, children }: CautionProps) {
  return (
    <aside aria-label={`Caution: ${of}`} className="keep flex border-2 border-ink bg-sheet">
      <div aria-hidden className="hatched-edge w-4 shrink-0 border-r-2 border-ink" />
      <div className="p-3">
        <p className="font-bold">Check before use: {of}</p>
        <p className="mt-1">
          A competent person must check this {of} against the project&rsquo;s formwork design, the hirer&rsquo;s data for the
          gear on site, and the codes that apply here. It does not replace that design or any release.
        </p>
        {children ? <div className="mt-2">{children}</div> : null}
      </div>
    </aside>
  );
}
