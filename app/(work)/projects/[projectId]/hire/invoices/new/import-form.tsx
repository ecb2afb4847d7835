"use client";

import { useRouter } from "next/navigation";
import { useId } from "react";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { importInvoiceAction } from "../../_parts/actions.ts";
import { HeadFields, type InvoiceGiven } from "./head-fields.tsx";

export function ImportForm(given: InvoiceGiven) {
  const router = useRouter();
  const id = useId();
  const answered = useAnswer(async (data) => {
    const imported = await importInvoiceAction(data);
    if (imported.ok) router.push(paths.hireInvoice(given.project.id, imported.value.invoiceId));
    return imported;
  });
  return (
    <SaveForm answered={answered} label="Import and compare" done="Imported.">
      <HeadFields {...given} />
      <div className="flex flex-col gap-1" data-field="file">
        <label htmlFor={id} className="font-semibold">File of the supplier</label>
        <input
          id={id} name="file" type="file" required accept=".csv,.xlsx,text/csv,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
          className="min-h-glove w-full border-2 border-dashed border-ink bg-sheet p-3 file:mr-4 file:min-h-hand file:cursor-pointer file:border-2 file:border-ink file:bg-sheet file:px-4 file:font-semibold"
        />
      </div>
    </SaveForm>
  );
}
