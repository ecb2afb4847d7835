"use client";

import { neverArrived } from "#app/_field/outbox/outbox-plan.ts";
import { outbox } from "#app/_field/outbox.ts";
import { KeptRow } from "#app/_field/ticking/kept-row.tsx";
import type { TickPerson, TickProject } from "#app/_field/ticking/tick-column.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useTakeBack } from "./use-gathering.ts";

type Props = { readonly project: TickProject; readonly me: TickPerson; readonly movementId: string; /** "Gathered: 8 × Wedge". */ readonly about: string };

/** Takes back what was gathered, with a reason; kept on this phone until it is sent. */
export function TakeBackKept({ project, me, movementId, about }: Props) {
  const { kept, keep } = useTakeBack({ projectId: project.id, me, movementId });
  if (kept?.standing === "refused") return <ul className="no-print basis-full"><KeptRow item={kept} project={project} /></ul>;
  if (kept) {
    return (
      <div className="no-print flex flex-wrap items-center gap-3">
        <p className="text-sm font-semibold text-accent">taken back, {kept.standing === "sent" ? "sent" : "saved on this phone"}</p>
        {kept.standing === "waiting" && neverArrived(kept) ? <Button size="glove" onPress={() => void outbox().strikeOut([kept.event.id])}>Undo</Button> : null}
      </div>
    );
  }
  return (
    <div className="no-print">
      <Dialog title="Take back: Gathered" trigger={<Button>Take back</Button>}>
        {(close) => (
          <FieldForm action={(data) => { const reason = textOf(data, "reason").trim(); if (reason !== "") void keep({ kind: "taken-back", movementId, reason, about }).then(close); }}>
            <p>The gear goes back to where it was, as if this had not happened. Both entries stay on record.</p>
            <TextField name="reason" label="Why" maxLength={300} isRequired />
            <div className="flex justify-end"><Button type="submit" kind="danger">Take it back</Button></div>
          </FieldForm>
        )}
      </Dialog>
    </div>
  );
}
