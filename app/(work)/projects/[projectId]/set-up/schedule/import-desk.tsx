"use client";

import { useEffect, useRef } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { paths } from "#app/paths.ts";
import { FileDrop } from "./file-drop.tsx";
import { counted, importLabel } from "./preview/preview-words.ts";
import { SchedulePreviewView } from "./preview/schedule-preview-view.tsx";
import type { ShortPreview } from "./preview/shorten-preview.ts";
import { useImport, type Imported } from "./use-import.ts";

export type ImportDeskProps = { readonly projectId: string; readonly units: Units; readonly assumedSpacingMm: number };

/** File, preview, import: nothing is written before the last button. */
export function ImportDesk({ projectId, units, assumedSpacingMm }: ImportDeskProps) {
  const { busy, fileName, preview, failure, isDrawnAnew, imported, read, confirm, startOver } = useImport(projectId);
  const heading = useRef<HTMLHeadingElement>(null);
  const digest = preview?.digest;
  useEffect(() => { if (digest !== undefined) heading.current?.focus(); }, [digest]);
  const label = preview ? importLabel(preview) : null;
  const confirmBar = preview ? (
    <div className="flex flex-wrap items-center gap-3">
      {label === null ? null : <Button kind="primary" isPending={busy === "importing"} onPress={() => void confirm()}>{label}</Button>}
      <Button isDisabled={busy !== null} onPress={startOver}>Choose another file</Button>
      {label === null ? null : <span className="text-ink-soft">Nothing has been written yet.</span>}
    </div>
  ) : null;
  return (
    <div className="flex flex-col gap-5">
      {imported ? <ImportedNotice projectId={projectId} imported={imported} /> : null}
      {failure ? <Refused fileName={fileName} failure={failure} /> : null}
      {preview === null ? <FileDrop isPending={busy === "reading"} onFile={(file) => void read(file)} /> : null}
      <p role="status" className="sr-only">{busy === "reading" ? "Reading the file" : busy === "importing" ? "Importing" : ""}</p>
      {preview ? (
        <>
          <h2 ref={heading} tabIndex={-1} className="text-xl outline-none">What {fileName} would do</h2>
          {isDrawnAnew ? <Notice kind="problem" title="The project changed while you were looking.">Nothing was imported. This preview is drawn anew against the project as it is now: look through it and import again.</Notice> : null}
          {label === null ? <NothingToImport preview={preview} /> : null}
          {confirmBar}
          <SchedulePreviewView preview={preview} units={units} assumedSpacingMm={assumedSpacingMm} />
          {label === null ? null : confirmBar}
        </>
      ) : null}
    </div>
  );
}

/** A refused file is no entry to be corrected: the line about it is all there is to say. */
function Refused({ fileName, failure }: { readonly fileName: string | null; readonly failure: Failure }) {
  if (failure.kind !== "invalid") return <FailureNotice failure={failure} />;
  return <Notice kind="problem" title={`${fileName ?? "The file"} cannot be read.`}>{failure.problems.map(({ message }) => message).join(" ")}</Notice>;
}

function NothingToImport({ preview: { refused, reading } }: { readonly preview: ShortPreview }) {
  if (reading.lifts === 0) return <Notice kind="problem" title="No column was found in this file.">What stands in the way is listed below.</Notice>;
  return <Notice title="There is nothing to import.">{refused.length > 0 ? "Every row is refused or known already." : "The project holds everything in this file already."}</Notice>;
}

function ImportedNotice({ projectId, imported }: { readonly projectId: string; readonly imported: Imported }) {
  const { created, changed, fileName, hasNewGrid } = imported;
  return (
    <Notice kind="done" title={`${fileName}: ${counted(created, "column")} created, ${changed} changed.`}>
      {hasNewGrid ? <p>The new grid lines stand at assumed spacings; enter the real ones before you read the plan.</p> : null}
      <p>A schedule does not tell slab and beam depths; enter them under Levels, or form heights come out too high.</p>
      <div className="mt-3 flex flex-wrap gap-3">
        <ButtonLink href={paths.columns(projectId)} kind="primary">See the columns</ButtonLink>
        {hasNewGrid ? <ButtonLink href={paths.setUpPart(projectId, "grid")}>Set the grid spacings</ButtonLink> : null}
        <ButtonLink href={paths.setUpPart(projectId, "levels")}>Set slab and beam depths</ButtonLink>
      </div>
    </Notice>
  );
}
