import type { ReactNode } from "react";

export type FigureProps = {
  readonly caption: ReactNode;
  readonly className?: string;
  readonly children: ReactNode;
};

/** A drawing on its own sheet with its caption below. */
export function Figure({ caption, className = "", children }: FigureProps) {
  return (
    <figure className={`min-w-0 border-2 border-ink bg-sheet print:border ${className}`}>
      <div tabIndex={0} role="group" aria-label={typeof caption === "string" ? caption : "Drawing"} className="overflow-x-auto p-2 print:overflow-visible print:p-1">{children}</div>
      <figcaption className="border-t border-ink px-3 py-1.5 text-sm print:py-0.5">{caption}</figcaption>
    </figure>
  );
}
