import "server-only";
import type { CompanyScope, ProjectScope } from "../gate/scope.ts";
import type { Prisma } from "#prisma/generated/client.ts";

const key = (scope: ProjectScope) => ({ companyId_id: { companyId: scope.companyId, id: scope.projectId } });
const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });

export const listProjectRows = async (scope: CompanyScope) => {
  const projects = await scope.tx.project.findMany({
    where: { companyId: scope.companyId },
    orderBy: [{ archivedAt: { sort: "asc", nulls: "first" } }, { name: "asc" }],
  });
  const counts = await scope.tx.$queryRaw<{ id: string; done: number; count: number; flagged: number }[]>`
    select project_id::text id, done, count(*)::int count, count(*) filter (where flagged)::int flagged
    from column_lift where company_id = ${scope.companyId}::uuid and removed_at is null group by 1, 2`;
  return projects.map((project) => ({ project, counts: counts.filter((row) => row.id === project.id) }));
};

export type NewProject = {
  id: string; name: string; site: string; timeZone: string; units: string; currency: string; workingDays: number[];
  startsOn: Date | null; progressRule: Prisma.InputJsonValue; shutterRule: Prisma.InputJsonValue; pourConditions: Prisma.InputJsonValue;
};
export const addProjectRow = (scope: CompanyScope, row: NewProject) =>
  scope.tx.project.create({ data: { ...row, companyId: scope.companyId }, select: { id: true } });

export const readProject = (scope: ProjectScope) => scope.tx.project.findUniqueOrThrow({ where: key(scope) });
export type ProjectRow = Awaited<ReturnType<typeof readProject>>;

/** False when somebody else has changed the project since `version` was read. */
export async function changeProjectRow(scope: ProjectScope, version: number, data: Prisma.ProjectUpdateManyMutationInput) {
  const changed = await scope.tx.project.updateMany({
    where: { companyId: scope.companyId, id: scope.projectId, version },
    data: { ...data, version: { increment: 1 } },
  });
  return changed.count === 1;
}

export const setOnProject = (scope: ProjectScope, data: Prisma.ProjectUpdateInput) =>
  scope.tx.project.update({ where: key(scope), data: { ...data, version: { increment: 1 } }, select: { id: true } });

export const listLevels = (scope: ProjectScope) =>
  scope.tx.level.findMany({ where: within(scope), orderBy: { elevationMm: "asc" } });
export type LevelRow = Awaited<ReturnType<typeof listLevels>>[number];

export const listGridLines = (scope: ProjectScope) =>
  scope.tx.gridLine.findMany({ where: within(scope), orderBy: [{ axis: "asc" }, { offsetMm: "asc" }] });
export type GridLineRow = Awaited<ReturnType<typeof listGridLines>>[number];

export const listMarks = (scope: ProjectScope) => scope.tx.columnMark.findMany({ where: within(scope), orderBy: { name: "asc" } });
export type MarkRow = Awaited<ReturnType<typeof listMarks>>[number];

export const listImports = (scope: ProjectScope) =>
  scope.tx.scheduleImport.findMany({
    where: within(scope),
    orderBy: { importedAt: "desc" },
    take: 20,
    select: { id: true, fileName: true, layout: true, created: true, changed: true, importedAt: true, person: { select: { name: true } } },
  });
