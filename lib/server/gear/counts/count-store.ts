import "server-only";
import type { ProjectScope } from "../../gate/scope.ts";

const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });

type NewLine = { readonly itemId: string; readonly counted: number; readonly expected: number; readonly lossPrice: number | null; readonly currency: string | null };
export async function addCount(scope: ProjectScope, id: string, placeId: string, lines: readonly NewLine[]): Promise<void> {
  await scope.tx.gearCount.create({ data: { ...within(scope), id, placeId, lockedAt: scope.now, byPersonId: scope.member.id } });
  await scope.tx.gearCountLine.createMany({ data: lines.map((line) => ({ ...line, ...within(scope), countId: id })) });
}

/** The latest counts, the last locked first. */
export const listCounts = (scope: ProjectScope) =>
  scope.tx.gearCount.findMany({
    where: within(scope), orderBy: { lockedAt: "desc" }, take: 20,
    select: {
      id: true, lockedAt: true, photos: { select: { id: true, takenAt: true }, orderBy: { id: "asc" } }, place: { select: { name: true, kind: true } }, by: { select: { name: true } },
      lines: { select: { itemId: true, counted: true, expected: true, lossPrice: true, currency: true, settledAs: true, reason: true, item: { select: { name: true, clampKind: { select: { name: true } }, family: true } } } },
    },
  });

/** A count as it was locked; null where there is none of that id. */
export const findCount = (scope: ProjectScope, id: string) =>
  scope.tx.gearCount.findFirst({ where: { ...within(scope), id }, select: { placeId: true, byPersonId: true, lines: { select: { itemId: true, counted: true, expected: true } } } });

export const findCountLine = (scope: ProjectScope, countId: string, itemId: string) =>
  scope.tx.gearCountLine.findFirst({ where: { ...within(scope), countId, itemId }, include: { count: true, item: { select: { name: true, family: true } } } });

/** False when somebody settled it before. */
export async function settleLine(scope: ProjectScope, countId: string, itemId: string, how: { as: "accepted" | "found"; reason: string; movementId: string | null }): Promise<boolean> {
  const { count } = await scope.tx.gearCountLine.updateMany({
    where: { ...within(scope), countId, itemId, settledAt: null },
    data: { settledAt: scope.now, settledById: scope.member.id, settledAs: how.as, reason: how.reason, movementId: how.movementId },
  });
  return count === 1;
}

/** How many photos a count has; null where there is no such count. */
export async function findCountPhotos(scope: ProjectScope, countId: string): Promise<{ readonly photos: number } | null> {
  const row = await scope.tx.gearCount.findFirst({ where: { ...within(scope), id: countId }, select: { _count: { select: { photos: true } } } });
  return row ? { photos: row._count.photos } : null;
}

type NewPhoto = { readonly id: string; readonly countId: string; readonly contentType: string; readonly bytes: Uint8Array; readonly takenAt: string };
export async function addPhotoRow(scope: ProjectScope, photo: NewPhoto): Promise<void> {
  await scope.tx.gearCountPhoto.create({ data: { ...photo, bytes: Uint8Array.from(photo.bytes), ...within(scope), addedAt: scope.now, addedById: scope.member.id }, select: { id: true } });
}

export const findPhoto = (scope: ProjectScope, photoId: string) =>
  scope.tx.gearCountPhoto.findFirst({ where: { ...within(scope), id: photoId }, select: { contentType: true, bytes: true } });
