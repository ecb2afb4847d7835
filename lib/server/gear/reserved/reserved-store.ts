import "server-only";
import type { Binding, Ending, Reserved } from "#lib/trade/gear/reserved.ts";
import type { CompanyScope, ProjectScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";

export type ReservedRow = Reserved & {
  readonly gridRef: string; readonly level: string; readonly levelId: string; readonly panel: string | null; readonly after: string | null; readonly afterLevel: string | null;
  readonly acceptedAt: string; readonly acceptedBy: string;
  /** The day its column is planned to be stood, and the set it has already. */
  readonly stoodOn: string | null; readonly set: string | null;
};

/** What is spoken for in the project and has not ended, by column and face; of the columns named, or of all. */
export const listReserved = (scope: ProjectScope, columnIds: readonly string[] | null = null) =>
  scope.tx.$queryRaw<ReservedRow[]>`
    select r.id::text, r.column_id::text "columnId", r.face, r.width_mm "widthMm", r.height_mm "heightMm", r.source, r.item_id::text "itemId",
      r.after_column_id::text "afterColumnId", r.after_face "afterFace", r.cut_down "cutDown", c.grid_ref "gridRef", l.name level, l.id::text "levelId", i.name panel,
      e.grid_ref "after", m.name "afterLevel", to_char(r.accepted_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') "acceptedAt", w.name "acceptedBy",
      to_char(d.stood_on, 'YYYY-MM-DD') "stoodOn", s.name "set"
    from panel_reservation r
    join column_lift c on c.company_id = r.company_id and c.project_id = r.project_id and c.id = r.column_id
    join level l on l.company_id = c.company_id and l.project_id = c.project_id and l.id = c.from_level_id
    join person w on w.company_id = r.company_id and w.id = r.accepted_by_id
    left join planned_days d on d.company_id = c.company_id and d.project_id = c.project_id and d.column_id = c.id
    left join gear_assignment a on a.company_id = c.company_id and a.project_id = c.project_id and a.column_id = c.id and a.withdrawn_at is null
    left join gear_form_set s on s.company_id = a.company_id and s.project_id = a.project_id and s.id = a.set_id
    left join gear_item i on i.company_id = r.company_id and i.id = r.item_id
    left join column_lift e on e.company_id = r.company_id and e.project_id = r.project_id and e.id = r.after_column_id
    left join level m on m.company_id = e.company_id and m.project_id = e.project_id and m.id = e.from_level_id
    where r.company_id = ${scope.companyId}::uuid and r.project_id = ${scope.projectId}::uuid and r.ended_at is null
      and (${columnIds === null ? null : [...columnIds]}::uuid[] is null or r.column_id = any(${columnIds === null ? null : [...columnIds]}::uuid[]))
    order by l.elevation_mm, c.grid_ref, c.id, r.face`;

export type Holder = { readonly id: string; readonly projectId: string; readonly project: string; readonly itemId: string; readonly panel: string; readonly columnId: string; readonly column: string; readonly level: string; readonly face: string };
/** Who holds panels of the company, in whichever project; those named, or all. */
export const listHolders = (scope: CompanyScope, itemIds: readonly string[] | null) =>
  scope.tx.$queryRaw<Holder[]>`
    select r.id::text, r.project_id::text "projectId", p.name project, r.item_id::text "itemId", i.name panel, c.id::text "columnId", c.grid_ref "column", l.name level, r.face
    from panel_reservation r
    join project p on p.company_id = r.company_id and p.id = r.project_id
    join gear_item i on i.company_id = r.company_id and i.id = r.item_id
    join column_lift c on c.company_id = r.company_id and c.project_id = r.project_id and c.id = r.column_id
    join level l on l.company_id = c.company_id and l.project_id = c.project_id and l.id = c.from_level_id
    where r.company_id = ${scope.companyId}::uuid and r.ended_at is null
      and (${itemIds === null ? null : [...itemIds]}::uuid[] is null or r.item_id = any(${itemIds === null ? null : [...itemIds]}::uuid[]))`;

export type NewReserved = Omit<Reserved, "id">;

/** Keeps the lines, and answers the ones the database refused because somebody was first. */
export async function addReserved(scope: ProjectScope, lines: readonly NewReserved[]): Promise<NewReserved[]> {
  // In one order of panels, so that two who reserve the same ones do not wait for each other.
  const rows = lines.map((line) => ({ ...line, id: newId() })).sort((a, b) => (a.itemId ?? "").localeCompare(b.itemId ?? ""));
  const kept = await scope.tx.$queryRaw<{ columnId: string; face: string }[]>`
    insert into panel_reservation (company_id, project_id, id, column_id, face, width_mm, height_mm, source, item_id, after_column_id, after_face, cut_down, accepted_at, accepted_by_id)
    select ${scope.companyId}::uuid, ${scope.projectId}::uuid, id, "columnId", face, "widthMm", "heightMm", source, "itemId", "afterColumnId", "afterFace", "cutDown", ${scope.now}::timestamptz, ${scope.member.id}::uuid
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as r(id uuid, "columnId" uuid, face text, "widthMm" int, "heightMm" int, source text, "itemId" uuid,
      "afterColumnId" uuid, "afterFace" text, "cutDown" boolean)
    on conflict do nothing returning column_id::text "columnId", face`;
  return lines.filter((line) => !kept.some(({ columnId, face }) => columnId === line.columnId && face === line.face));
}

export const endReserved = (scope: ProjectScope, ids: readonly string[], as: Ending["as"] | "withdrawn" | "superseded", reason: string | null) =>
  scope.tx.panelReservation.updateMany({
    where: { companyId: scope.companyId, projectId: scope.projectId, id: { in: [...ids] }, endedAt: null },
    data: { endedAt: scope.now, endedById: scope.member.id, endedAs: as, reason },
  });

export const bindReserved = (scope: ProjectScope, { id, itemId }: { readonly id: string; readonly itemId: Binding["itemId"] | null }) =>
  scope.tx.panelReservation.updateMany({ where: { companyId: scope.companyId, projectId: scope.projectId, id, endedAt: null }, data: { itemId } });

/** Columns with the panels of the set assigned to them, by face. */
export const listReservedColumns = (scope: ProjectScope, columnIds: readonly string[]) =>
  scope.tx.$queryRaw<{ id: string; done: number; isRemoved: boolean; assignmentId: string | null; setId: string | null; setItems: Record<string, string> | null }[]>`
    select c.id::text, c.done, c.removed_at is not null "isRemoved", a.id::text "assignmentId", a.set_id::text "setId",
      (select json_object_agg(p.face, p.item_id) from gear_set_panel p where p.company_id = a.company_id and p.project_id = a.project_id and p.set_id = a.set_id) "setItems"
    from column_lift c
    left join gear_assignment a on a.company_id = c.company_id and a.project_id = c.project_id and a.column_id = c.id and a.withdrawn_at is null
    where c.company_id = ${scope.companyId}::uuid and c.project_id = ${scope.projectId}::uuid and c.id = any(${[...columnIds]}::uuid[])`;

/** The panel that last served a face of each column by a reservation. */
export const listServed = (scope: ProjectScope, columnIds: readonly string[]) =>
  scope.tx.$queryRaw<{ columnId: string; face: string; itemId: string }[]>`
    select distinct on (column_id, face) column_id::text "columnId", face, item_id::text "itemId" from panel_reservation
    where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid and ended_as = 'served' and column_id = any(${[...columnIds]}::uuid[])
    order by column_id, face, ended_at desc`;

/** Columns that went back from being stood wait again for what had served them; what was to follow waits behind them. */
export async function reopenServed(scope: ProjectScope): Promise<void> {
  const back = await scope.tx.$queryRaw<{ id: string; columnId: string; face: string; itemId: string }[]>`
    select distinct on (r.column_id, r.face) r.id::text, r.column_id::text "columnId", r.face, r.item_id::text "itemId" from panel_reservation r
    join column_lift c on c.company_id = r.company_id and c.project_id = r.project_id and c.id = r.column_id
    where r.company_id = ${scope.companyId}::uuid and r.project_id = ${scope.projectId}::uuid and r.ended_as = 'served' and c.done < 2 and c.removed_at is null
      and not exists (select from panel_reservation o where o.company_id = r.company_id and o.project_id = r.project_id and o.column_id = r.column_id and o.face = r.face and o.ended_at is null)
    order by r.column_id, r.face, r.ended_at desc`;
  for (const { id, columnId, face, itemId } of back) {
    const { tx, companyId, projectId } = scope;
    await tx.panelReservation.updateMany({ where: { companyId, projectId, afterColumnId: columnId, afterFace: face, endedAt: null }, data: { itemId: null } });
    if ((await tx.panelReservation.count({ where: { companyId, itemId, endedAt: null } })) > 0) continue;
    await tx.panelReservation.updateMany({ where: { companyId, projectId, id }, data: { endedAt: null, endedById: null, endedAs: null, reason: null } });
  }
}

export type FallenRow = { readonly columnId: string; readonly gridRef: string; readonly level: string; readonly face: string; readonly reason: string; readonly at: string };
/** Faces whose panel fell out and that nothing has taken the place of: not stood, no set, nothing reserved since. */
export const listFallen = (scope: ProjectScope, columnId: string | null = null) =>
  scope.tx.$queryRaw<FallenRow[]>`
    select x.* from (
      select distinct on (r.column_id, r.face) r.column_id::text "columnId", c.grid_ref "gridRef", l.name level, r.face, r.ended_as, r.reason,
        to_char(r.ended_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') at, l.elevation_mm
      from panel_reservation r
      join column_lift c on c.company_id = r.company_id and c.project_id = r.project_id and c.id = r.column_id
      join level l on l.company_id = c.company_id and l.project_id = c.project_id and l.id = c.from_level_id
      where r.company_id = ${scope.companyId}::uuid and r.project_id = ${scope.projectId}::uuid and c.removed_at is null and c.done < 2
        and (${columnId}::uuid is null or c.id = ${columnId}::uuid)
        and not exists (select from gear_assignment a where a.company_id = c.company_id and a.project_id = c.project_id and a.column_id = c.id and a.withdrawn_at is null)
      order by r.column_id, r.face, r.ended_at desc nulls first) x
    where x.ended_as = 'fallen' order by x.elevation_mm, x."gridRef", x.face`;

/** Whether anything is spoken for, or served a column that may still go back: else there is nothing to settle. */
export async function hasReserved(scope: ProjectScope): Promise<boolean> {
  const [row] = await scope.tx.$queryRaw<{ has: boolean }[]>`
    select exists (select from panel_reservation where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid and (ended_at is null or ended_as = 'served')) has`;
  return row?.has === true;
}
