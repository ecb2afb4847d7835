"use client";

import { useRouter } from "next/navigation";
import { useRef, useState } from "react";
import type { z } from "zod";
import type { changeColumnInput } from "#lib/contracts/columns.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { choiceOf, numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Notice } from "#app/_ui/message/notice.tsx";
import type { Shape } from "../../../../set-up/marks/mark-row.ts";
import { changeColumnAction } from "../../actions.ts";
import type { StoredColumn } from "./stored-column.ts";
import { ChangeFields } from "./change-fields.tsx";
import { rebase } from "./rebase.ts";
import { storedLines } from "./stored-lines.ts";

export type ChangeFormProps = { readonly stored: StoredColumn; readonly onClose: () => void };

function read(data: FormData, shape: Shape): Omit<z.input<typeof changeColumnInput>, "projectId" | "columnId" | "version"> {
  const widthMm = numberOf(data, "widthMm");
  return {
    shape, widthMm, depthMm: shape === "circle" ? widthMm : numberOf(data, "depthMm"),
    headedBy: choiceOf(data, "headedBy", ["slab", "beam"]), formHeightMm: numberOrNull(data, "formHeightMm"),
    concrete: textOf(data, "concrete"), remarks: textOf(data, "remarks"), reason: textOf(data, "reason"),
  };
}

/** Starts from the column as it was when opened; whoever else changes it meanwhile is told of, never written over unseen. */
export function ChangeForm({ stored, onClose }: ChangeFormProps) {
  const router = useRouter();
  const [base, setBase] = useState(stored);
  const [seen, setSeen] = useState(stored);
  const [shape, setShape] = useState<Shape>(base.shape);
  const foot = useRef<HTMLDivElement>(null);
  const { projectId, columnId } = stored;
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const changed = await changeColumnAction({ projectId, columnId, version: seen.version, ...read(data, shape) });
    if (changed.ok) onClose();
    else if (changed.failure.kind === "conflict") router.refresh();
    return changed;
  });
  const takeOver = () => {
    const form = foot.current?.closest("form");
    if (!form) return;
    const next = rebase(base, stored, read(new FormData(form), shape));
    if (shape === base.shape) setShape(next.shape);
    setBase(next);
    setSeen(stored);
  };
  const isBehind = stored.version !== seen.version;
  return (
    <FieldForm action={submit} {...(failure && !(failure.kind === "conflict" && isBehind) ? { failure } : {})}>
      {isBehind ? <Meanwhile seen={seen} stored={stored} onTakeOver={takeOver} /> : null}
      {stored.isStood ? <Notice title={`This column is ${stored.stage ?? "stood"} already.`}>Changing it now needs a reason, and the crew needs to hear of it.</Notice> : null}
      <ChangeFields base={base} shape={shape} onShape={setShape} isReasonAsked={stored.isStood} />
      <div ref={foot} className="flex flex-wrap justify-end gap-3">
        <Button onPress={onClose}>Leave it as it is</Button>
        <Button type="submit" kind="primary" isPending={isPending} isDisabled={isBehind}>Save the change</Button>
      </div>
    </FieldForm>
  );
}

type MeanwhileProps = { readonly seen: StoredColumn; readonly stored: StoredColumn; readonly onTakeOver: () => void };

function Meanwhile({ seen, stored, onTakeOver }: MeanwhileProps) {
  const lines = storedLines(seen, stored);
  return (
    <Notice kind="problem" title={`Changed meanwhile${stored.lastChange ? `: ${stored.lastChange}` : "."}`}>
      {lines.length > 0 ? <ul className="list-disc pl-5">{lines.map((line) => <li key={line}>{line}</li>)}</ul> : <p>Nothing that stands in this form.</p>}
      <p className="my-2">What you typed is still below, and stays; fields you have not touched take what is stored now.</p>
      <Button onPress={onTakeOver}>Take it over, keep what I typed</Button>
    </Notice>
  );
}
