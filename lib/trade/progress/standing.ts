import { comesBefore, type Mark, type Offsets, type ReadingTime } from "./site-event.ts";
import { impliedBy, type Cause, type Gate, type Plumbing, type Stage } from "./stages.ts";
import type { Finding } from "./finding.ts";

/** `implied` when only a later stage says so. Further ticks are harmless: counted, and the last of them kept. */
export type Reached = Mark & { readonly implied: boolean; readonly repeats: number; readonly last: Mark };
export type Held = Mark & { readonly reason: string | null };
export type Reading = Mark & { readonly offsets_mm: Offsets };
export type SetBack = Mark & { readonly to: Stage | null; readonly cause: Cause };
export type Raised = Finding & { readonly eventId: string; readonly reason: string | null };

/** Where a column stands at one moment of the fold. */
export type Standing = {
  reached: Partial<Record<Stage, Reached>>;
  gates: Partial<Record<Gate, Mark>>;
  held: Held | null;
  readings: Partial<Record<ReadingTime, Reading>>;
  setBacks: readonly SetBack[];
  raised: readonly Raised[];
};

export const untouched = (): Standing => ({
  reached: {},
  gates: {},
  held: null,
  readings: {},
  setBacks: [],
  raised: [],
});

/** The stages a tick adds, or shows to have been reached earlier than known. */
export function newlyReached(
  standing: Pick<Standing, "reached">,
  stage: Stage,
  mark: Mark,
  plumbing: Plumbing,
): readonly Stage[] {
  return [...impliedBy(stage, plumbing), stage].filter((each) => {
    const known = standing.reached[each];
    return known === undefined || comesBefore(mark, known);
  });
}
