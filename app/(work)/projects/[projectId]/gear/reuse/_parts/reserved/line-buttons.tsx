"use client";

import type { PanelSize } from "#lib/trade/gear/panel-life.ts";
import type { RestDoubt } from "#lib/trade/gear/panel-rests.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { keptOf, RestChecks } from "../../../_parts/forms/rest-checks.tsx";
import { cutReservedAction, withdrawReservedAction } from "../../actions.ts";

type Waiting = { readonly id: string; readonly panel: string | null; readonly rests: readonly PanelSize[]; readonly restDoubt: RestDoubt | null };

/** Ticked once the saw is through: the panel ends, and the smaller one begins. */
export function CutButton({ projectId, line: { id, panel, rests, restDoubt }, units }: { readonly projectId: string; readonly line: Waiting; readonly units: Units }) {
  const { submit, failure, isPending } = useAnswer((data) => cutReservedAction({ projectId, reservationId: id, happenedAt: new Date().toISOString(), rests: keptOf(data, rests) }));
  const name = panel ?? "The panel";
  return (
    <div className="no-print">
      <Dialog title={`${name} is cut down`} trigger={<Button size="glove">Cut down</Button>}>
        <FieldForm action={submit} {...(failure ? { failure } : {})}>
          <p>{name} ends, and the panel it was cut into takes its place under a number of its own. Write that number on its back.</p>
          <RestChecks rests={rests} doubt={restDoubt} units={units} />
          <div className="flex justify-end"><Button type="submit" kind="primary" size="glove" isPending={isPending}>It is cut</Button></div>
        </FieldForm>
      </Dialog>
    </div>
  );
}

export function WithdrawLines({ projectId, ids, column }: { readonly projectId: string; readonly ids: readonly string[]; readonly column: string }) {
  const { submit, failure, isPending } = useAnswer((data) => withdrawReservedAction({ projectId, reservationIds: [...ids], reason: textOf(data, "reason") }));
  return (
    <div className="no-print mt-auto">
      <Dialog title={`Free the panels of ${column}`} trigger={<Button>Withdraw</Button>}>
        <FieldForm action={submit} {...(failure ? { failure } : {})}>
          <p>Its panels are free for other columns again. If they had made up its set, the cut that earned is withdrawn with it.</p>
          <TextField name="reason" label="Why" maxLength={200} isRequired />
          <div className="flex justify-end"><Button type="submit" kind="danger" isPending={isPending}>Withdraw</Button></div>
        </FieldForm>
      </Dialog>
    </div>
  );
}
