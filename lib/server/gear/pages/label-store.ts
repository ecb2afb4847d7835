import "server-only";
import type { ProjectScope } from "../../gate/scope.ts";

/** Columns that start from a level. */
export const listColumnsOfLevel = (scope: ProjectScope, fromLevelId: string) =>
  scope.tx.column.findMany({
    where: { companyId: scope.companyId, projectId: scope.projectId, fromLevelId, removedAt: null },
    select: { id: true, gridRef: true, mark: { select: { name: true } } },
  });
