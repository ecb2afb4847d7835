import "server-only";
import type { PanelEvent, PanelEventKind } from "#lib/trade/gear/panel-life.ts";
import type { CompanyScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";

export type NewPanel = {
  readonly itemId: string; readonly name: string; readonly widthMm: number; readonly heightMm: number; readonly thicknessMm: number; readonly filmFaces: number;
  readonly sheetBatch: string | null; readonly cutFromId: string | null; readonly madeAt: string;
  readonly sheetCost: number; readonly labourCost: number; readonly sundryCost: number; readonly currency: string;
};
export type PanelRow = NewPanel & {
  readonly placeId: string | null; readonly place: string | null; readonly placeKind: string | null; readonly placeProjectId: string | null; readonly columnId: string | null;
  readonly setId: string | null; readonly set: string | null; readonly face: string | null;
  /** When it came off columns. */
  readonly strippedAt: readonly string[]; readonly events: readonly (PanelEvent & { readonly by: string; readonly movementId: string | null })[];
};

/** The next free numbers of the company's panels; nobody else takes any until the transaction ends. */
export async function takePanelNumbers(scope: CompanyScope, count: number): Promise<string[]> {
  await scope.tx.$queryRaw`select 1 from (select pg_advisory_xact_lock(hashtextextended(${`panels ${scope.companyId}`}, 0))) taken`;
  const last = await scope.tx.gearPanel.count({ where: { companyId: scope.companyId } });
  return Array.from({ length: count }, (_, index) => `P-${last + index + 1}`);
}

export async function addPanels(scope: CompanyScope, panels: readonly NewPanel[]): Promise<void> {
  const { companyId, tx } = scope;
  await tx.gearItem.createMany({ data: panels.map(({ itemId, name }) => ({ companyId, id: itemId, family: "panel", name })) });
  await tx.gearPanel.createMany({ data: panels.map(({ name: _, ...panel }) => ({ ...panel, companyId })) });
}

/** Panels of the company that are at its own places or the project's, with what befell them; or the ones named. */
export async function listPanels(scope: CompanyScope, which: { readonly projectId: string } | { readonly itemIds: readonly string[] }): Promise<PanelRow[]> {
  const itemIds = "itemIds" in which ? [...which.itemIds] : null;
  const projectId = "projectId" in which ? which.projectId : null;
  return scope.tx.$queryRaw<PanelRow[]>`
    select p.item_id::text "itemId", i.name, p.width_mm "widthMm", p.height_mm "heightMm", p.thickness_mm "thicknessMm", p.film_faces "filmFaces",
      p.sheet_batch "sheetBatch", p.cut_from_id::text "cutFromId", p.made_at "madeAt", p.sheet_cost::float8 "sheetCost", p.labour_cost::float8 "labourCost",
      p.sundry_cost::float8 "sundryCost", p.currency, g.id::text "placeId", g.name place, g.kind "placeKind", g.project_id::text "placeProjectId", g.column_id::text "columnId",
      s.id::text "setId", s.name set, m.face,
      coalesce((select json_agg(to_char(v.happened_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') order by v.happened_at) from gear_line l
        join gear_movement v on v.company_id = l.company_id and v.id = l.movement_id and v.kind = 'stripped'
        where l.company_id = p.company_id and l.item_id = p.item_id and l.quantity < 0
          and not exists (select from gear_movement r where r.company_id = v.company_id and r.reverses_id = v.id)), '[]') "strippedAt",
      coalesce((select json_agg(json_build_object('id', e.id, 'kind', e.kind, 'at', to_char(e.happened_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'),
        'reason', e.reason, 'amount', e.amount, 'eventId', e.event_id, 'movementId', e.movement_id, 'by', w.name) order by e.happened_at, e.id)
        from gear_panel_event e join person w on w.company_id = e.company_id and w.id = e.by_person_id
        where e.company_id = p.company_id and e.item_id = p.item_id), '[]') events
    from gear_panel p
    join gear_item i on i.company_id = p.company_id and i.id = p.item_id
    left join gear_balance b on b.company_id = p.company_id and b.item_id = p.item_id and b.quantity = 1
    left join gear_place g on g.company_id = b.company_id and g.id = b.place_id
    left join gear_set_panel m on m.company_id = p.company_id and m.item_id = p.item_id
    left join gear_form_set s on s.company_id = m.company_id and s.project_id = m.project_id and s.id = m.set_id
    where p.company_id = ${scope.companyId}::uuid and (${itemIds}::uuid[] is null or p.item_id = any(${itemIds}::uuid[]))
      and (${projectId}::uuid is null or (g.id is not null and (g.project_id is null or g.project_id = ${projectId}::uuid)))
    order by length(i.name), i.name`;
}

type NewEvent = {
  readonly itemId: string; readonly kind: PanelEventKind; readonly happenedAt: string; readonly reason: string | null; readonly amount: number;
  readonly eventId?: string; readonly movementId?: string | undefined;
};
export const addPanelEvent = (scope: CompanyScope, event: NewEvent) =>
  scope.tx.gearPanelEvent.create({
    data: { ...event, companyId: scope.companyId, id: newId(), arrivedAt: scope.now, byPersonId: scope.member.id, eventId: event.eventId ?? null, movementId: event.movementId ?? null },
    select: { id: true },
  });

export const findPanelEvent = (scope: CompanyScope, id: string) => scope.tx.gearPanelEvent.findUnique({ where: { companyId_id: { companyId: scope.companyId, id } }, include: { withdrawn: { select: { id: true } } } });

/** The panel and the entry of its life a movement belongs to; null for any other movement. */
export const findPanelEventOf = (scope: CompanyScope, movementId: string) =>
  scope.tx.gearPanelEvent.findFirst({ where: { companyId: scope.companyId, movementId }, select: { kind: true, panel: { select: { item: { select: { name: true } } } } } });

export const listCutInto = (scope: CompanyScope, itemId: string) =>
  scope.tx.gearPanel.findMany({ where: { companyId: scope.companyId, cutFromId: itemId }, select: { itemId: true, widthMm: true, heightMm: true, item: { select: { name: true } } } });
