/** Bit i of `done` stands for the i-th stage. */
export const STAGE_ORDER = ["cut", "stood", "clamped", "plumbed", "poured", "stripped"] as const;
export type StageName = (typeof STAGE_ORDER)[number];

export const hasStage = (done: number, stage: StageName): boolean => (done & (1 << STAGE_ORDER.indexOf(stage))) !== 0;

/** The furthest stage reached, or undefined before the first. */
export const furthestStage = (done: number): StageName | undefined => STAGE_ORDER.findLast((stage) => hasStage(done, stage));

/** What the sign says, for those who hear it: "clamped", "poured, not plumbed, queried or held". */
export function signWords(done: number, flagged: boolean): string {
  const furthest = furthestStage(done);
  const passed = furthest === undefined ? [] : STAGE_ORDER.slice(0, STAGE_ORDER.indexOf(furthest));
  const left = passed.filter((stage) => !hasStage(done, stage)).map((stage) => `not ${stage}`);
  return [furthest ?? "not started", ...left, ...(flagged ? ["queried or held"] : [])].join(", ");
}
