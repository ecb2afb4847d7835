import "server-only";
import type { CompanyScope } from "../gate/scope.ts";

/** The kinds in use, the one for the smallest columns first. */
export const listClampKindRows = (scope: CompanyScope) =>
  scope.tx.clampKind.findMany({
    where: { companyId: scope.companyId, retiredAt: null },
    orderBy: [{ maxSizeMm: "asc" }, { name: "asc" }],
  });
export type ClampKindRow = Awaited<ReturnType<typeof listClampKindRows>>[number];

export const toClampKind = (row: ClampKindRow) => ({
  id: row.id, name: row.name, minSize: row.minSizeMm, maxSize: row.maxSizeMm, sideCapacity: row.sideCapacityKn,
  barLength: row.barLengthMm, barDepth: row.barDepthMm, barThickness: row.barThicknessMm, weight: row.weightKg, source: row.source,
});

type Kind = {
  name: string; minSize: number; maxSize: number; sideCapacity: number; barLength: number; barDepth: number;
  barThickness: number; weight: number; source: string; isExample: boolean;
};

/** False when there is no such kind to change. */
export async function writeClampKind(scope: CompanyScope, id: string, isNew: boolean, kind: Kind): Promise<boolean> {
  const data = {
    name: kind.name, minSizeMm: kind.minSize, maxSizeMm: kind.maxSize, sideCapacityKn: kind.sideCapacity,
    barLengthMm: kind.barLength, barDepthMm: kind.barDepth, barThicknessMm: kind.barThickness, weightKg: kind.weight,
    source: kind.source, isExample: kind.isExample,
  };
  if (isNew) {
    await scope.tx.clampKind.create({ data: { ...data, id, companyId: scope.companyId } });
    return true;
  }
  return (await scope.tx.clampKind.updateMany({ where: { companyId: scope.companyId, id, retiredAt: null }, data })).count === 1;
}

export const retireClampKindRow = async (scope: CompanyScope, id: string): Promise<boolean> =>
  (await scope.tx.clampKind.updateMany({ where: { companyId: scope.companyId, id, retiredAt: null }, data: { retiredAt: scope.now } })).count === 1;
