"use client";

import { useState, useTransition } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import type { Choice } from "#app/_ui/field/select-field.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { cleanGearAction, moveGearAction, openStockAction, prepareGearAction } from "../actions.ts";
import { PiecesForm, type Countable } from "./pieces-form.tsx";

type Props = { readonly projectId: string; readonly items: readonly Countable[]; readonly lying: readonly Countable[]; readonly places: readonly (Choice & { readonly kind: string })[] };

const now = (): string => new Date().toISOString();
const MOVABLE = ["rack", "cleaning bay", "truck", "yard"];

/** What is done to gear most: cleaned, moved, and once taken into the ledger. */
export function GearButtons({ projectId, items, lying, places }: Props) {
  const [open, setOpen] = useState<"move" | "opening" | null>(null);
  const [said, setSaid] = useState<{ failure?: Failure; done?: string }>({});
  const [isPending, start] = useTransition();
  const movable = places.filter(({ kind }) => MOVABLE.includes(kind));
  const [bay, rack] = [places.find(({ kind }) => kind === "cleaning bay"), places.find(({ kind }) => kind === "rack")];
  const inBay = bay ? lying.reduce((sum, { at }) => sum + (at?.[bay.value] ?? 0), 0) : 0;
  const clean = () => start(async () => {
    if (!bay || !rack) return;
    const answer = await cleanGearAction({ projectId, happenedAt: now(), fromId: bay.value, toId: rack.value });
    setSaid(answer.ok ? { done: `${inBay} pieces went from ${bay.label} to ${rack.label}.` } : { failure: answer.failure });
  });
  const begin = () => start(async () => {
    const answer = await prepareGearAction({ projectId });
    if (answer.ok) setOpen("opening");
    else setSaid({ failure: answer.failure });
  });
  return (
    <div className="no-print flex flex-col gap-3">
      <div className="flex flex-wrap gap-3">
        {inBay > 0 ? <Button kind="primary" size="glove" isPending={isPending} onPress={clean}>All cleaned: {inBay} pieces to the rack</Button> : null}
        {lying.length > 0 ? <Button size="glove" onPress={() => setOpen("move")}>Move gear</Button> : null}
        <Button size="glove" isPending={isPending} onPress={begin}>Take in own stock</Button>
      </div>
      {said.failure ? <FailureNotice failure={said.failure} /> : null}
      {said.done ? <Notice kind="done" title={said.done} /> : null}
      <Dialog title="Move gear" isOpen={open === "move"} onOpenChange={(isOpen) => setOpen(isOpen ? "move" : null)}>
        <PiecesForm
          items={lying} from={movable} to={movable} toLabel="To" label="Move" onDone={() => setOpen(null)}
          send={({ from, to, lines }) => moveGearAction({ projectId, happenedAt: now(), fromId: from, toId: to, lines })}
        />
      </Dialog>
      <Dialog title="Take in own stock" isOpen={open === "opening"} onOpenChange={(isOpen) => setOpen(isOpen ? "opening" : null)}>
        <div className="flex flex-col gap-4">
          <p className="text-ink-soft">Count what the company owns and is here. Hired gear comes in by its delivery docket.</p>
          <PiecesForm
            items={items} to={movable} toLabel="It is at" label="Take in" onDone={() => setOpen(null)}
            send={({ to, lines }) => openStockAction({ projectId, happenedAt: now(), placeId: to, lines })}
          />
        </div>
      </Dialog>
    </div>
  );
}
