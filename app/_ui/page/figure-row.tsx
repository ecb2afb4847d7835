import type { ReactNode } from "react";

/** Drawings beside each other; on paper they always share one row and are made to fit it. */
export function FigureRow({ children }: { readonly children: ReactNode }) {
  return <div className="figure-row flex flex-wrap items-start gap-4">{children}</div>;
}
