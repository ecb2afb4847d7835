"use client";

import { useState } from "react";
import { can } from "#lib/access/permissions.ts";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import type { Remark } from "#lib/trade/progress/site-event.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { wordFinding } from "#app/_ui/wording-findings.ts";
import { useTicks } from "#app/_field/use-ticks.ts";
import type { TickPerson, TickProject } from "./tick-column.ts";

export type EventButtonProps = {
  readonly project: Pick<TickProject, "id" | "timeZone">;
  readonly me: TickPerson;
  readonly columnId: string;
  /** "A4, Level 2". */
  readonly about: string;
  /** The entry it speaks of. */
  readonly eventId: string;
  readonly onTaken?: (answer: RecordAnswer) => void;
};

type Saying = { readonly isBusy: boolean; readonly told: string | null; readonly say: (remark: Remark, reason: string | null) => Promise<boolean> };

/** Says something about an earlier entry and tells what came of it; true when it is recorded or saved. */
function useRemark({ project, me, columnId, about, onTaken }: EventButtonProps): Saying {
  const ticks = useTicks({ projectId: project.id, personId: me.id, personName: me.name });
  const [isBusy, setBusy] = useState(false);
  const [told, setTold] = useState<string | null>(null);
  const say: Saying["say"] = async (remark, reason) => {
    setBusy(true);
    const outcome = await ticks.tick([{ ...remark, columnId, about, reason }]).finally(() => setBusy(false));
    if (outcome.where === "saved-on-phone") {
      setTold("Saved on this phone; it is sent as soon as there is reception.");
      return true;
    }
    const [answer] = outcome.answer.answers;
    const isTaken = answer?.outcome !== "refused" && answer?.outcome !== "needs-reason";
    if (!isTaken) await ticks.drop(outcome.ids);
    setTold(isTaken ? null : (answer.findings.map((finding) => wordFinding(finding, project.timeZone).title).join(" ") || "Not taken."));
    if (isTaken) onTaken?.(outcome.answer);
    return isTaken;
  };
  return { isBusy, told, say };
}

const Told = ({ told }: { readonly told: string | null }) => (told === null ? null : <p role="status" className="mt-1 text-sm font-semibold">{told}</p>);

type ReasonFormProps = { readonly label: string; readonly confirm: string; readonly isBusy: boolean; readonly onReason: (reason: string) => void };

function ReasonForm({ label, confirm, isBusy, onReason }: ReasonFormProps) {
  const [reason, setReason] = useState("");
  const isGiven = reason.trim() !== "";
  return (
    <form className="flex flex-col gap-4" onSubmit={(event) => { event.preventDefault(); if (isGiven) onReason(reason.trim()); }}>
      <TextField name="reason" label={label} size="glove" rows={2} maxLength={300} value={reason} onChange={setReason} isRequired />
      <Button type="submit" kind="danger" size="glove" wide isDisabled={!isGiven} isPending={isBusy}>{confirm}</Button>
    </form>
  );
}

/** Takes an entry of the history out, with a reason; a withdrawal is itself an entry and stays in sight. */
export function WithdrawButton(props: EventButtonProps & { /** What the entry says: "clamped". */ readonly entry: string }) {
  const { isBusy, told, say } = useRemark(props);
  const { me, entry, about, eventId } = props;
  if (!can(me.role, "progress.record")) return null;
  return (
    <>
      <Dialog title={`Withdraw “${entry}”, ${about}`} trigger={<Button isDisabled={isBusy}>Withdraw<span className="sr-only">: {entry}</span></Button>}>
        {(close) => (
          <ReasonForm
            label="What was wrong with it" confirm="Withdraw the entry" isBusy={isBusy}
            onReason={(reason) => void say({ kind: "withdrawn", eventId }, reason).then((isTaken) => { if (isTaken) close(); })}
          />
        )}
      </Dialog>
      <Told told={told} />
    </>
  );
}

/** Decides on a queried entry: it stands, or it is set aside with a reason. */
export function SettleButtons(props: EventButtonProps) {
  const { isBusy, told, say } = useRemark(props);
  const { me, about, eventId } = props;
  if (!can(me.role, "progress.record")) return null;
  return (
    <>
      <div className="grid grid-cols-2 gap-2 sm:max-w-md">
        <Dialog title={`It stands: ${about}`} trigger={<Button size="glove" wide isDisabled={isBusy}>It stands</Button>}>
          {(close) => (
            <ReasonForm
              label="Why it stands" confirm="Let it stand" isBusy={isBusy}
              onReason={(reason) => void say({ kind: "settled", eventId, stands: true }, reason).then((isTaken) => { if (isTaken) close(); })}
            />
          )}
        </Dialog>
        <Dialog title={`It does not stand: ${about}`} trigger={<Button size="glove" wide kind="danger" isDisabled={isBusy}>It does not</Button>}>
          {(close) => (
            <ReasonForm
              label="Why it does not stand" confirm="Set it aside" isBusy={isBusy}
              onReason={(reason) => void say({ kind: "settled", eventId, stands: false }, reason).then((isTaken) => { if (isTaken) close(); })}
            />
          )}
        </Dialog>
      </div>
      <Told told={told} />
    </>
  );
}

/** The owner has seen that a rule was broken. */
export function AcknowledgeButton(props: EventButtonProps) {
  const { isBusy, told, say } = useRemark(props);
  if (!can(props.me.role, "exception.acknowledge")) return null;
  return (
    <>
      <Button size="glove" isPending={isBusy} onPress={() => void say({ kind: "acknowledged", eventId: props.eventId }, null)}>Seen</Button>
      <Told told={told} />
    </>
  );
}

/** Lets work go on again. */
export function LiftHoldButton(props: Omit<EventButtonProps, "eventId">) {
  const ticks = useTicks({ projectId: props.project.id, personId: props.me.id, personName: props.me.name });
  const [isBusy, setBusy] = useState(false);
  if (!can(props.me.role, "progress.record")) return null;
  const lift = async () => {
    setBusy(true);
    const outcome = await ticks.tick([{ kind: "hold-lifted", columnId: props.columnId, about: props.about }]).finally(() => setBusy(false));
    if (outcome.where === "sent") props.onTaken?.(outcome.answer);
  };
  return <Button size="glove" isPending={isBusy} onPress={() => void lift()}>Lift the hold</Button>;
}
