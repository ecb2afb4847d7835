import "server-only";
import type { PlannedAndRecorded } from "#lib/trade/planning/pours/column-days.ts";
import type { ProjectScope } from "../gate/scope.ts";

export type PlannedColumn = PlannedAndRecorded & {
  readonly id: string; readonly gridRef: string; readonly mark: string; readonly levelId: string; readonly level: string;
  readonly elevationMm: number; readonly pour: string | null; readonly done: number;
};

/** Every column that is still in the schedule, or those of one level, with its planned days and what is recorded; lowest level first. */
export const listPlannedColumns = (scope: ProjectScope, levelId: string | null = null): Promise<PlannedColumn[]> =>
  scope.tx.$queryRaw<PlannedColumn[]>`
    select c.id::text, c.grid_ref "gridRef", m.name mark, l.id::text "levelId", l.name level, l.elevation_mm "elevationMm", c.done,
           p.pour, p.stood_on::text "plannedStoodOn", p.poured_on::text "plannedPouredOn",
           c.state #>> '{reached,stood,at}' "stoodAt", c.state #>> '{reached,poured,at}' "pouredAt", c.state #>> '{reached,stripped,at}' "strippedAt"
    from column_lift c
    join level l on l.company_id = c.company_id and l.project_id = c.project_id and l.id = c.from_level_id
    join column_mark m on m.company_id = c.company_id and m.project_id = c.project_id and m.id = c.mark_id
    left join planned_days p on p.company_id = c.company_id and p.project_id = c.project_id and p.column_id = c.id
    where c.company_id = ${scope.companyId}::uuid and c.project_id = ${scope.projectId}::uuid and c.removed_at is null
      and (${levelId}::uuid is null or c.from_level_id = ${levelId}::uuid)
    order by l.elevation_mm, c.grid_ref, c.id`;

export type PlannedDaysRow = { readonly columnId: string; readonly pour: string | null; readonly stoodOn: string | null; readonly pouredOn: string | null };

export async function writePlannedDays(scope: ProjectScope, rows: readonly PlannedDaysRow[]): Promise<void> {
  await scope.tx.$executeRaw`
    insert into planned_days (company_id, project_id, column_id, pour, stood_on, poured_on)
    select ${scope.companyId}::uuid, ${scope.projectId}::uuid, "columnId", pour, "stoodOn", "pouredOn"
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as p("columnId" uuid, pour text, "stoodOn" date, "pouredOn" date)
    on conflict (company_id, project_id, column_id)
    do update set pour = excluded.pour, stood_on = excluded.stood_on, poured_on = excluded.poured_on`;
}
