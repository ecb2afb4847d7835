import type { ReactNode } from "react";
import type { ColumnPage } from "./column-page.ts";
import type { PageFact } from "#app/_ui/page/page.tsx";
import { lengthFigure, quantityText, sectionText, type Units } from "#app/_ui/value/format-quantity.ts";
import { heightSum } from "./height-sum.ts";

const unitOf = (units: Units): string => (units === "us" ? "" : " mm");

/** The title block of one column: what it is, and how high its form has to be. */
export function titleFacts({ column, project: { units }, form }: ColumnPage): readonly PageFact[] {
  const { mark, fromLevel, toLevel, shape, widthMm, depthMm, concrete, mainBars, remarks } = column;
  const facts: PageFact[] = [
    { label: "Mark", value: mark.name },
    { label: "Section", value: `${sectionText(shape, widthMm, depthMm, units)}${unitOf(units)}` },
    { label: "Lift", value: <>{fromLevel.name} → {toLevel.name}<Note>{quantityText(fromLevel.elevationMm / 1000, "m", units)} to {quantityText(toLevel.elevationMm / 1000, "m", units)}</Note></> },
  ];
  if (form.height.ok) {
    const { height, working } = form.height.value;
    facts.push({ label: "Form height", value: <>{lengthFigure(height, units)}{unitOf(units)}<Note>{heightSum(working, column.headedBy, units)}</Note></> });
  }
  if (concrete !== null) facts.push({ label: "Concrete", value: concrete });
  if (mainBars !== null) facts.push({ label: "Main bars", value: mainBars });
  if (remarks !== null) facts.push({ label: "Remarks", value: <span className="font-normal">{remarks}</span> });
  return facts;
}

const Note = ({ children }: { readonly children: ReactNode }) => <span className="block text-sm font-normal text-ink-soft">{children}</span>;
