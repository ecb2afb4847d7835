import "server-only";
import { materialKey, type Material } from "#lib/contracts/planning/orders.ts";
import { sixteenths } from "#lib/kernel/inches.ts";
import type { CompanyScope } from "../../gate/scope.ts";
import { addMaterials, listMaterials, type MaterialItem } from "./material-store.ts";

type Units = "metric" | "us";
/** Sixteenths, as a tape is read. */
const inches = (valueMm: number): string => String(sixteenths(valueMm) / 16);

/** What the gear pages call it: "Film-faced ply 18 mm, 2400 × 1200 mm". */
export function materialName({ material, lengthMm, widthMm }: Material, units: Units): string {
  const size = (units === "us" ? inches : String)(lengthMm);
  const across = widthMm === null ? "" : ` × ${(units === "us" ? inches : String)(widthMm)}`;
  return `${material}, ${size}${across} ${units === "us" ? "in" : "mm"}`;
}

/** The gear items of these sizes by their key; those that have none yet get one. */
export async function itemsOf(scope: CompanyScope, wanted: readonly Material[], units: Units): Promise<ReadonlyMap<string, MaterialItem>> {
  const byKey = (rows: readonly MaterialItem[]) => new Map(rows.map((row) => [materialKey(row), row]));
  const known = byKey(await listMaterials(scope));
  const missing = [...new Map(wanted.map((material) => [materialKey(material), material])).values()].filter((material) => !known.has(materialKey(material)));
  if (missing.length === 0) return known;
  const taken = new Set([...known.values()].map(({ name }) => name.toLowerCase()));
  await addMaterials(scope, missing.map(({ use, material, lengthMm, widthMm }) => {
    // Sixteenths tell sizes a millimetre apart no more; an item goes by a name of its own.
    const read = materialName({ use, material, lengthMm, widthMm }, units);
    const name = taken.has(read.toLowerCase()) ? `${read} (${lengthMm}${widthMm === null ? "" : ` × ${widthMm}`} mm)` : read;
    taken.add(name.toLowerCase());
    return { use, material, lengthMm, widthMm, name };
  }));
  const all = byKey(await listMaterials(scope));
  const lost = wanted.find((material) => !all.has(materialKey(material)));
  if (lost) throw new Error(`No item stands for ${materialKey(lost)}.`);
  return all;
}
