import "server-only";
import { groupBy } from "#lib/kernel/group-by.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { forFaces } from "#lib/trade/shutter/cutting-list.ts";
import type { CuttingLine } from "#lib/trade/shutter/form-set.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { FACES } from "#lib/trade/shutter/shutter-rule.ts";
import { columnForm } from "../columns/column-form.ts";
import type { readRules } from "../projects/project-head.ts";
import type { ClampKindRow } from "../projects/clamp-store.ts";
import type { LiftRow } from "./store.ts";

/** Columns of one size and form height that are made alike: any of them is cast in a form set of this group. */
export type SetGroup = {
  /** Names the group: 600x400x2750, and the faces where the others get a panel there is. */
  readonly size: string;
  readonly marks: readonly string[];
  readonly widthMm: number;
  readonly depthMm: number;
  readonly heightMm: number;
  readonly columns: number;
  readonly columnIds: readonly string[];
  /** Of those, the ones nothing is cut for yet. */
  readonly toCut: number;
  /** Faces to be cut; null for all four. */
  readonly faces: string | null;
  readonly cutting: readonly CuttingLine[];
  /** What one set is made up of, of the faces to be cut. */
  readonly panels: readonly { readonly face: string; readonly widthMm: number; readonly heightMm: number }[];
};
/** Columns that get no form set, and why. */
export type LeftOut = { readonly marks: readonly string[]; readonly columns: number; readonly why: Pick<Refusal, "limit" | "given" | "allowed" | "message"> };

const ALL_FACES = FACES.length;

export function setGroups(lifts: readonly LiftRow[], rules: ReturnType<typeof readRules>, clampKinds: readonly ClampKindRow[]): { groups: SetGroup[]; leftOut: LeftOut[] } {
  const groups: SetGroup[] = [];
  const leftOut: LeftOut[] = [];
  const asking = lifts.filter(({ hasSet, reused }) => !hasSet && reused.length < ALL_FACES);
  const alike = groupBy(asking, (lift) => [lift.shape, lift.widthMm, lift.depthMm, lift.formHeightMm, lift.headedBy, lift.toLevel.id, [...lift.reused].sort().join("")].join(" "));
  for (const rows of alike.values()) {
    const [first] = rows;
    if (!first) continue;
    const { formSet } = columnForm(first, rules, clampKinds);
    const marks = marksOf(rows);
    if (!formSet.ok) {
      leftOut.push({ marks, columns: rows.length, why: formSet.failure });
      continue;
    }
    const { section, formHeight, cutting, panels } = formSet.value;
    const faces = FACES.filter((face) => !first.reused.includes(face));
    const some = faces.length < ALL_FACES ? faces.join("") : null;
    const size = `${section.width}x${section.depth}x${formHeight}${some === null ? "" : ` ${some}`}`;
    const own = { columns: rows.length, columnIds: rows.map(({ id }) => id), toCut: rows.filter(({ done }) => done === 0).length, faces: some, cutting: some === null ? cutting : forFaces(cutting, faces), panels: panels.filter(({ face }) => faces.includes(face)).map(({ face, width, height }) => ({ face, widthMm: width, heightMm: height })) };
    groups.push({ size, marks, widthMm: section.width, depthMm: section.depth, heightMm: formHeight, ...own });
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
    const total = (of: "columns" | "toCut") => same.reduce((sum, group) => sum + group[of], 0);
    return [{ ...first, marks, columns: total("columns"), columnIds: same.flatMap(({ columnIds }) => columnIds), toCut: total("toCut") }];
  }).sort((a, b) => naturalOrder(a.marks[0] ?? "", b.marks[0] ?? "") || naturalOrder(a.size, b.size));
}
