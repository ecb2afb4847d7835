"use client";

import { useState } from "react";
import { brokenRule, invalid, type Failure, type Result } from "#lib/kernel/result.ts";
import { importScheduleAction, previewScheduleAction } from "./actions.ts";
import type { ShortPreview } from "./preview/shorten-preview.ts";

const MOST_BYTES = 10 * 1024 * 1024;

export type Imported = { readonly created: number; readonly changed: number; readonly fileName: string; readonly hasNewGrid: boolean };
export type ImportState = {
  readonly busy: "reading" | "importing" | null;
  readonly fileName: string | null;
  readonly preview: ShortPreview | null;
  readonly failure: Failure | null;
  /** The preview shown was drawn again because file or project had changed. */
  readonly isDrawnAnew: boolean;
  readonly imported: Imported | null;
};
const NOTHING: ImportState = { busy: null, fileName: null, preview: null, failure: null, isDrawnAnew: false, imported: null };

export type Import = ImportState & {
  readonly read: (file: File) => Promise<void>;
  readonly confirm: () => Promise<void>;
  readonly startOver: () => void;
};

/** A copy in memory, so that what is imported is what was previewed even if the file on disk is saved again. */
const copyOf = async (file: File): Promise<File> => new File([await file.arrayBuffer()], file.name, { type: file.type });

async function tried<T>(send: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await send();
  } catch (error) {
    if (error instanceof TypeError) return brokenRule("not-reached");
    if (error instanceof DOMException) return invalid({ field: "file", message: "The file cannot be read any more; it may have been moved or is open elsewhere. Choose it again." });
    throw error;
  }
}

/** First what the file would do, then, once it is confirmed, doing it. */
export function useImport(projectId: string): Import {
  const [state, setState] = useState<ImportState>(NOTHING);
  const [file, setFile] = useState<File | null>(null);
  const data = (given: File, digest = ""): FormData => {
    const form = new FormData();
    form.set("projectId", projectId);
    form.set("digest", digest);
    form.set("file", given);
    return form;
  };
  const draw = async (given: File, isDrawnAnew: boolean): Promise<void> => {
    const drawn = await tried(() => previewScheduleAction(data(given)));
    setState({ ...NOTHING, fileName: given.name, isDrawnAnew, preview: drawn.ok ? drawn.value : null, failure: drawn.ok ? null : drawn.failure });
  };
  const read = async (chosen: File): Promise<void> => {
    setState({ ...NOTHING, busy: "reading", fileName: chosen.name });
    if (chosen.size > MOST_BYTES) {
      const message = "The file is larger than 10 MB. Upload the schedule alone, without drawings or pictures.";
      setState({ ...NOTHING, fileName: chosen.name, failure: { kind: "invalid", problems: [{ field: "file", message }] } });
      return;
    }
    const copied = await tried<File>(async () => ({ ok: true, value: await copyOf(chosen) }));
    if (!copied.ok) return setState({ ...NOTHING, fileName: chosen.name, failure: copied.failure });
    setFile(copied.value);
    await draw(copied.value, false);
  };
  const confirm = async (): Promise<void> => {
    const { preview, fileName } = state;
    if (!file || !preview || fileName === null) return;
    setState({ ...state, busy: "importing", failure: null });
    const done = await tried(() => importScheduleAction(data(file, preview.digest)));
    if (done.ok) setState({ ...NOTHING, imported: { ...done.value, fileName, hasNewGrid: preview.create.gridLines.length > 0 } });
    else if (done.failure.kind === "conflict") await draw(file, true);
    else setState({ ...state, busy: null, failure: done.failure });
  };
  return { ...state, read, confirm, startOver: () => { setFile(null); setState(NOTHING); } };
}
