import { hasDone, placeOf, stageOf, STAGES } from "#lib/trade/progress/stages.ts";

/** What the sign says, for those who hear it: "clamped", "poured, not plumbed, queried or held". */
export function signWords(done: number, flagged: boolean): string {
  const furthest = stageOf(done);
  const missed = STAGES.slice(0, Math.max(placeOf(furthest), 0)).filter((stage) => !hasDone(done, stage));
  return [furthest ?? "not started", ...missed.map((stage) => `not ${stage}`), ...(flagged ? ["queried or held"] : [])].join(", ");
}
