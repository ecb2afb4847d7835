"use client";

import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { changeShutterRuleAction } from "../_parts/actions.ts";
import { BackingFields } from "./backing-fields.tsx";
import { BoxFields } from "./box-fields.tsx";
import { ClampSpacingFields } from "./clamp-spacing-fields.tsx";
import { PlyFields } from "./ply-fields.tsx";
import { readRule } from "./read-rule.ts";
import type { RuleFieldsProps } from "./rule-fields.ts";

export type ShutterFormProps = RuleFieldsProps & { readonly projectId: string; readonly canEdit: boolean };

export function ShutterForm({ projectId, canEdit, ...fields }: ShutterFormProps) {
  const answered = useAnswer((data) => changeShutterRuleAction({ projectId, shutterRule: readRule(data) }));
  return (
    <SaveForm answered={answered} label="Save the shutter" done="Saved. Form sets follow it from now on." canEdit={canEdit} className="flex flex-col gap-8">
      <BoxFields {...fields} />
      <PlyFields {...fields} />
      <BackingFields {...fields} />
      <ClampSpacingFields {...fields} />
    </SaveForm>
  );
}
