import type { EventAnswer } from "#lib/contracts/progress.ts";
import { hasDone, type Stage } from "#lib/trade/progress/stages.ts";
import type { SpokenFinding } from "#app/_ui/wording-findings.ts";
import type { TickOutcome } from "#app/_field/use-ticks.ts";
import type { TickColumn } from "./tick-column.ts";

/** `id` is the entry's on this phone; null when it was not even tried. */
export type Skipped = {
  readonly columnId: string;
  readonly id: string | null;
  readonly kind: "done" | "not-poured" | "asks" | "refused";
  readonly why: readonly SpokenFinding[];
};
export type Taken = { readonly columnId: string; readonly queried: readonly SpokenFinding[] };

/** What became of one press of a button. */
export type Outcome = {
  readonly words: string;
  readonly isSaved: boolean;
  readonly taken: readonly Taken[];
  readonly skipped: readonly Skipped[];
};

/** Columns a stage is not sent for: those that have it, and those that would be stripped before they are poured. */
export function leaveOut(columns: readonly TickColumn[], stage: Stage): { readonly tried: TickColumn[]; readonly skipped: Skipped[] } {
  const tried: TickColumn[] = [];
  const skipped: Skipped[] = [];
  for (const column of columns) {
    if (hasDone(column.done, stage)) skipped.push({ columnId: column.id, id: null, kind: "done", why: [] });
    else if (stage === "stripped" && !hasDone(column.done, "poured"))
      skipped.push({ columnId: column.id, id: null, kind: "not-poured", why: [{ code: "not-poured", values: {} }] });
    else tried.push(column);
  }
  return { tried, skipped };
}

const isTaken = ({ outcome }: EventAnswer): boolean => outcome === "accepted" || outcome === "repeat" || outcome === "queried";

/** What the server made of it, or that it is saved. */
export function readOutcome(words: string, outcome: TickOutcome, columnIds: readonly string[], skipped: readonly Skipped[]): Outcome {
  if (outcome.where === "saved-on-phone") return { words, isSaved: true, taken: columnIds.map((columnId) => ({ columnId, queried: [] })), skipped };
  const { answers } = outcome.answer;
  return {
    words,
    isSaved: false,
    taken: answers.filter(isTaken).map(({ columnId, outcome: kind, findings }) => ({ columnId, queried: kind === "queried" ? findings : [] })),
    skipped: [...skipped, ...answers.filter((each) => !isTaken(each)).map(asSkipped)],
  };
}

const asSkipped = ({ id, columnId, outcome, findings }: EventAnswer): Skipped =>
  ({ columnId, id, kind: outcome === "needs-reason" ? "asks" : "refused", why: findings });

/** Whether anything is to be told beyond "done". */
export const needsTelling = ({ taken, skipped }: Outcome): boolean =>
  skipped.length > 0 || taken.some(({ queried }) => queried.length > 0);
