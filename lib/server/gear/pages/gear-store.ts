import "server-only";
import type { Family, MovementKind, PlaceKind, TickKind } from "#lib/trade/gear/ledger.ts";
import type { Shortfall } from "#lib/trade/gear/follow-ticks.ts";
import type { ProjectScope } from "../../gate/scope.ts";

export type MovementEntry = {
  readonly id: string; readonly seq: number; readonly kind: MovementKind; readonly happenedAt: string; readonly arrivedAt: string; readonly by: string;
  readonly reason: string | null; readonly column: string | null; readonly columnId: string | null; readonly followsTick: boolean;
  readonly reversesId: string | null; readonly reversedById: string | null;
  readonly lines: readonly { readonly itemId: string; readonly item: string; readonly placeId: string; readonly place: string; readonly kind: PlaceKind; readonly quantity: number }[];
};

/** Movements of the project, or of one item wherever it went, or what was gathered lately; the latest keyed first. */
export const listMovements = (scope: ProjectScope, which: { itemId?: string | undefined; before?: number | undefined; gathered?: boolean; most: number }) =>
  scope.tx.$queryRaw<MovementEntry[]>`
    select m.id::text, m.seq::float8 seq, m.kind, to_char(m.happened_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') "happenedAt",
      to_char(m.arrived_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') "arrivedAt", w.name by, m.reason,
      c.grid_ref "column", m.column_id::text "columnId", m.site_event_id is not null "followsTick", m.reverses_id::text "reversesId",
      (select r.id::text from gear_movement r where r.company_id = m.company_id and r.reverses_id = m.id) "reversedById",
      (select json_agg(json_build_object('itemId', l.item_id, 'item', case i.family when 'clamp set' then coalesce(k.name, i.name) else i.name end,
          'placeId', l.place_id, 'place', p.name, 'kind', p.kind, 'quantity', l.quantity) order by i.family, i.name, l.quantity)
        from gear_line l join gear_item i on i.company_id = l.company_id and i.id = l.item_id
        left join clamp_kind k on k.company_id = i.company_id and k.id = i.clamp_kind_id
        join gear_place p on p.company_id = l.company_id and p.id = l.place_id
        where l.company_id = m.company_id and l.movement_id = m.id) lines
    from gear_movement m
    join person w on w.company_id = m.company_id and w.id = m.by_person_id
    left join column_lift c on c.company_id = m.company_id and c.project_id = m.project_id and c.id = m.column_id
    where m.company_id = ${scope.companyId}::uuid and (m.project_id is null or m.project_id = ${scope.projectId}::uuid)
      and (${which.before ?? null}::float8 is null or m.seq < ${which.before ?? null}::float8)
      and (${which.itemId ?? null}::uuid is null or exists (select from gear_line l where l.company_id = m.company_id and l.movement_id = m.id and l.item_id = ${which.itemId ?? null}::uuid))
      and (not ${which.gathered === true}::boolean or (m.kind = 'gathered' and m.happened_at > ${scope.now}::timestamptz - interval '2 days'
        and not exists (select from gear_movement r where r.company_id = m.company_id and r.reverses_id = m.id)))
    order by m.seq desc limit ${which.most}::int`;

/** Of these lines one that somebody else gathered since, from the same place for the same column, and did not take back. */
export async function findGatheredByOthers(scope: ProjectScope, since: string, lines: readonly { readonly itemId: string; readonly fromId: string; readonly columnId: string }[]) {
  const [found] = await scope.tx.$queryRaw<{ item: string; column: string; by: string }[]>`
    select case i.family when 'clamp set' then coalesce(k.name, i.name) else i.name end item, p.name "column", w.name by
    from jsonb_to_recordset(${JSON.stringify(lines)}::jsonb) as asked("itemId" uuid, "fromId" uuid, "columnId" uuid)
    join gear_place p on p.company_id = ${scope.companyId}::uuid and p.project_id = ${scope.projectId}::uuid and p.column_id = asked."columnId"
    join gear_line t on t.company_id = p.company_id and t.place_id = p.id and t.item_id = asked."itemId" and t.quantity > 0
    join gear_line f on f.company_id = t.company_id and f.movement_id = t.movement_id and f.item_id = t.item_id and f.place_id = asked."fromId" and f.quantity < 0
    join gear_movement m on m.company_id = t.company_id and m.id = t.movement_id and m.kind = 'gathered' and m.arrived_at > ${since}::timestamptz and m.by_person_id <> ${scope.member.id}::uuid
    join gear_item i on i.company_id = t.company_id and i.id = t.item_id
    left join clamp_kind k on k.company_id = i.company_id and k.id = i.clamp_kind_id
    join person w on w.company_id = m.company_id and w.id = m.by_person_id
    where not exists (select from gear_movement r where r.company_id = m.company_id and r.reverses_id = m.id)
    order by m.seq limit 1`;
  return found ?? null;
}

export type ShortfallEntry = Omit<Shortfall, "siteEventId" | "kind"> & {
  readonly id: string; readonly kind: TickKind; readonly item: string; readonly family: Family; readonly column: string; readonly level: string;
  readonly noticedAt: string; readonly stripped: boolean;
};
/** What waits to be settled, the oldest first. */
export const listShortfalls = (scope: ProjectScope, ids: readonly string[] | null = null) =>
  scope.tx.$queryRaw<ShortfallEntry[]>`
    select s.id::text, s.about, s.kind, s.column_id::text "columnId", s.item_id::text "itemId", s.quantity, i.family,
      case i.family when 'clamp set' then coalesce(k.name, i.name) else i.name end item, c.grid_ref "column", v.name level, (c.done & 32) <> 0 stripped,
      to_char(s.noticed_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') "noticedAt"
    from gear_shortfall s
    join gear_item i on i.company_id = s.company_id and i.id = s.item_id
    left join clamp_kind k on k.company_id = i.company_id and k.id = i.clamp_kind_id
    join column_lift c on c.company_id = s.company_id and c.project_id = s.project_id and c.id = s.column_id
    join level v on v.company_id = c.company_id and v.project_id = c.project_id and v.id = c.from_level_id
    where s.company_id = ${scope.companyId}::uuid and s.project_id = ${scope.projectId}::uuid and s.settled_at is null
      and (${ids === null ? null : [...ids]}::uuid[] is null or s.id = any(${ids === null ? null : [...ids]}::uuid[]))
    order by s.noticed_at, i.family, item, c.grid_ref limit 500`;

export const settleRows = (scope: ProjectScope, ids: readonly string[], how: { as: "added" | "dismissed"; reason: string | null; movementId: string | null }) =>
  scope.tx.gearShortfall.updateMany({
    where: { companyId: scope.companyId, projectId: scope.projectId, id: { in: [...ids] }, settledAt: null },
    data: { settledAt: scope.now, settledById: scope.member.id, settledAs: how.as, reason: how.reason, movementId: how.movementId },
  });

export type ColumnToStand = Awaited<ReturnType<typeof listColumnsToStand>>[number];
/** Columns not stood yet, with the levels their form is designed from and the day they are planned for. */
export async function listColumnsToStand(scope: ProjectScope) {
  const rows = await scope.tx.column.findMany({
    where: { companyId: scope.companyId, projectId: scope.projectId, removedAt: null, done: { lt: 2 } },
    select: {
      id: true, gridRef: true, shape: true, widthMm: true, depthMm: true, formHeightMm: true, headedBy: true, fromLevelId: true, toLevelId: true, done: true,
      mark: { select: { name: true } }, fromLevel: true, toLevel: true, planned: { select: { stoodOn: true } },
    },
  });
  return rows.map(({ mark, planned, ...row }) => ({ ...row, mark: mark.name, level: row.fromLevel.name, elevationMm: row.fromLevel.elevationMm, stoodOn: planned?.stoodOn?.toISOString().slice(0, 10) ?? null }));
}
