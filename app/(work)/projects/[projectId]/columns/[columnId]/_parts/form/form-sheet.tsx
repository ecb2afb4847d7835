import type { CSSProperties } from "react";
import type { FormSet } from "#lib/trade/shutter/form-set.ts";
import { ElevationSheet } from "#app/_ui/drawing/sheet/elevation-sheet.tsx";
import { FaceElevation } from "#app/_ui/drawing/sheet/face-elevation.tsx";
import { PlanSection } from "#app/_ui/drawing/sheet/plan-section.tsx";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Caution } from "#app/_ui/message/caution.tsx";
import { Figure } from "#app/_ui/page/figure.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { paths } from "#app/paths.ts";
import type { ColumnPage } from "../column-page.ts";
import { CheckTable } from "./tables/check-table.tsx";
import { ClampTable, printedRows } from "./tables/clamp-table.tsx";
import { CuttingTable } from "./tables/cutting-table.tsx";
import { FormFigures } from "./form-figures.tsx";
import { FormRefusal } from "./form-refusal.tsx";
import { jointWords } from "./words/joint-words.ts";
import { KeyLines } from "./key-lines.tsx";
import { PanelTable } from "./tables/panel-table.tsx";
import { warningWords } from "./words/warning-words.ts";
import { WorkingList } from "#app/_ui/page/working-list.tsx";

export type FormSheetProps = { readonly page: Pick<ColumnPage, "project" | "column" | "form">; readonly canSetUp: boolean };

/** The form set of the column, drawn, listed and proved from the same numbers; or why there is none. */
export function FormSheet({ page, canSetUp }: FormSheetProps) {
  const { formSet } = page.form;
  if (!formSet.ok) return <Section title="Form set"><FormRefusal page={page} refusal={formSet.failure} canSetUp={canSetUp} /></Section>;
  const { units, id } = page.project;
  const set = formSet.value;
  const work = (name: "clamp-layout" | "plumb") => paths.working(id, name, { column: page.column.id });
  return (
    <>
      <Section title="Form set" note={jointWords(set)}>
        <div className="form-sheet flex flex-col gap-4 print:gap-1.5" style={drawnHigh(set)}>
          <Warnings set={set} units={units} />
          <div className="grid grid-cols-1 items-start gap-4 lg:grid-cols-[33rem_minmax(0,1fr)] print:grid-cols-[47fr_53fr] print:gap-2">
            <div className="flex min-w-0 flex-col gap-4 print:gap-1.5">
              <Figure caption="Plan section, face A at the top"><PlanSection formSet={set} units={units} width={380} /></Figure>
              <CuttingTable cutting={set.cutting} units={units} />
              <PanelTable panels={set.panels} units={units} />
            </div>
            <div className="flex min-w-0 flex-col gap-4 print:gap-1.5">
              <Elevations set={set} units={units} />
              <ClampTable clamps={set.clamps} formHeight={set.formHeight} units={units} />
              <FormFigures quantities={set.quantities} weight={set.weight} units={units} />
              <div className="no-print flex flex-wrap gap-3">
                <ButtonLink href={work("clamp-layout")}>Check the clamps as they stand</ButtonLink>
                <ButtonLink href={work("plumb")}>Work out plumb and twist</ButtonLink>
              </div>
            </div>
          </div>
          <Caution of="form set and clamp layout" keys={set.cautions} />
          <KeyLines formSet={set} units={units} />
        </div>
      </Section>
      <Section title="Checks" note="demand over what is allowed; a form set is given out only where every one is up to 100 %" className="no-print">
        <CheckTable checks={set.checks} units={units} />
      </Section>
      <Section title="Working" note="in the units of each formula" className="no-print">
        <WorkingList working={page.form.height.ok ? [page.form.height.value.working, ...set.working] : set.working} units={units} />
      </Section>
    </>
  );
}

function Warnings({ set, units }: { readonly set: FormSet; readonly units: Units }) {
  if (set.warnings.length === 0) return null;
  return (
    <ul aria-label="Warnings" className="form-warnings border-2 border-l-8 border-flag bg-flag-wash p-3">
      {set.warnings.map((warning) => <li key={`${warning.code} ${warning.message}`}>{warningWords(warning, units)}</li>)}
    </ul>
  );
}

function Elevations({ set, units }: { readonly set: FormSet; readonly units: Units }) {
  const { limit, edition } = set.pressure;
  return (
    <div className="flex flex-wrap items-start gap-4">
      <Figure caption={`Face A, clamp heights from the foot; pressure: ${edition}, ${quantityText(limit, "kPa", units)} at the foot`} className="w-min print:w-full">
        <ElevationSheet formSet={set} face="A" units={units} />
      </Figure>
      <Figure caption="Face B" className="print:hidden"><FaceElevation formSet={set} face="B" units={units} /></Figure>
    </div>
  );
}

/** On paper the drawings give way to the tables below them, so that a form with many pieces or clamps still takes one page. */
function drawnHigh({ cutting, clamps, warnings }: FormSet): CSSProperties & Record<"--elevation" | "--plan", string> {
  const rest = 96 - warnings.length * 3.4;
  const elevation = rest - printedRows(clamps.heights.length) * 3.4;
  const plan = rest - cutting.length * 3.7;
  return { "--elevation": `${Math.max(56, elevation)}mm`, "--plan": `${Math.max(36, plan)}mm` };
}
