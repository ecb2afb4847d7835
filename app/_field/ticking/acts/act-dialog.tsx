"use client";

import type { ReactNode } from "react";
import type { Fact } from "#lib/trade/progress/site-event.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";

/** Records one fact on every selected column. */
export type Act = (fact: Fact, reason: string | null) => void;
/** What a form inside the dialog calls: it records and closes. */
export type ActFormProps = { readonly onAct: Act };

export type ActDialogProps = {
  readonly label: string;
  readonly title: string;
  readonly isDisabled: boolean;
  readonly onAct: Act;
  readonly children: (act: Act) => ReactNode;
};

/** A button that opens a form for one kind of entry. */
export function ActDialog({ label, title, isDisabled, onAct, children }: ActDialogProps) {
  return (
    <Dialog title={title} trigger={<Button size="glove" wide isDisabled={isDisabled}><span className="-mx-4 text-base">{label}</span></Button>}>
      {(close) => children((fact, reason) => { close(); onAct(fact, reason); })}
    </Dialog>
  );
}
