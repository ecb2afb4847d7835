import "server-only";
import type { CompanyScope, ProjectScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";
import type { PlaceRow } from "./ledger-store.ts";

type NewPlace = { readonly kind: PlaceRow["kind"]; readonly name: string; readonly projectId: string | null };

/** Adds what is missing; a place that two add at once is added by one of them. */
async function addPlaces(scope: CompanyScope, places: readonly NewPlace[]): Promise<void> {
  const rows = places.map((place) => ({ ...place, id: newId() }));
  await scope.tx.$executeRaw`
    insert into gear_place (company_id, id, kind, name, project_id)
    select ${scope.companyId}::uuid, id, kind, name, "projectId"
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as p(id uuid, kind text, name text, "projectId" uuid)
    on conflict do nothing`;
}

const OF_COMPANY: readonly NewPlace[] = [
  { kind: "bought", name: "Own stock", projectId: null }, { kind: "yard", name: "Yard", projectId: null },
  { kind: "lost", name: "Lost", projectId: null }, { kind: "scrapped", name: "Scrapped", projectId: null },
];

/** The places every company has, and every one of the company that is in use. */
export async function companyPlaces(scope: CompanyScope): Promise<readonly PlaceRow[]> {
  const there = await listOpenPlaces(scope, null);
  const missing = OF_COMPANY.filter(({ kind }) => !there.some((place) => place.kind === kind));
  if (missing.length === 0) return there;
  await addPlaces(scope, missing);
  return listOpenPlaces(scope, null);
}

/** The company's places and those of the project, a rack and a cleaning bay among them; columns' places apart. */
export async function projectPlaces(scope: ProjectScope): Promise<readonly PlaceRow[]> {
  await companyPlaces(scope);
  const there = await listOpenPlaces(scope, scope.projectId);
  const kinds = [["rack", "Rack"], ["cleaning bay", "Cleaning bay"]] as const;
  const missing = kinds.filter(([kind]) => !there.some((place) => place.kind === kind));
  if (missing.length === 0) return there;
  await addPlaces(scope, missing.map(([kind, name]) => ({ kind, name, projectId: scope.projectId })));
  return listOpenPlaces(scope, scope.projectId);
}

/** Places in use: the company's own, and a project's when one is named; columns' places apart. */
export const listOpenPlaces = (scope: CompanyScope, projectId: string | null) =>
  scope.tx.$queryRaw<PlaceRow[]>`
    select id::text, name, kind, project_id::text "projectId", null as "columnId" from gear_place
    where company_id = ${scope.companyId}::uuid and (project_id is null or project_id = ${projectId}::uuid) and kind <> 'column' and retired_at is null
    order by array_position(array['rack', 'cleaning bay', 'truck', 'yard', 'supplier', 'bought', 'lost', 'scrapped'], kind), name`;

/** Adds a place or gives one another name; false when there is no such place to change. */
export async function writePlace(scope: CompanyScope, placeId: string | undefined, place: NewPlace): Promise<string | null> {
  const { companyId, tx } = scope;
  if (placeId === undefined) return (await tx.gearPlace.create({ data: { ...place, id: newId(), companyId }, select: { id: true } })).id;
  const changed = await tx.gearPlace.updateMany({
    where: { companyId, id: placeId, kind: place.kind, projectId: place.projectId, retiredAt: null }, data: { name: place.name },
  });
  return changed.count === 1 ? placeId : null;
}
