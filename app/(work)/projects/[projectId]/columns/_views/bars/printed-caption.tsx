"use client";

import type { ColumnsSheet, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { STAGE_FILTERS, type ColumnFilter } from "../sheet/column-filter.ts";
import { useIsPrinting } from "../state/use-is-printing.ts";

export type PrintedCaptionProps = {
  readonly sheet: Pick<ColumnsSheet, "projectName" | "timeZone" | "marks" | "gridLines">;
  readonly level: SheetLevel | null;
  readonly filter: ColumnFilter;
};

/** On paper, where the fields of the page are not: which project and level, what the filter let through, and as of when. */
export function PrintedCaption({ sheet, level, filter }: PrintedCaptionProps) {
  if (!useIsPrinting()) return null;
  const stage = filter.stage === "" ? undefined : STAGE_FILTERS.find(({ value }) => value === filter.stage)?.label;
  const mark = sheet.marks.find(({ id }) => id === filter.markId)?.name;
  const line = sheet.gridLines.find(({ id }) => id === filter.gridLineId)?.name;
  const words = [
    sheet.projectName, level?.name ?? "Every level", stage, mark && `mark ${mark}`, line && `grid line ${line}`,
    filter.flagged ? "queried or held" : undefined, filter.text && `position ${filter.text}`,
  ];
  return (
    <p className="hidden print:block">
      <strong className="text-lg font-semibold">{words.filter(Boolean).join(" · ")}</strong> as of <TimeText at={new Date().toISOString()} timeZone={sheet.timeZone} />
    </p>
  );
}
