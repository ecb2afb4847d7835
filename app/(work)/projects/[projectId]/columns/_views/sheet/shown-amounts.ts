import type { ColumnsSheet, SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { mm } from "#lib/kernel/units.ts";
import { depthOver, formHeight } from "#lib/trade/shutter/form-height.ts";
import type { Quantities } from "#lib/trade/shutter/form-set.ts";
import { quantities } from "#lib/trade/shutter/form-set.ts";

export type Amounts = { readonly contactArea_m2: number; readonly volume_m3: number; /** Columns without a form height. */ readonly unknown: number };

function amountOf(column: SheetColumn, level: ReadonlyMap<string, SheetLevel>, kickerMm: number): Quantities | null {
  const [from, to] = [level.get(column.fromLevelId), level.get(column.toLevelId)];
  if (!from || !to) return null;
  const height = formHeight({
    storeyHeight: mm(to.elevationMm - from.elevationMm),
    depthOver: depthOver(column.headedBy, { slab: mm(to.slabDepthMm), beam: mm(to.beamDepthMm) }),
    kickerHeight: mm(kickerMm),
    override: column.formHeightMm === null ? null : mm(column.formHeightMm),
  });
  if (!height.ok) return null;
  const section = column.shape === "circle"
    ? ({ shape: "round", diameter: mm(column.width_mm) } as const)
    : ({ shape: "rectangular", width: mm(column.width_mm), depth: mm(column.depth_mm) } as const);
  return quantities(section, height.value.height);
}

/**
 * Contact area and volume of concrete of some columns. Contact faces only, slab top to underside of slab or beam.
 * What one column measures does not change with a tick, so it is worked out once for each sheet.
 */
export function measure({ levels, kickerMm }: Pick<ColumnsSheet, "levels" | "kickerMm">): (columns: readonly SheetColumn[]) => Amounts {
  const level = new Map(levels.map((each) => [each.id, each]));
  const measured = new Map<string, Quantities | null>();
  return (columns) => {
    let [contactArea_m2, volume_m3, unknown] = [0, 0, 0];
    for (const column of columns) {
      const amount = measured.has(column.id) ? measured.get(column.id) : amountOf(column, level, kickerMm);
      measured.set(column.id, amount ?? null);
      contactArea_m2 += amount?.contactArea ?? 0;
      volume_m3 += amount?.volume ?? 0;
      unknown += amount ? 0 : 1;
    }
    return { contactArea_m2, volume_m3, unknown };
  };
}
