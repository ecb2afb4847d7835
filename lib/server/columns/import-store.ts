import "server-only";
import type { KnownColumn, KnownSchedule } from "#lib/trade/schedule/compare-schedule.ts";
import { placeOf, stageOf } from "#lib/trade/progress/stages.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { listGridLines, listLevels, listMarks } from "../projects/store.ts";

type Row = Omit<KnownColumn, "stage"> & { done: number };

/** The project as a schedule is compared with it. */
export async function readKnownSchedule(scope: ProjectScope): Promise<KnownSchedule> {
  const columns = await scope.tx.$queryRaw<Row[]>`
    select c.id::text, c.grid_ref "gridRef", m.name mark, f.name "fromLevel", t.name "toLevel", c.shape, c.width_mm, c.depth_mm, c.done
    from column_lift c
    join column_mark m on m.company_id = c.company_id and m.project_id = c.project_id and m.id = c.mark_id
    join level f on f.company_id = c.company_id and f.project_id = c.project_id and f.id = c.from_level_id
    join level t on t.company_id = c.company_id and t.project_id = c.project_id and t.id = c.to_level_id
    where c.company_id = ${scope.companyId}::uuid and c.project_id = ${scope.projectId}::uuid and c.removed_at is null
    order by c.id`;
  return {
    levels: (await listLevels(scope)).map(({ id, name, elevationMm }) => ({ id, name, elevation_mm: elevationMm })),
    gridLines: (await listGridLines(scope)).map(({ name }) => ({ name })),
    marks: (await listMarks(scope)).map(({ name }) => ({ name })),
    columns: columns.map(({ done, ...column }) => ({ ...column, stage: placeOf(stageOf(done)) + 1 })),
  };
}

type NewLevel = { id: string; name: string; elevationMm: number };
type NewGridLine = { id: string; axis: string; name: string; offsetMm: number };
type NewMark = { id: string; name: string; shape: string; widthMm: number; depthMm: number };

export async function addSetUpRows(scope: ProjectScope, rows: { levels: NewLevel[]; gridLines: NewGridLine[]; marks: NewMark[] }): Promise<void> {
  const within = { companyId: scope.companyId, projectId: scope.projectId };
  await scope.tx.level.createMany({ data: rows.levels.map((row) => ({ ...row, ...within })) });
  await scope.tx.gridLine.createMany({ data: rows.gridLines.map((row) => ({ ...row, ...within })) });
  await scope.tx.columnMark.createMany({ data: rows.marks.map((row) => ({ ...row, ...within })) });
}

/** Two steps, because a level may move to where another still stands. */
export async function moveLevels(scope: ProjectScope, moves: readonly { id: string; elevationMm: number }[]): Promise<void> {
  const wanted = JSON.stringify(moves);
  const shift = async (offset: number): Promise<void> => {
    await scope.tx.$executeRaw`
      update level set elevation_mm = w."elevationMm" + ${offset}::int
      from jsonb_to_recordset(${wanted}::jsonb) as w(id uuid, "elevationMm" int)
      where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid and level.id = w.id`;
  };
  await shift(-100_000_000);
  await shift(0);
}

export type ColumnPatch = { id: string; markId?: string; shape?: string; widthMm?: number; depthMm?: number; toLevelId?: string };

export async function patchColumns(scope: ProjectScope, patches: readonly ColumnPatch[]): Promise<void> {
  await scope.tx.$executeRaw`
    update column_lift set mark_id = coalesce(p."markId", mark_id), shape = coalesce(p.shape, column_lift.shape),
      width_mm = coalesce(p."widthMm", width_mm), depth_mm = coalesce(p."depthMm", depth_mm),
      to_level_id = coalesce(p."toLevelId", to_level_id), version = version + 1
    from jsonb_to_recordset(${JSON.stringify(patches)}::jsonb) as p(id uuid, "markId" uuid, shape text, "widthMm" float8, "depthMm" float8, "toLevelId" uuid)
    where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid and column_lift.id = p.id`;
}

type Imported = { id: string; fileName: string; sha256: string; layout: string; file: Uint8Array; created: number; changed: number };
export const addImport = (scope: ProjectScope, row: Imported) =>
  scope.tx.scheduleImport.create({
    data: { ...row, file: Uint8Array.from(row.file), companyId: scope.companyId, projectId: scope.projectId, importedBy: scope.member.id, importedAt: scope.now },
    select: { id: true },
  });

export const findImport = (scope: ProjectScope, importId: string) =>
  scope.tx.scheduleImport.findFirst({
    where: { companyId: scope.companyId, projectId: scope.projectId, id: importId },
    select: { fileName: true, file: true },
  });
