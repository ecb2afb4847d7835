"use client";

import { useRouter } from "next/navigation";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { paths } from "#app/paths.ts";

/** The same table at the end of an earlier day. */
export function AsOf({ projectId, day }: { readonly projectId: string; readonly day: string | null }) {
  const router = useRouter();
  return (
    <div className="flex items-end gap-2">
      <TextField name="on" type="date" label="At the end of" isFilter value={day ?? ""} onChange={(on) => router.push(paths.gear(projectId, on === "" ? {} : { on }))} />
      {day === null ? null : <ButtonLink href={paths.gear(projectId)}>Now</ButtonLink>}
    </div>
  );
}
