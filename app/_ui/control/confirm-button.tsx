"use client";

import { useState, type ReactNode } from "react";
import type { ButtonKind, ButtonSize } from "./button-look.ts";
import { Button } from "./button.tsx";
import { Dialog } from "./dialog.tsx";
import { HoldButton } from "./hold-button.tsx";

export type ConfirmButtonProps = {
  /** What the button says, and what the person reads before it happens. */
  readonly children: ReactNode;
  readonly title: string;
  readonly explain: ReactNode;
  readonly confirmLabel: string;
  readonly onConfirm: () => void;
  /** `hold` asks a finger or mouse to stay down; keyboard and screen reader get the dialog instead. */
  readonly by?: "dialog" | "hold";
  readonly kind?: ButtonKind;
  readonly size?: ButtonSize;
  readonly wide?: boolean;
  readonly isDisabled?: boolean;
  readonly isPending?: boolean;
};

/** For what cannot be cheaply undone: asks before it acts. */
export function ConfirmButton(props: ConfirmButtonProps) {
  const { children, title, explain, confirmLabel, onConfirm, by = "dialog", kind = "danger", size = "hand", wide = false } = props;
  const [asking, setAsking] = useState(false);
  const off = { isDisabled: props.isDisabled ?? false, isPending: props.isPending ?? false };
  const ask = () => setAsking(true);
  return (
    <>
      {by === "hold"
        ? <HoldButton kind={kind} size={size} wide={wide} {...off} onHeld={onConfirm} onAsk={ask}>{children}</HoldButton>
        : <Button kind={kind} size={size} wide={wide} {...off} onPress={ask}>{children}</Button>}
      <Dialog title={title} isAlert isOpen={asking} onOpenChange={setAsking}>
        {(close) => (
          <div className="flex flex-col gap-4">
            <div>{explain}</div>
            <div className="flex flex-wrap justify-end gap-3">
              <Button size={size} onPress={close}>Leave it as it is</Button>
              <Button kind={kind} size={size} onPress={() => { close(); onConfirm(); }}>{confirmLabel}</Button>
            </div>
          </div>
        )}
      </Dialog>
    </>
  );
}
