import "server-only";
import type { DocketKind } from "#lib/contracts/hire/dockets.ts";
import type { Day } from "#lib/kernel/days.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listReversals, type Reversal } from "./supplier-store.ts";

export type DocketLine = { readonly itemId: string; readonly quantity: number; readonly short: number; readonly damaged: number; readonly dirty: number };
export type Docket = {
  readonly id: string; readonly supplierId: string; readonly kind: DocketKind; readonly number: string; readonly on: Day; readonly happenedAt: string;
  readonly name: string | null; readonly dispatchedOn: Day | null; readonly until: Day | null; readonly answersId: string | null;
  readonly bySupplier: boolean; readonly share: number | null; readonly amount: number | null; readonly note: string | null;
  readonly movementId: string | null; readonly recordedAt: string; readonly by: string; readonly lines: readonly DocketLine[];
  readonly photos: readonly { readonly id: string; readonly takenAt: string }[]; readonly reversal: Reversal | null;
};
type Row = Omit<Docket, "reversal" | "happenedAt" | "recordedAt" | "amount"> & { readonly happenedAt: Date; readonly recordedAt: Date; readonly amount: bigint | null };

/** Every docket of the project, reversed ones too, oldest first. */
export async function listDockets(scope: ProjectScope): Promise<Docket[]> {
  const rows = await scope.tx.$queryRaw<Row[]>`
    select d.id::text, d.supplier_id::text "supplierId", d.kind, d.number, d.on_day::text "on", d.happened_at "happenedAt", d.name,
           d.dispatched_on::text "dispatchedOn", d.until_on::text "until", d.answers_id::text "answersId", d.by_supplier "bySupplier", d.share,
           d.amount, d.note, d.movement_id::text "movementId", d.recorded_at "recordedAt", p.name "by",
           coalesce((select json_agg(json_build_object('itemId', l.item_id, 'quantity', l.quantity, 'short', l.short, 'damaged', l.damaged, 'dirty', l.dirty) order by l.item_id)
             from hire_docket_line l where l.company_id = d.company_id and l.project_id = d.project_id and l.docket_id = d.id), '[]') lines,
           coalesce((select json_agg(json_build_object('id', f.id, 'takenAt', f.taken_at) order by f.id)
             from hire_photo f where f.company_id = d.company_id and f.project_id = d.project_id and f.docket_id = d.id), '[]') photos
    from hire_docket d join person p on p.company_id = d.company_id and p.id = d.recorded_by
    where d.company_id = ${scope.companyId}::uuid and d.project_id = ${scope.projectId}::uuid
    order by d.on_day, d.happened_at, d.id`;
  const reversals = await listReversals(scope, "docket");
  return rows.map((row) => ({
    ...row, happenedAt: row.happenedAt.toISOString(), recordedAt: row.recordedAt.toISOString(), amount: row.amount === null ? null : Number(row.amount),
    photos: row.photos.map(({ id, takenAt }) => ({ id, takenAt: new Date(takenAt).toISOString() })),
    reversal: reversals.get(row.id) ?? null,
  }));
}

export type NewDocket = Pick<Docket, "id" | "supplierId" | "kind" | "number" | "happenedAt" | "name" | "note"> & {
  readonly on: string; readonly lines: readonly DocketLine[]; readonly answersId?: string | null; readonly bySupplier?: boolean;
  readonly dispatchedOn?: string | null; readonly until?: string | null; readonly share?: number | null; readonly amount?: number | null;
  readonly movementId?: string | null;
};
const atMidnight = (day: string | null | undefined): Date | null => (day === null || day === undefined ? null : new Date(`${day}T00:00:00Z`));

export async function addDocket(scope: ProjectScope, { lines, on, dispatchedOn, until, ...docket }: NewDocket): Promise<void> {
  const { tx, companyId, projectId, member, now } = scope;
  await tx.hireDocket.create({
    data: {
      ...docket, companyId, projectId, onDay: atMidnight(on) ?? now, dispatchedOn: atMidnight(dispatchedOn), untilOn: atMidnight(until),
      recordedBy: member.id, recordedAt: now,
    },
    select: { id: true },
  });
  if (lines.length > 0) await tx.hireDocketLine.createMany({ data: lines.map((line) => ({ ...line, companyId, projectId, docketId: docket.id })) });
}

type NewPhoto = { readonly id: string; readonly docketId: string; readonly contentType: string; readonly bytes: Uint8Array; readonly takenAt: string };
export async function addPhotoRow(scope: ProjectScope, photo: NewPhoto): Promise<void> {
  const { tx, companyId, projectId, member, now } = scope;
  await tx.hirePhoto.create({ data: { ...photo, bytes: Uint8Array.from(photo.bytes), companyId, projectId, addedAt: now, addedBy: member.id }, select: { id: true } });
}

export const findPhoto = (scope: ProjectScope, photoId: string) =>
  scope.tx.hirePhoto.findFirst({ where: { companyId: scope.companyId, projectId: scope.projectId, id: photoId }, select: { contentType: true, bytes: true } });

export const countPhotos = (scope: ProjectScope, docketId: string) =>
  scope.tx.hirePhoto.count({ where: { companyId: scope.companyId, projectId: scope.projectId, docketId } });
