import type { ColumnsSheet, SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { mm } from "#lib/kernel/units.ts";
import { depthOver, formHeight } from "#lib/trade/shutter/form-height.ts";
import { quantities } from "#lib/trade/shutter/form-set.ts";

export type Amounts = { readonly contactArea_m2: number; readonly volume_m3: number; /** Columns without a form height. */ readonly unknown: number };

/** Contact area and volume of concrete of some columns. Contact faces only, slab top to underside of slab or beam. */
export function amountsOf(columns: readonly SheetColumn[], { levels, kickerMm }: Pick<ColumnsSheet, "levels" | "kickerMm">): Amounts {
  const level = new Map(levels.map((each) => [each.id, each]));
  let [contactArea_m2, volume_m3, unknown] = [0, 0, 0];
  for (const column of columns) {
    const [from, to] = [level.get(column.fromLevelId), level.get(column.toLevelId)];
    if (!from || !to) continue;
    const height = formHeight({
      storeyHeight: mm(to.elevationMm - from.elevationMm),
      depthOver: depthOver(column.headedBy, { slab: mm(to.slabDepthMm), beam: mm(to.beamDepthMm) }),
      kickerHeight: mm(kickerMm),
      override: column.formHeightMm === null ? null : mm(column.formHeightMm),
    });
    if (!height.ok) unknown += 1;
    else {
      const section = column.shape === "circle"
        ? ({ shape: "round", diameter: mm(column.width_mm) } as const)
        : ({ shape: "rectangular", width: mm(column.width_mm), depth: mm(column.depth_mm) } as const);
      const { contactArea, volume } = quantities(section, height.value.height);
      contactArea_m2 += contactArea;
      volume_m3 += volume;
    }
  }
  return { contactArea_m2, volume_m3, unknown };
}
