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

/** Panels of sets that are assigned to a column which is not stripped yet: they are not free to go into another set. */
export const listHeldPanels = (scope: ProjectScope) =>
  scope.tx.$queryRaw<{ itemId: string; columnId: string; setId: string; column: string; level: string }[]>`
    select p.item_id::text "itemId", c.id::text "columnId", a.set_id::text "setId", c.grid_ref "column", l.name level from gear_assignment a
    join gear_set_panel p on p.company_id = a.company_id and p.project_id = a.project_id and p.set_id = a.set_id
    join column_lift c on c.company_id = a.company_id and c.project_id = a.project_id and c.id = a.column_id
    join level l on l.company_id = c.company_id and l.project_id = c.project_id and l.id = c.from_level_id
    where a.company_id = ${scope.companyId}::uuid and a.project_id = ${scope.projectId}::uuid and a.withdrawn_at is null and (c.done & 32) = 0 and c.removed_at is null`;

/** The set these panels make by their faces, which may be there already; else a new one, under the next number free. */
export async function makeSetOf(scope: ProjectScope, panels: readonly { readonly face: string; readonly itemId: string }[]): Promise<{ id: string; name: string }> {
  const sets = await listSets(scope);
  const known = sets.find((set) => set.panels.length === panels.length && set.panels.every(({ face, itemId }) => panels.some((each) => each.face === face && each.itemId === itemId)));
  if (known) return known;
  const { tx, companyId, projectId } = scope;
  const itemIds = panels.map(({ itemId }) => itemId);
  await tx.gearSetPanel.deleteMany({ where: { companyId, itemId: { in: itemIds } } });
  const emptied = sets.filter((set) => set.panels.length > 0 && set.panels.every(({ itemId }) => itemIds.includes(itemId)));
  await tx.gearFormSet.updateMany({ where: { ...within(scope), id: { in: emptied.map(({ id }) => id) } }, data: { retiredAt: scope.now } });
  const numbers = (await tx.gearFormSet.findMany({ where: within(scope), select: { name: true } })).map(({ name }) => Number(/^S-(\d+)$/i.exec(name)?.[1] ?? 0));
  const name = `S-${Math.max(0, ...numbers) + 1}`;
  const id = newId();
  await tx.gearFormSet.create({ data: { companyId, projectId, id, name } });
  await tx.gearSetPanel.createMany({ data: panels.map(({ face, itemId }) => ({ companyId, projectId, setId: id, face, itemId })) });
  return { id, name };
}
