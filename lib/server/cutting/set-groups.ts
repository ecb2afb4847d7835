import "server-only";
import { groupBy } from "#lib/kernel/group-by.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import type { CuttingLine } from "#lib/trade/shutter/form-set.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { columnForm } from "../columns/column-form.ts";
import type { readRules } from "../projects/project-head.ts";
import type { ClampKindRow } from "../projects/clamp-store.ts";
import type { LiftRow } from "./store.ts";

/** Columns of one size and form height: any of them is cast in a form set of this group. */
export type SetGroup = {
  /** Names the group: 600x400x2750. */
  readonly size: string;
  readonly marks: readonly string[];
  readonly widthMm: number;
  readonly depthMm: number;
  readonly heightMm: number;
  readonly columns: number;
  readonly columnIds: readonly string[];
  readonly cutting: readonly CuttingLine[];
};
/** Columns that get no form set, and why. */
export type LeftOut = { readonly marks: readonly string[]; readonly columns: number; readonly why: Pick<Refusal, "limit" | "given" | "allowed" | "message"> };

export function setGroups(lifts: readonly LiftRow[], rules: ReturnType<typeof readRules>, clampKinds: readonly ClampKindRow[]): { groups: SetGroup[]; leftOut: LeftOut[] } {
  const groups: SetGroup[] = [];
  const leftOut: LeftOut[] = [];
  const alike = groupBy(lifts, (lift) => [lift.shape, lift.widthMm, lift.depthMm, lift.formHeightMm, lift.headedBy, lift.toLevel.id].join(" "));
  for (const rows of alike.values()) {
    const [first] = rows;
    if (!first) continue;
    const { formSet } = columnForm(first, rules, clampKinds);
    const marks = marksOf(rows);
    if (!formSet.ok) {
      leftOut.push({ marks, columns: rows.length, why: formSet.failure });
      continue;
    }
    const { section, formHeight, cutting } = formSet.value;
    const size = `${section.width}x${section.depth}x${formHeight}`;
    groups.push({ size, marks, widthMm: section.width, depthMm: section.depth, heightMm: formHeight, columns: rows.length, columnIds: rows.map(({ id }) => id), cutting });
  }
  return { groups: merged(groups), leftOut };
}

const marksOf = (rows: readonly LiftRow[]): string[] => [...new Set(rows.map(({ mark }) => mark.name))].sort(naturalOrder);

/** The same size may come about in two ways, as by a height given and one computed. */
function merged(groups: readonly SetGroup[]): SetGroup[] {
  return [...groupBy(groups, ({ size }) => size).values()].flatMap((same) => {
    const [first] = same;
    if (!first) return [];
    const marks = [...new Set(same.flatMap((group) => group.marks))].sort(naturalOrder);
    return [{ ...first, marks, columns: same.reduce((sum, group) => sum + group.columns, 0), columnIds: same.flatMap(({ columnIds }) => columnIds) }];
  }).sort((a, b) => naturalOrder(a.marks[0] ?? "", b.marks[0] ?? "") || naturalOrder(a.size, b.size));
}
