import type { ReactNode } from "react";

export type EmptyStateProps = {
  /** What is missing: "No columns yet". */
  readonly title: string;
  /** What to do next, and what will stand here then. */
  readonly children: ReactNode;
  readonly actions?: ReactNode;
};

export function EmptyState({ title, children, actions }: EmptyStateProps) {
  return (
    <div className="border-2 border-dashed border-edge bg-sheet p-6 sm:p-8">
      <p className="text-lg font-semibold">{title}</p>
      <div className="mt-2 max-w-prose text-ink-soft">{children}</div>
      {actions ? <div className="no-print mt-4 flex flex-wrap gap-3">{actions}</div> : null}
    </div>
  );
}
