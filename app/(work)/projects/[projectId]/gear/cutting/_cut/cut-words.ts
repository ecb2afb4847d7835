import type { TimberUse } from "#lib/contracts/planning/cutting.ts";

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

const USE_WORDS: Readonly<Record<TimberUse, string>> = { backing: "backing timber", fillet: "fillet" };

/** "8 lengths of backing timber and 4 lengths of fillet"; empty where there is none. */
export const lengthsOf = (counts: readonly { readonly use: TimberUse; readonly count: number }[]): string =>
  counts.filter(({ count }) => count > 0).map(({ use, count }) => `${counted(count, "length")} of ${USE_WORDS[use]}`).join(" and ");

/** "3 offcuts of ply and 1 offcut of timber"; empty where there is none. */
export const offcutsOf = (ply: number, timber: number): string =>
  [ply > 0 ? `${counted(ply, "offcut")} of ply` : "", timber > 0 ? `${counted(timber, "offcut")} of timber` : ""].filter((words) => words !== "").join(" and ");
