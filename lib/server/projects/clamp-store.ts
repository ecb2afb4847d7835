import "server-only";
import { keptSpanLoads } from "#lib/contracts/shutter.ts";
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
  capacityBySpan: keptSpanLoads.parse(row.capacityBySpan),
  arm: row.armModulusCm3 === null || row.armStressNMm2 === null ? undefined : { sectionModulus: row.armModulusCm3, stress: row.armStressNMm2 },
  wedgeCapacity: row.wedgePullKn ?? undefined,
});

type Kind = {
  name: string; minSize: number; maxSize: number; sideCapacity: number; barLength: number; barDepth: number;
  barThickness: number; weight: number; source: string; isExample: boolean; capacityBySpan: { span: number; load: number }[];
  arm: { sectionModulus: number; stress: number } | null; wedgeCapacity: number | null;
};

/** False when there is no such kind to change. */
export async function writeClampKind(scope: CompanyScope, id: string, isNew: boolean, kind: Kind): Promise<boolean> {
  const data = {
    name: kind.name, minSizeMm: kind.minSize, maxSizeMm: kind.maxSize, sideCapacityKn: kind.sideCapacity,
    barLengthMm: kind.barLength, barDepthMm: kind.barDepth, barThicknessMm: kind.barThickness, weightKg: kind.weight,
    source: kind.source, isExample: kind.isExample, capacityBySpan: kind.capacityBySpan,
    armModulusCm3: kind.arm?.sectionModulus ?? null, armStressNMm2: kind.arm?.stress ?? null, wedgePullKn: kind.wedgeCapacity,
  };
  if (isNew) {
    await scope.tx.clampKind.create({ data: { ...data, id, companyId: scope.companyId } });
    return true;
  }
  return (await scope.tx.clampKind.updateMany({ where: { companyId: scope.companyId, id, retiredAt: null }, data })).count === 1;
}

export const retireClampKindRow = async (scope: CompanyScope, id: string): Promise<boolean> =>
  (await scope.tx.clampKind.updateMany({ where: { companyId: scope.companyId, id, retiredAt: null }, data: { retiredAt: scope.now } })).count === 1;
