import "server-only";
import type { ProjectScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";

const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });

export const listSets = (scope: ProjectScope) =>
  scope.tx.gearFormSet.findMany({
    where: { ...within(scope), retiredAt: null }, orderBy: { name: "asc" },
    select: {
      id: true, name: true,
      panels: { orderBy: { face: "asc" }, select: { face: true, itemId: true, panel: { select: { widthMm: true, heightMm: true, item: { select: { name: true } } } } } },
      assignments: {
        where: { withdrawnAt: null }, orderBy: { assignedAt: "desc" }, take: 20,
        select: { id: true, columnId: true, assignedAt: true, column: { select: { gridRef: true, done: true, fromLevel: { select: { name: true } } } } },
      },
    },
  });
export type SetRow = Awaited<ReturnType<typeof listSets>>[number];

/** Writes a set with its panels; false when there is no such set to change. */
export async function writeSet(scope: ProjectScope, setId: string | undefined, name: string, panels: readonly { face: string; itemId: string }[]): Promise<string | null> {
  const { tx, companyId, projectId } = scope;
  const id = setId ?? newId();
  if (setId === undefined) await tx.gearFormSet.create({ data: { companyId, projectId, id, name } });
  else if ((await tx.gearFormSet.updateMany({ where: { companyId, projectId, id, retiredAt: null }, data: { name } })).count === 0) return null;
  await tx.gearSetPanel.deleteMany({ where: { companyId, projectId, setId: id } });
  if (panels.length > 0) await tx.gearSetPanel.createMany({ data: panels.map((panel) => ({ ...panel, companyId, projectId, setId: id })) });
  return id;
}

export const findSet = (scope: ProjectScope, setId: string) =>
  scope.tx.gearFormSet.findFirst({ where: { ...within(scope), id: setId, retiredAt: null }, include: { panels: { include: { panel: true } } } });

export const addAssignment = (scope: ProjectScope, row: { setId: string; columnId: string; assignedAt: string; cutEventId: string | null }) =>
  scope.tx.gearAssignment.create({ data: { ...row, ...within(scope), id: newId(), byPersonId: scope.member.id }, select: { id: true } });

export const findAssignment = (scope: ProjectScope, id: string) =>
  scope.tx.gearAssignment.findFirst({ where: { ...within(scope), id, withdrawnAt: null }, include: { column: { select: { gridRef: true, done: true } } } });

export const endAssignment = (scope: ProjectScope, id: string) =>
  scope.tx.gearAssignment.updateMany({ where: { ...within(scope), id, withdrawnAt: null }, data: { withdrawnAt: scope.now } });
