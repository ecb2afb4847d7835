import "server-only";
import type { Item, Line, MovementKind, Place } from "#lib/trade/gear/ledger.ts";
import type { CompanyScope } from "../../gate/scope.ts";

export type PlaceRow = Place & { readonly projectId: string | null; readonly columnId: string | null };
export type MovementRow = {
  readonly id: string; readonly kind: MovementKind; readonly projectId: string | null; readonly columnId: string | null; readonly siteEventId: string | null;
  readonly happenedAt: string; readonly reason: string | null; readonly reversesId: string | null;
};

export const listItems = (scope: CompanyScope, ids: readonly string[]) =>
  scope.tx.$queryRaw<Item[]>`
    select i.id::text, case i.family when 'clamp set' then coalesce(k.name, i.name) else i.name end as name, i.family
    from gear_item i left join clamp_kind k on k.company_id = i.company_id and k.id = i.clamp_kind_id
    where i.company_id = ${scope.companyId}::uuid and i.id = any(${[...ids]}::uuid[])`;

export const listPlaces = (scope: CompanyScope, ids: readonly string[]) =>
  scope.tx.$queryRaw<PlaceRow[]>`
    select id::text, name, kind, project_id::text "projectId", column_id::text "columnId" from gear_place
    where company_id = ${scope.companyId}::uuid and id = any(${[...ids]}::uuid[])`;

/** Balances of the items at the places, held until the transaction ends; where nothing was ever moved there is no row. */
export const holdBalances = (scope: CompanyScope, itemIds: readonly string[], placeIds: readonly string[]) =>
  scope.tx.$queryRaw<Line[]>`
    select item_id::text "itemId", place_id::text "placeId", quantity from gear_balance
    where company_id = ${scope.companyId}::uuid and item_id = any(${[...itemIds]}::uuid[]) and place_id = any(${[...placeIds]}::uuid[])
    order by company_id, item_id, place_id for update`;

/** Movements with their lines, in two statements however many there are. */
export async function addMovements(scope: CompanyScope, movements: readonly (MovementRow & { readonly lines: readonly Line[] })[]): Promise<void> {
  const { tx, companyId, member, now } = scope;
  const rows = movements.map(({ lines: _, ...row }) => row);
  await tx.$executeRaw`
    insert into gear_movement (company_id, id, kind, project_id, column_id, site_event_id, happened_at, arrived_at, by_person_id, reason, reverses_id)
    select ${companyId}::uuid, id, kind, "projectId", "columnId", "siteEventId", "happenedAt", ${now}::timestamptz, ${member.id}::uuid, reason, "reversesId"
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as m(id uuid, kind text, "projectId" uuid, "columnId" uuid, "siteEventId" uuid,
      "happenedAt" timestamptz, reason text, "reversesId" uuid)`;
  const lines = movements.flatMap(({ id, lines: own }) => own.map((line) => ({ ...line, movementId: id })));
  await tx.$executeRaw`
    insert into gear_line (company_id, movement_id, item_id, place_id, quantity)
    select ${companyId}::uuid, "movementId", "itemId", "placeId", quantity
    from jsonb_to_recordset(${JSON.stringify(lines)}::jsonb) as l("movementId" uuid, "itemId" uuid, "placeId" uuid, quantity int)`;
}

export type KnownMovement = MovementRow & {
  readonly byPersonId: string; readonly arrivedAt: string; readonly lines: readonly Line[]; readonly reversedById: string | null;
};

/** Until the transaction ends nobody else writes under an id a phone has given: of two messages with the same the second finds what the first wrote. */
export const holdMovementId = (scope: CompanyScope, id: string) =>
  scope.tx.$queryRaw`select 1 from (select pg_advisory_xact_lock(hashtextextended(${`movement ${scope.companyId} ${id}`}, 0))) taken`;

/** One movement of the company with its lines, and what reversed it. */
export async function findMovement(scope: CompanyScope, id: string): Promise<KnownMovement | null> {
  const row = await scope.tx.gearMovement.findUnique({
    where: { companyId_id: { companyId: scope.companyId, id } },
    include: { lines: true, reversal: { select: { id: true } } },
  });
  if (!row) return null;
  return {
    id: row.id, kind: row.kind as MovementKind, projectId: row.projectId, columnId: row.columnId, siteEventId: row.siteEventId,
    happenedAt: row.happenedAt.toISOString(), arrivedAt: row.arrivedAt.toISOString(), byPersonId: row.byPersonId, reason: row.reason, reversesId: row.reversesId, reversedById: row.reversal[0]?.id ?? null,
    lines: row.lines.map(({ itemId, placeId, quantity }) => ({ itemId, placeId, quantity })),
  };
}

export type Standing = {
  readonly itemId: string; readonly item: string; readonly family: Item["family"]; readonly clampKindId: string | null;
  readonly placeId: string; readonly place: string; readonly kind: Place["kind"]; readonly projectId: string | null; readonly columnId: string | null;
  readonly quantity: number;
};

/** What is where now: at the company's own places and at those of the project, or of every project when none is named. */
export const listStandings = (scope: CompanyScope, projectId: string | null) =>
  scope.tx.$queryRaw<Standing[]>`
    select i.id::text "itemId", i.name item, i.family, i.clamp_kind_id::text "clampKindId", p.id::text "placeId", p.name place, p.kind,
           p.project_id::text "projectId", p.column_id::text "columnId", b.quantity
    from gear_balance b
    join gear_item i on i.company_id = b.company_id and i.id = b.item_id
    join gear_place p on p.company_id = b.company_id and p.id = b.place_id
    where b.company_id = ${scope.companyId}::uuid and b.quantity <> 0
      and (${projectId}::uuid is null or p.project_id is null or p.project_id = ${projectId}::uuid)
    order by i.family, i.name, p.kind, p.name`;

/** The same as of a moment: every movement that had happened by then, whenever it was keyed. */
export const listStandingsAt = (scope: CompanyScope, projectId: string | null, at: string) =>
  scope.tx.$queryRaw<Standing[]>`
    select i.id::text "itemId", i.name item, i.family, i.clamp_kind_id::text "clampKindId", p.id::text "placeId", p.name place, p.kind,
           p.project_id::text "projectId", p.column_id::text "columnId", sum(l.quantity)::int quantity
    from gear_movement m
    join gear_line l on l.company_id = m.company_id and l.movement_id = m.id
    join gear_item i on i.company_id = l.company_id and i.id = l.item_id
    join gear_place p on p.company_id = l.company_id and p.id = l.place_id
    where m.company_id = ${scope.companyId}::uuid and m.happened_at <= ${at}::timestamptz
      and (${projectId}::uuid is null or p.project_id is null or p.project_id = ${projectId}::uuid)
    group by i.id, i.name, i.family, i.clamp_kind_id, p.id, p.name, p.kind, p.project_id, p.column_id
    having sum(l.quantity) <> 0 order by i.family, i.name, p.kind, p.name`;
