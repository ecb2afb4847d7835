import type { ReactNode } from "react";

/** Short fields side by side, as many as there is room for. */
export function FieldGrid({ children }: { readonly children: ReactNode }) {
  return <div className="grid items-start gap-x-5 gap-y-4 sm:grid-cols-2 lg:grid-cols-4">{children}</div>;
}
