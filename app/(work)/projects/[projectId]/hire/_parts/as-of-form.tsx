import { Button } from "#app/_ui/control/button.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";

/** Shows the page as it stood, or will stand, on another day. */
export function AsOfForm({ action, on }: { readonly action: string; readonly on: string }) {
  return (
    <form action={action} className="flex flex-wrap items-end gap-2">
      <TextField name="on" label="As of" type="date" isFilter defaultValue={on} />
      <Button type="submit">Show</Button>
    </form>
  );
}
