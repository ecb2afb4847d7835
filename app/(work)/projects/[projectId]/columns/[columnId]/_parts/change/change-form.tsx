"use client";

import { useRouter } from "next/navigation";
import { useRef, useState } from "react";
import type { z } from "zod";
import type { changeColumnInput } from "#lib/contracts/columns.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { choiceOf, numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Notice } from "#app/_ui/message/notice.tsx";
import { HEADS } from "../../../../set-up/_parts/heads.ts";
import { SHAPES, toShape, type Shape } from "../../../../set-up/marks/mark-row.ts";
import { changeColumnAction } from "../../actions.ts";
import type { StoredColumn } from "./change-column.tsx";
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
  const fields = useRef<HTMLDivElement>(null);
  const [shape, setShape] = useState<Shape>(base.shape);
  const { projectId, columnId, units } = base;
  const answered = useAnswer(async (data) => {
    const changed = await changeColumnAction({ projectId, columnId, version: seen.version, ...read(data, shape) });
    if (changed.ok) onClose();
    else if (changed.failure.kind === "conflict") router.refresh();
    return changed;
  });
  const lookAtStored = () => {
    const form = fields.current?.closest("form");
    if (!form) return;
    const next = rebase(base, stored, read(new FormData(form), shape));
    if (shape === base.shape) setShape(next.shape);
    setBase(next);
    setSeen(stored);
  };
  const isBehind = stored.version !== seen.version;
  const { failure } = answered;
  const shown = failure && !(failure.kind === "conflict" && isBehind) ? { failure } : {};
  return (
    <FieldForm action={answered.submit} {...shown}>
      {isBehind ? <Meanwhile seen={seen} stored={stored} onKeep={lookAtStored} /> : null}
      {stored.isStood ? <Notice title={`This column is ${stored.stage ?? "stood"} already.`}>Changing it now needs a reason, and the crew needs to hear of it.</Notice> : null}
      <ChoiceGroup name="shape" label="Section" choices={SHAPES} value={shape} onChange={(value) => setShape(toShape(value))} />
      <div ref={fields} className="grid gap-4 sm:grid-cols-2">
        <LengthField key={`width ${base.widthMm}`} name="widthMm" label={shape === "circle" ? "Diameter" : "Width"} units={units} places={1} defaultValueMm={base.widthMm} isRequired />
        {shape === "circle" ? null : <LengthField key={`depth ${base.depthMm}`} name="depthMm" label="Depth" units={units} places={1} defaultValueMm={base.depthMm} isRequired />}
      </div>
      <ChoiceGroup key={base.headedBy} name="headedBy" label="Headed by" choices={HEADS} defaultValue={base.headedBy} />
      <LengthField
        key={`height ${base.formHeightMm ?? ""}`} name="formHeightMm" label="Form height" units={units} hint="Empty: storey height less what is over it and the kicker"
        {...(base.formHeightMm === null ? {} : { defaultValueMm: base.formHeightMm })}
      />
      <TextField key={`concrete ${base.concrete ?? ""}`} name="concrete" label="Concrete" defaultValue={base.concrete ?? ""} maxLength={40} />
      <TextField key={`remarks ${base.remarks ?? ""}`} name="remarks" label="Remarks" defaultValue={base.remarks ?? ""} rows={2} maxLength={300} />
      <TextField name="reason" label="Reason for the change" rows={2} maxLength={300} isRequired={stored.isStood} />
      <div className="flex flex-wrap justify-end gap-3">
        <Button onPress={onClose}>Leave it as it is</Button>
        <Button type="submit" kind="primary" isPending={answered.isPending} isDisabled={isBehind}>Save the change</Button>
      </div>
    </FieldForm>
  );
}

type MeanwhileProps = { readonly seen: StoredColumn; readonly stored: StoredColumn; readonly onKeep: () => void };

function Meanwhile({ seen, stored, onKeep }: MeanwhileProps) {
  const lines = storedLines(seen, stored);
  return (
    <Notice kind="problem" title={`Changed meanwhile${stored.lastChange ? `: ${stored.lastChange}` : "."}`}>
      {lines.length > 0 ? <ul className="list-disc pl-5">{lines.map((line) => <li key={line}>{line}</li>)}</ul> : <p>Nothing that stands in this form.</p>}
      <p className="my-2">What you typed is still below, and stays; fields you have not touched take what is stored now.</p>
      <Button onPress={onKeep}>Take it over, keep what I typed</Button>
    </Notice>
  );
}
