import { useId, type ReactNode } from "react";

export type SectionProps = {
  readonly title: string;
  readonly note?: ReactNode;
  readonly actions?: ReactNode;
  readonly className?: string;
  readonly children: ReactNode;
};

/** A part of a page under its own heading, ruled off from the one above. */
export function Section({ title, note, actions, className = "", children }: SectionProps) {
  const id = useId();
  return (
    <section aria-labelledby={id} className={`min-w-0 ${className}`}>
      <div className="mb-3 flex flex-wrap items-end justify-between gap-3 border-b-2 border-ink pb-1 print:mb-1">
        <div className="flex flex-wrap items-baseline gap-x-3">
          <h2 id={id}>{title}</h2>
          {note ? <p className="text-sm text-ink-soft">{note}</p> : null}
        </div>
        {actions ? <div className="no-print flex flex-wrap gap-2">{actions}</div> : null}
      </div>
      {children}
    </section>
  );
}
