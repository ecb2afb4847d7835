import type { ReactNode } from "react";
import type { CautionKey } from "#lib/trade/shutter/form-set.ts";
import { CAUTION_WORDING } from "#app/_ui/wording-cautions.ts";

export type CautionProps = {
  /** The number the caution belongs to: "clamp layout", "pour rate", "strip time". */
  readonly of: string;
  /** What the answer itself says must be minded. */
  readonly keys?: readonly CautionKey[];
  /** Limits and assumptions particular to this answer. */
  readonly children?: ReactNode;
};

/** Stands beside every computed layout, rate and strip time, on screen and in print. */
export function Caution({ of, keys = [], children }: CautionProps) {
  const more = keys.filter((key) => key !== "competent-person");
  return (
    <aside aria-label={`Caution: ${of}`} className="keep flex border-2 border-ink bg-sheet">
      <div aria-hidden className="hatched-edge w-4 shrink-0 border-r-2 border-ink" />
      <div className="p-3 print:p-1.5">
        <p className="font-bold">Check before use: {of}</p>
        <p className="mt-1">
          A competent person must check this {of} against the project&rsquo;s formwork design, the hirer&rsquo;s data for the
          gear on site, and the codes that apply here. It does not replace that design or any release.
        </p>
        {more.length > 0 ? (
          <ul className="mt-1 list-disc pl-5">
            {more.map((key) => <li key={key}>{CAUTION_WORDING[key]}</li>)}
          </ul>
        ) : null}
        {children ? <div className="mt-2">{children}</div> : null}
      </div>
    </aside>
  );
}
