import "server-only";
import type { ProjectScope } from "../../gate/scope.ts";

const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });

/** Every column with its planned days, what its form set is made to, and the set that is assigned to it; lowest level first. */
export const listComingLifts = async (scope: ProjectScope) => {
  const lifts = await scope.tx.column.findMany({
    where: { ...within(scope), removedAt: null },
    orderBy: [{ fromLevel: { elevationMm: "asc" } }, { gridRef: "asc" }, { id: "asc" }],
    select: {
      id: true, gridRef: true, shape: true, widthMm: true, depthMm: true, formHeightMm: true, headedBy: true, done: true,
      mark: { select: { name: true } }, fromLevel: true, toLevel: true,
    },
  });
  const days = await scope.tx.plannedDays.findMany({ where: within(scope), select: { columnId: true, stoodOn: true, pouredOn: true } });
  const assigned = await scope.tx.gearAssignment.findMany({ where: { ...within(scope), withdrawnAt: null }, select: { columnId: true, setId: true } });
  const daysOf = new Map(days.map((row) => [row.columnId, row]));
  const setOf = new Map(assigned.map((row) => [row.columnId, row.setId]));
  const asDay = (date: Date | null | undefined): string | null => date?.toISOString().slice(0, 10) ?? null;
  return lifts.map((lift) => ({ ...lift, stoodOn: asDay(daysOf.get(lift.id)?.stoodOn), pouredOn: asDay(daysOf.get(lift.id)?.pouredOn), setId: setOf.get(lift.id) ?? null }));
};
export type ComingLift = Awaited<ReturnType<typeof listComingLifts>>[number];
