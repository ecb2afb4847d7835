import type { ReactNode } from "react";

export type NoticeProps = {
  /** `problem` interrupts a screen reader; `done` and `note` wait their turn. */
  readonly kind?: "note" | "done" | "problem";
  readonly title?: string;
  readonly children?: ReactNode;
};

const LOOK = {
  note: { box: "border-ink bg-sheet", word: "Note" },
  done: { box: "border-accent bg-accent-wash", word: "Done" },
  problem: { box: "border-flag bg-flag-wash", word: "Stop" },
} as const;

export function Notice({ kind = "note", title, children }: NoticeProps) {
  const { box, word } = LOOK[kind];
  return (
    <div role={kind === "problem" ? "alert" : "status"} className={`border-2 border-l-8 p-3 ${box}`}>
      <p className={kind === "problem" ? "text-flag-deep" : ""}>
        <span className="mr-2 border border-current px-1 text-xs font-bold uppercase tracking-wider">{word}</span>
        {title ? <strong className="font-semibold">{title}</strong> : null}
      </p>
      {children ? <div className="mt-1">{children}</div> : null}
    </div>
  );
}
