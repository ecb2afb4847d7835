/** What has physically been done to a column, in the order of the work. */
export const STAGES = ["cut", "stood", "clamped", "plumbed", "poured", "stripped"] as const;
export type Stage = (typeof STAGES)[number];

/** Somebody's say-so, apart from what was physically done. */
export const GATES = ["set-out checked", "cage released", "pre-pour released", "strip released"] as const;
export type Gate = (typeof GATES)[number];

/** Why a column went back: it decides between rework, a variation and a delay. */
export const CAUSES = ["ours", "others", "weather"] as const;
export type Cause = (typeof CAUSES)[number];

export type Plumbing = "before-pour" | "during-pour";

export const ALL_DONE = 2 ** STAGES.length - 1;

/** Place in the order of work; nothing yet is -1, so that it lies before every stage. */
export const placeOf = (stage: Stage | null): number => (stage === null ? -1 : STAGES.indexOf(stage));

export const bitOf = (stage: Stage): number => 2 ** placeOf(stage);

export const hasDone = (done: number, stage: Stage): boolean => (done & bitOf(stage)) !== 0;

/** The furthest stage in a mask of done stages. */
export const stageOf = (done: number): Stage | null => STAGES.findLast((stage) => hasDone(done, stage)) ?? null;

/**
 * The stages that cannot be missing once `stage` is reached.
 * Where a crew plumbs as the concrete goes in, *poured* says nothing about *plumbed*: it may still be to come.
 * Once stripped it can come no more, so *stripped* implies it again; the missing reading is asked for all the same.
 */
export function impliedBy(stage: Stage, plumbing: Plumbing): readonly Stage[] {
  const before = STAGES.slice(0, Math.max(placeOf(stage), 0));
  return plumbing === "during-pour" && stage === "poured" ? before.filter((each) => each !== "plumbed") : before;
}
