import type { LabelsPage } from "#lib/server/gear/pages/labels.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";

type Label = LabelsPage["labels"][number];

/** The line under the name: a panel's size, a set's panels, a column's level and mark. */
export function labelDetail({ size, panels, level, mark }: Label, units: Units): string {
  if (size) return `${lengthFigure(size.widthMm, units)} × ${lengthFigure(size.heightMm, units)}${units === "metric" ? " mm" : ""}`;
  if (level !== null) return mark === null ? level : `${level} · ${mark}`;
  return panels.length === 0 ? "no panels" : panels.join(", ");
}
