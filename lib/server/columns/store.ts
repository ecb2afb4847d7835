import "server-only";
import { quoteByBacktick } from "#lib/contracts/columns-sheet.ts";
import type { Prisma } from "#prisma/generated/client.ts";
import type { ProjectScope } from "../gate/scope.ts";

const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });

export type SheetLists = { readonly levels: readonly { id: string }[]; readonly gridLines: readonly { id: string }[]; readonly marks: readonly { id: string }[] };

/** The rows of the columns sheet as PostgreSQL writes them: see `SheetRow` in contracts/columns-sheet.ts. */
export async function sheetRowsJson(scope: ProjectScope, { levels, gridLines, marks }: SheetLists): Promise<string> {
  const ids = (list: readonly { id: string }[]): string[] => list.map(({ id }) => id);
  const rows = await scope.tx.$queryRaw<{ rows: string }[]>`
    with
      level_place as (select * from unnest(${ids(levels)}::uuid[]) with ordinality as place(id, n)),
      line_place as (select * from unnest(${ids(gridLines)}::uuid[]) with ordinality as place(id, n)),
      mark_place as (select * from unnest(${ids(marks)}::uuid[]) with ordinality as place(id, n))
    select coalesce('[' || string_agg(json_build_array(
      col.id, col.grid_ref, mark.n - 1, x.n - 1, y.n - 1, below.n - 1, above.n - 1,
      case col.shape when 'circle' then 1 else 0 end, col.width_mm, col.depth_mm, col.done, col.flagged::int,
      col.form_height_mm, case col.headed_by when 'beam' then 1 else 0 end)::text, ',' order by col.id) || ']', '[]') as rows
    from column_lift col
      join mark_place mark on mark.id = col.mark_id
      join level_place below on below.id = col.from_level_id
      join level_place above on above.id = col.to_level_id
      left join line_place x on x.id = col.grid_x_id
      left join line_place y on y.id = col.grid_y_id
    where col.company_id = ${scope.companyId}::uuid and col.project_id = ${scope.projectId}::uuid and col.removed_at is null`;
  return quoteByBacktick(rows[0]?.rows ?? "[]");
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
