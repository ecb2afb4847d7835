"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { saveSupplierAction } from "../_parts/actions.ts";

export type SupplierFormProps = {
  readonly projectId: string;
  readonly supplier: { readonly id: string; readonly name: string; readonly contact: string | null; readonly phone: string | null; readonly email: string | null } | null;
};

export function SupplierForm({ projectId, supplier }: SupplierFormProps) {
  const [isOpen, setOpen] = useState(false);
  const title = supplier === null ? "Add a supplier" : `How to reach ${supplier.name}`;
  const answered = useAnswer(async (data) => {
    const saved = await saveSupplierAction(data);
    if (saved.ok) setOpen(false);
    return saved;
  });
  return (
    <>
      <Button kind={supplier === null ? "primary" : "plain"} onPress={() => setOpen(true)}>{supplier === null ? title : "Change contact"}</Button>
      <Dialog title={title} isOpen={isOpen} onOpenChange={setOpen}>
        <SaveForm answered={answered} label="Save" done="Saved.">
          <input type="hidden" name="projectId" value={projectId} />
          <input type="hidden" name="supplierId" value={supplier?.id ?? ""} />
          <TextField name="name" label="Name" isRequired maxLength={80} defaultValue={supplier?.name ?? ""} autoFocus />
          <TextField name="contact" label="Contact" maxLength={80} defaultValue={supplier?.contact ?? ""} />
          <TextField name="phone" label="Phone" type="tel" maxLength={40} defaultValue={supplier?.phone ?? ""} />
          <TextField name="email" label="E-mail" type="email" maxLength={120} defaultValue={supplier?.email ?? ""} />
        </SaveForm>
      </Dialog>
    </>
  );
}
