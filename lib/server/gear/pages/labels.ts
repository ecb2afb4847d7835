import "server-only";
import { labelledInput, labelsInput, type LabelKind } from "#lib/contracts/gear.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { panelLife } from "#lib/trade/gear/panel-life.ts";
import { findColumn } from "../../columns/store.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { projectHead } from "../../projects/project-head.ts";
import { listLevels, readProject } from "../../projects/store.ts";
import { listPanels } from "../panels/panel-store.ts";
import { findSet, listSets } from "../panels/set-store.ts";
import { listColumnsOfLevel } from "./label-store.ts";

type Labelled = {
  readonly id: string; readonly name: string; readonly size: { readonly widthMm: number; readonly heightMm: number } | null;
  readonly panels: readonly string[]; readonly level: string | null; readonly mark: string | null;
};
type LevelOf = { readonly id: string; readonly name: string };
const NO_MORE = { size: null, panels: [], level: null, mark: null } as const;

/** What can carry a label: panels still in use, sets, or the columns of one level. */
export const listLabels = projectUseCase("gear.listLabels", "gear.read", labelsInput, async (scope, { kind, levelId }) => {
  const levels = (await listLevels(scope)).slice(0, -1).map(({ id, name }): LevelOf => ({ id, name }));
  const level = levelId === undefined ? levels[0] : levels.find(({ id }) => id === levelId);
  if (kind === "column" && levelId !== undefined && !level) return notFound("level");
  const labels = (await listOf[kind](scope, level)).sort((a, b) => naturalOrder(a.name, b.name));
  return ok({ project: projectHead(await readProject(scope)), kind, levels, levelId: level?.id ?? null, labels });
});
export type LabelsPage = Extract<Awaited<ReturnType<typeof listLabels>>, { ok: true }>["value"];

const listOf: Readonly<Record<LabelKind, (scope: ProjectScope, level: LevelOf | undefined) => Promise<Labelled[]>>> = {
  panel: async (scope) =>
    (await listPanels(scope, { projectId: scope.projectId }))
      .filter((panel) => panelLife(panel, panel.events, panel.strippedAt).ended === null)
      .map(({ itemId, name, widthMm, heightMm }) => ({ ...NO_MORE, id: itemId, name, size: { widthMm, heightMm } })),
  set: async (scope) => (await listSets(scope)).map(({ id, name, panels }) => ({ ...NO_MORE, id, name, panels: panels.map(({ panel }) => panel.item.name) })),
  column: async (scope, level) =>
    level ? (await listColumnsOfLevel(scope, level.id)).map(({ id, gridRef, mark }) => ({ ...NO_MORE, id, name: gridRef, level: level.name, mark: mark.name })) : [],
};

/** Whether what a scanned label names is there: nothing but the answer, the page that follows shows the rest. */
export const findLabelled = projectUseCase("gear.findLabelled", "gear.read", labelledInput, async (scope, { kind, id }) => {
  if (!(await isThere[kind](scope, id))) return notFound(kind === "set" ? "form set" : kind);
  return ok({ kind, id, projectId: scope.projectId });
});

const isThere: Readonly<Record<LabelKind, (scope: ProjectScope, id: string) => Promise<boolean>>> = {
  panel: async (scope, id) => {
    const [panel] = await listPanels(scope, { itemIds: [id] });
    return panel !== undefined && (panel.placeProjectId === null || panel.placeProjectId === scope.projectId);
  },
  set: async (scope, id) => (await findSet(scope, id)) !== null,
  column: async (scope, id) => (await findColumn(scope, id)) !== null,
};
