import "server-only";
import type { Followed, Shortfall } from "#lib/trade/gear/follow-ticks.ts";
import type { Item, Line, TickKind } from "#lib/trade/gear/ledger.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";
import type { PlaceRow } from "../ledger/ledger-store.ts";

type Known = { readonly columnId: string } & Followed;
type Noted = { readonly columnId: string; readonly kind: TickKind; readonly about: Shortfall["about"] };

/** Null where the project keeps no gear: then ticks cost this one question. Otherwise what followed from ticks of the columns. */
export async function listFollowed(scope: ProjectScope, columnIds: readonly string[]): Promise<{ followed: readonly Known[]; noted: readonly Noted[] } | null> {
  const [row] = await scope.tx.$queryRaw<{ keeps: boolean; followed: readonly Known[] | null; noted: readonly Noted[] | null }[]>`
    with here as (select ${scope.companyId}::uuid company_id, ${scope.projectId}::uuid project_id)
    select exists (select from gear_movement m, here where m.company_id = here.company_id and m.project_id = here.project_id) keeps,
      (select json_agg(json_build_object('id', m.id, 'columnId', m.column_id, 'kind', m.kind,
          'happenedAt', to_char(m.happened_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'),
          'lines', (select json_agg(json_build_object('itemId', l.item_id, 'placeId', l.place_id, 'quantity', l.quantity))
            from gear_line l where l.company_id = m.company_id and l.movement_id = m.id)) order by m.seq)
        from gear_movement m, here where m.company_id = here.company_id and m.project_id = here.project_id and m.column_id = any(${[...columnIds]}::uuid[])
          and m.site_event_id is not null and m.kind in ('stood', 'clamped', 'stripped')
          and not exists (select from gear_movement r where r.company_id = m.company_id and r.reverses_id = m.id)) followed,
      (select json_agg(json_build_object('columnId', s.column_id, 'kind', s.kind, 'about', s.about))
        from gear_shortfall s, here where s.company_id = here.company_id and s.project_id = here.project_id and s.column_id = any(${[...columnIds]}::uuid[])
          and s.settled_as is distinct from 'gone' and (s.about = 'not in the ledger' or s.settled_at is null)) noted`;
  return row?.keeps === true ? { followed: row.followed ?? [], noted: row.noted ?? [] } : null;
}

/** The panels of the sets assigned to columns. */
export const listAssignedPanels = (scope: ProjectScope, columnIds: readonly string[]) =>
  scope.tx.$queryRaw<{ columnId: string; itemId: string }[]>`
    select a.column_id::text "columnId", p.item_id::text "itemId" from gear_assignment a
    join gear_set_panel p on p.company_id = a.company_id and p.project_id = a.project_id and p.set_id = a.set_id
    where a.company_id = ${scope.companyId}::uuid and a.project_id = ${scope.projectId}::uuid and a.withdrawn_at is null
      and a.column_id = any(${[...columnIds]}::uuid[]) order by p.face`;

type ClampItem = { readonly id: string; readonly family: Item["family"]; readonly clampKindId: string | null; readonly wedgesEach: number | null };
/** What stands for each clamp kind in the ledger, and for its wedges. */
export const listClampItems = (scope: ProjectScope) =>
  scope.tx.$queryRaw<ClampItem[]>`
    select id::text, family, clamp_kind_id::text "clampKindId", wedges_each "wedgesEach" from gear_item
    where company_id = ${scope.companyId}::uuid and retired_at is null and (family = 'wedge' or (family = 'clamp set' and clamp_kind_id is not null)) order by id`;

/** The places of columns; those that have none yet get one. */
export async function columnPlaces(scope: ProjectScope, columnIds: readonly string[]): Promise<PlaceRow[]> {
  const rows = columnIds.map((columnId) => ({ id: newId(), columnId }));
  await scope.tx.$executeRaw`
    insert into gear_place (company_id, id, kind, name, project_id, column_id)
    select c.company_id, p.id, 'column', c.grid_ref, c.project_id, c.id
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as p(id uuid, "columnId" uuid)
    join column_lift c on c.company_id = ${scope.companyId}::uuid and c.project_id = ${scope.projectId}::uuid and c.id = p."columnId"
    where not exists (select from gear_place g where g.company_id = c.company_id and g.project_id = c.project_id and g.column_id = c.id)
    on conflict do nothing`;
  return scope.tx.$queryRaw<PlaceRow[]>`
    select id::text, name, kind, project_id::text "projectId", column_id::text "columnId" from gear_place
    where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid and column_id = any(${[...columnIds]}::uuid[])`;
}

/** Held until the transaction ends: what lies at the columns, and of the items what lies where it could be taken from or go back to. */
export const holdForTicks = (scope: ProjectScope, at: { columnPlaceIds: readonly string[]; itemIds: readonly string[]; handPlaceIds: readonly string[] }) =>
  scope.tx.$queryRaw<Line[]>`
    select item_id::text "itemId", place_id::text "placeId", quantity from gear_balance
    where company_id = ${scope.companyId}::uuid and (place_id = any(${[...at.columnPlaceIds]}::uuid[])
      or (item_id = any(${[...at.itemIds]}::uuid[]) and place_id = any(${[...at.handPlaceIds]}::uuid[])))
    order by company_id, item_id, place_id for update`;

export async function addShortfalls(scope: ProjectScope, shortfalls: readonly Shortfall[]): Promise<void> {
  const rows = shortfalls.map((shortfall) => ({ ...shortfall, id: newId() }));
  await scope.tx.$executeRaw`
    insert into gear_shortfall (company_id, project_id, id, about, kind, column_id, site_event_id, item_id, quantity, noticed_at)
    select ${scope.companyId}::uuid, ${scope.projectId}::uuid, id, about, kind, "columnId", "siteEventId", "itemId", quantity, ${scope.now}::timestamptz
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as s(id uuid, about text, kind text, "columnId" uuid, "siteEventId" uuid, "itemId" uuid, quantity int)`;
}

/** A discrepancy of a tick that was taken back is none any more. */
export async function closeGone(scope: ProjectScope, gone: readonly { readonly columnId: string; readonly kind: TickKind }[]): Promise<void> {
  await scope.tx.$executeRaw`
    update gear_shortfall s set settled_at = ${scope.now}::timestamptz, settled_as = 'gone', settled_by_id = ${scope.member.id}::uuid
    from jsonb_to_recordset(${JSON.stringify(gone)}::jsonb) as g("columnId" uuid, kind text)
    where s.company_id = ${scope.companyId}::uuid and s.project_id = ${scope.projectId}::uuid and s.column_id = g."columnId" and s.kind = g.kind
      and s.about = 'not in the ledger' and s.settled_at is null`;
}

/** What the form set of each column is designed from. */
export const listLifts = (scope: ProjectScope, columnIds: readonly string[]) =>
  scope.tx.column.findMany({
    where: { companyId: scope.companyId, projectId: scope.projectId, id: { in: [...columnIds] } }, include: { mark: true, fromLevel: true, toLevel: true },
  });

/** Rectangular columns not stood yet and without a set, the same way. */
export const listColumnsWithoutSet = (scope: ProjectScope) =>
  scope.tx.column.findMany({
    where: { companyId: scope.companyId, projectId: scope.projectId, removedAt: null, shape: "rectangle", done: { lt: 2 }, gearAssignments: { none: { withdrawnAt: null } } },
    include: { mark: true, fromLevel: true, toLevel: true },
  });

/** The first column a form stands on, or is clamped on, with what was brought there; null where nothing of it is in use. Bits of `done`: 2 stood, 4 clamped. */
export async function findStandingOn(scope: ProjectScope, lines: readonly Line[]): Promise<{ readonly column: string; readonly item: string } | null> {
  const [row] = await scope.tx.$queryRaw<{ column: string; item: string }[]>`
    select c.grid_ref "column", i.name item
    from jsonb_to_recordset(${JSON.stringify(lines)}::jsonb) as l("itemId" uuid, "placeId" uuid)
    join gear_item i on i.company_id = ${scope.companyId}::uuid and i.id = l."itemId"
    join gear_place p on p.company_id = i.company_id and p.id = l."placeId"
    join column_lift c on c.company_id = p.company_id and c.project_id = p.project_id and c.id = p.column_id
    where c.done & (case i.family when 'panel' then 2 else 4 end) <> 0 order by c.grid_ref, i.name limit 1`;
  return row ?? null;
}
