import { SelectField } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";

export type InvoiceGiven = {
  readonly project: { readonly id: string; readonly currency: string }; readonly today: string;
  readonly suppliers: readonly { readonly id: string; readonly name: string }[];
};

/** What stands at the head of an invoice. */
export function HeadFields({ project, suppliers, today }: InvoiceGiven) {
  const only = suppliers.length === 1 ? suppliers[0]?.id : undefined;
  return (
    <div className="grid items-start gap-x-5 gap-y-4 sm:grid-cols-2 lg:grid-cols-3">
      <input type="hidden" name="projectId" value={project.id} />
      <SelectField name="supplierId" label="Supplier" isRequired choices={suppliers.map(({ id, name }) => ({ value: id, label: name }))} {...(only === undefined ? {} : { defaultValue: only })} />
      <TextField name="number" label="Invoice number" isRequired maxLength={60} />
      <TextField name="issuedOn" label="Dated" type="date" isRequired defaultValue={today} />
      <TextField name="from" label="Period from" type="date" isRequired defaultValue={`${today.slice(0, 7)}-01`} />
      <TextField name="to" label="Period to" type="date" isRequired defaultValue={today} />
      <TextField name="currency" label="Currency" isRequired maxLength={3} defaultValue={project.currency} />
    </div>
  );
}
