import "server-only";
import type { Prisma } from "#prisma/generated/client.ts";
import type { ProjectScope } from "../gate/scope.ts";

const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });

/** One row of the columns sheet, as PostgreSQL writes it: see `SheetRow` in contracts/columns-sheet.ts. */
export async function sheetRowsJson(scope: ProjectScope): Promise<string> {
  const rows = await scope.tx.$queryRaw<{ rows: string }[]>`
    select coalesce(json_agg(json_build_array(
      id, grid_ref, mark_id, grid_x_id, grid_y_id, from_level_id, to_level_id,
      case shape when 'circle' then 1 else 0 end, width_mm, depth_mm, done, flagged::int, form_height_mm,
      case headed_by when 'beam' then 1 else 0 end) order by id), '[]')::text as rows
    from column_lift
    where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid and removed_at is null`;
  return rows[0]?.rows ?? "[]";
}

export const findColumn = (scope: ProjectScope, columnId: string) =>
  scope.tx.column.findFirst({
    where: { ...within(scope), id: columnId, removedAt: null },
    include: { mark: true, fromLevel: true, toLevel: true, gridX: true, gridY: true },
  });
export type ColumnRow = NonNullable<Awaited<ReturnType<typeof findColumn>>>;

export type NewColumn = {
  id: string; markId: string; gridRef: string; gridXId: string | null; gridYId: string | null; fromLevelId: string; toLevelId: string;
  shape: string; widthMm: number; depthMm: number; headedBy: string; formHeightMm: number | null;
  concrete?: string | null; mainBars?: string | null; remarks?: string | null;
};

/** Any number of columns in one statement. */
export async function addColumnRows(scope: ProjectScope, rows: readonly NewColumn[]): Promise<void> {
  await scope.tx.$executeRaw`
    insert into column_lift (company_id, project_id, id, mark_id, grid_ref, grid_x_id, grid_y_id, from_level_id, to_level_id,
      shape, width_mm, depth_mm, form_height_mm, headed_by, concrete, main_bars, remarks)
    select ${scope.companyId}::uuid, ${scope.projectId}::uuid, id, "markId", "gridRef", "gridXId", "gridYId", "fromLevelId",
      "toLevelId", shape, "widthMm", "depthMm", "formHeightMm", "headedBy", concrete, "mainBars", remarks
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as c(id uuid, "markId" uuid, "gridRef" text, "gridXId" uuid,
      "gridYId" uuid, "fromLevelId" uuid, "toLevelId" uuid, shape text, "widthMm" float8, "depthMm" float8, "formHeightMm" int,
      "headedBy" text, concrete text, "mainBars" text, remarks text)`;
}

/** The other lifts at the same grid position, lowest first. */
export const listStack = (scope: ProjectScope, gridRef: string) =>
  scope.tx.column.findMany({
    where: { ...within(scope), gridRef, removedAt: null },
    orderBy: { fromLevel: { elevationMm: "asc" } },
    select: { id: true, shape: true, widthMm: true, depthMm: true, done: true, flagged: true, fromLevel: { select: { name: true } } },
  });

export const listTaken = (scope: ProjectScope, fromLevelId: string) =>
  scope.tx.column.findMany({ where: { ...within(scope), fromLevelId, removedAt: null }, select: { gridRef: true } });

export async function changeColumnRow(scope: ProjectScope, columnId: string, version: number, data: Prisma.ColumnUpdateManyMutationInput) {
  const changed = await scope.tx.column.updateMany({
    where: { ...within(scope), id: columnId, version, removedAt: null },
    data: { ...data, version: { increment: 1 } },
  });
  return changed.count === 1;
}

export const listColumnsOf = (scope: ProjectScope, where: { markId?: string; fromLevelIds?: readonly string[]; ids?: readonly string[] }) =>
  scope.tx.column.findMany({
    where: {
      ...within(scope), removedAt: null,
      ...(where.markId === undefined ? {} : { markId: where.markId }),
      ...(where.fromLevelIds === undefined ? {} : { fromLevelId: { in: [...where.fromLevelIds] } }),
      ...(where.ids === undefined ? {} : { id: { in: [...where.ids] } }),
    },
    select: { id: true, gridRef: true, done: true },
  });

export const changeColumnRows = (scope: ProjectScope, ids: readonly string[], data: Prisma.ColumnUpdateManyMutationInput) =>
  scope.tx.column.updateMany({
    where: { ...within(scope), id: { in: [...ids] }, removedAt: null },
    data: { ...data, version: { increment: 1 } },
  });

export const listChangesOf = (scope: ProjectScope, columnId: string) =>
  scope.tx.changeLine.findMany({
    where: { ...within(scope), kind: "schedule", columnIds: { has: columnId } },
    orderBy: { seq: "asc" },
    select: { seq: true, at: true, detail: true, person: { select: { name: true } } },
  });
