import type { ReactNode } from "react";

export type BigFigure = { readonly label: string; readonly figure: ReactNode; readonly note?: ReactNode };
export type VerdictProps = {
  /** In words, read out when it changes: "It holds: 8 clamps, the hardest worked at 96 %." */
  readonly title: string;
  /** Null where nothing is judged. */
  readonly passes: boolean | null;
  readonly figures: readonly BigFigure[];
};

const LOOK = { yes: "border-accent bg-accent-wash", no: "border-flag bg-flag-wash", none: "border-ink bg-sheet" } as const;

/** The answer in one sentence, and its figures large, each with the clause that governs it. */
export function Verdict({ title, passes, figures }: VerdictProps) {
  return (
    <section aria-label="Answer" className="verdict keep border-2 border-ink">
      <p role="status" className={`border-b-2 border-l-8 px-4 py-2 text-lg font-semibold ${LOOK[passes === null ? "none" : passes ? "yes" : "no"]}`}>{title}</p>
      <dl className="flex flex-wrap gap-px bg-rule-soft">
        {figures.map(({ label, figure, note }) => (
          <div key={label} className="min-w-40 grow bg-sheet px-4 py-2">
            <dt className="lettering">{label}</dt>
            <dd>
              <span className="text-3xl font-semibold">{figure}</span>
              {note ? <span className="block text-sm text-ink-soft">{note}</span> : null}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
