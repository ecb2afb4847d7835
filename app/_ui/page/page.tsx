import type { ReactNode } from "react";

export type PageFact = { readonly label: string; readonly value: ReactNode };

export type PageProps = {
  readonly title: string;
  readonly subtitle?: ReactNode;
  /** Cells of the title block: level, size, height, drawing number. */
  readonly facts?: readonly PageFact[];
  readonly actions?: ReactNode;
  /** A sheet is meant for paper: it keeps to one page. */
  readonly isSheet?: boolean;
  readonly children: ReactNode;
};

/** A page under its title block, as a drawing has one. */
export function Page({ title, subtitle, facts = [], actions, isSheet = false, children }: PageProps) {
  return (
    <main id="content" tabIndex={-1} className={`mx-auto w-full max-w-7xl px-3 pb-28 pt-3 outline-none sm:px-6 sm:pt-5 lg:pb-12 ${isSheet ? "sheet" : ""} print:max-w-none print:p-0`}>
      <header className="border-2 border-ink bg-sheet">
        <div className="flex flex-wrap items-end justify-between gap-x-6 gap-y-3 px-4 py-3">
          <div className="min-w-0">
            {subtitle ? <p className="lettering">{subtitle}</p> : null}
            <h1 className="text-2xl sm:text-3xl">{title}</h1>
          </div>
          {actions ? <div className="no-print flex flex-wrap gap-3">{actions}</div> : null}
        </div>
        {facts.length > 0 ? (
          <dl className="flex flex-wrap gap-px border-t-2 border-ink bg-rule-soft">
            {facts.map(({ label, value }) => (
              <div key={label} className="min-w-28 grow bg-sheet px-4 py-1.5">
                <dt className="lettering">{label}</dt>
                <dd className="font-semibold">{value}</dd>
              </div>
            ))}
          </dl>
        ) : null}
      </header>
      <div className="mt-5 flex flex-col gap-6 print:mt-3 print:gap-3">{children}</div>
    </main>
  );
}
