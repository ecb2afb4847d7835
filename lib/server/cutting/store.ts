import "server-only";
import type { ProjectScope } from "../gate/scope.ts";

const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });

/** The columns that stand on a level, or those named, with what their form sets are made to. */
export async function listLiftsOn(scope: ProjectScope, fromLevelId: string | null, ids: readonly string[] | null = null) {
  const rows = await scope.tx.column.findMany({
    where: { ...within(scope), ...(fromLevelId === null ? {} : { fromLevelId }), ...(ids === null ? {} : { id: { in: [...ids] } }), removedAt: null },
    orderBy: { gridRef: "asc" },
    select: {
      id: true, gridRef: true, shape: true, widthMm: true, depthMm: true, formHeightMm: true, headedBy: true, done: true,
      mark: { select: { name: true } }, fromLevel: true, toLevel: true,
      gearAssignments: { where: { withdrawnAt: null }, select: { id: true } },
      reservations: { where: { endedAt: null }, select: { face: true, source: true, itemId: true } },
    },
  });
  return rows.map(({ gearAssignments, reservations, ...row }) => ({
    ...row, hasSet: gearAssignments.length > 0,
    /** Faces that get a panel there is, or one that comes off another column: nothing is cut from sheets for them. */
    reused: reservations.flatMap(({ face, source, itemId }) => (source === "new" && itemId === null ? [] : [face])),
  }));
}
export type LiftRow = Awaited<ReturnType<typeof listLiftsOn>>[number];

export type LevelCount = { readonly levelId: string; readonly columns: number; readonly uncut: number };

/** How many columns stand on each level, and of how many nothing is cut yet. */
export async function countByLevel(scope: ProjectScope): Promise<LevelCount[]> {
  const rows = await scope.tx.column.groupBy({ by: ["fromLevelId", "done"], where: { ...within(scope), removedAt: null }, _count: { _all: true } });
  const ids = [...new Set(rows.map((row) => row.fromLevelId))];
  const total = (levelId: string, counts: (done: number) => boolean) =>
    rows.reduce((sum, row) => sum + (row.fromLevelId === levelId && counts(row.done) ? row._count._all : 0), 0);
  return ids.map((levelId) => ({ levelId, columns: total(levelId, () => true), uncut: total(levelId, (done) => done === 0) }));
}
