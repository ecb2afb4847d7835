import { Section } from "#app/_ui/page/section.tsx";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { ColumnsToChange } from "./columns-to-change.tsx";
import { ColumnsToCreate } from "./columns-to-create.tsx";
import { FindingList } from "./finding-list.tsx";
import { counted, headingWords, LAYOUTS, sizeText, stageWords } from "./preview-words.ts";
import { PreviewCounts } from "./preview-counts.tsx";
import { ProblemsDownload } from "./problems-download.tsx";
import type { ShortPreview } from "./shorten-preview.ts";
import { ShownNote } from "./shown-note.tsx";

export type SchedulePreviewViewProps = { readonly preview: ShortPreview; readonly units: Units; readonly assumedSpacingMm: number };

/** Everything a file would do to the project; what stands in the way comes first. */
export function SchedulePreviewView({ preview, units, assumedSpacingMm }: SchedulePreviewViewProps) {
  const { refused, reading: { warnings }, create, change } = preview;
  const hasFindings = refused.length + warnings.length > 0;
  return (
    <div className="flex flex-col gap-6">
      <PreviewCounts preview={preview} />
      {hasFindings ? <ProblemsDownload refused={refused} warnings={warnings} /> : null}
      {refused.length > 0 ? (
        <Section title="Refused" note="these rows are left out; the rest can be imported"><FindingList caption="Refused" findings={refused} /></Section>
      ) : null}
      {warnings.length > 0 ? (
        <Section title="Look at these" note="they are taken in as described"><FindingList caption="Warnings" findings={warnings} /></Section>
      ) : null}
      <SetUpParts preview={preview} units={units} assumedSpacingMm={assumedSpacingMm} />
      {create.columns.count > 0 ? <Section title="Columns created" note={String(create.columns.count)}><ColumnsToCreate columns={create.columns} units={units} /></Section> : null}
      {change.columns.count > 0 ? <Section title="Columns changed" note={String(change.columns.count)}><ColumnsToChange columns={change.columns} units={units} /></Section> : null}
      <NotInFile preview={preview} />
      <Recognised preview={preview} />
    </div>
  );
}

function SetUpParts({ preview: { create, change, freePlaces }, units, assumedSpacingMm }: SchedulePreviewViewProps) {
  const height = (valueMm: number | null): string => (valueMm === null ? "no elevation" : quantityText(valueMm / 1000, "m", units));
  const lines = [
    create.levels.length > 0 ? <><strong>{counted(create.levels.length, "new level")}:</strong> {create.levels.map(({ name, elevation_mm }) => `${name} at ${height(elevation_mm)}`).join(", ")}.</> : null,
    change.levels.length > 0 ? <><strong>{counted(change.levels.length, "level")} moved:</strong> {change.levels.map(({ name, from, to }) => `${name} from ${height(from)} to ${height(to)}`).join(", ")}.</> : null,
    create.gridLines.length > 0 ? (
      <>
        <strong>{counted(create.gridLines.length, "new grid line")}:</strong> {create.gridLines.map(({ name }) => name).join(", ")}.
        {" "}A schedule does not say how far apart grid lines stand: they are put {units === "us" ? quantityText(assumedSpacingMm, "mm", units) : `${assumedSpacingMm / 1000} m`} apart until you enter the real spacings under Grid.
      </>
    ) : null,
    create.marks.length > 0 ? <><strong>{counted(create.marks.length, "new mark")}:</strong> {create.marks.slice(0, 60).map((mark) => `${mark.name} ${sizeText(mark, units)}`).join(", ")}{create.marks.length > 60 ? ` and ${create.marks.length - 60} more` : ""}.</> : null,
    freePlaces.count > 0 ? <><strong>{counted(freePlaces.count, "place")} off the grid:</strong> {freePlaces.first.slice(0, 40).join(", ")}{freePlaces.count > 40 ? ` and ${freePlaces.count - 40} more` : ""}. They are listed as written and not drawn on the plan.</> : null,
  ].filter((line) => line !== null);
  if (lines.length === 0) return null;
  return (
    <Section title="Levels, grid and marks">
      <ul className="flex flex-col gap-2 border-2 border-ink bg-sheet p-4">{lines.map((line, index) => <li key={index} className="break-words">{line}</li>)}</ul>
    </Section>
  );
}

function NotInFile({ preview: { notInFile } }: { readonly preview: ShortPreview }) {
  if (notInFile.count === 0) return null;
  return (
    <Section title="Not in the file" note={`${notInFile.count}; nothing happens to them`}>
      <details className="border-2 border-ink bg-sheet">
        <summary className="flex min-h-hand cursor-pointer items-center px-4">Show {counted(notInFile.count, "column")} of the project that the file does not mention</summary>
        <p className="border-t border-rule-soft px-4 py-3">{notInFile.first.map(({ gridRef, fromLevel, stage }) => `${gridRef} from ${fromLevel} (${stageWords(stage)})`).join(", ")}</p>
      </details>
      <ShownNote shown={notInFile.first.length} count={notInFile.count} />
    </Section>
  );
}

function Recognised({ preview: { reading } }: { readonly preview: ShortPreview }) {
  return (
    <Section title="How the file was read">
      <p>{reading.layout === null ? "No layout was recognised." : `As ${LAYOUTS[reading.layout]}.`} {counted(reading.rowsRead, "row")} read, {counted(reading.lifts, "lift")} found.</p>
      {reading.columnsRecognised.length > 0 ? (
        <ul className="mt-2 grid gap-x-6 sm:grid-cols-2 lg:grid-cols-3">
          {reading.columnsRecognised.slice(0, 100).map((heading) => <li key={`${heading.sheet} ${heading.cell}`}><span className="text-ink-soft">{heading.cell}</span> {headingWords(heading)}</li>)}
        </ul>
      ) : null}
    </Section>
  );
}
