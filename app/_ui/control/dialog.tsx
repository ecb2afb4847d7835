"use client";

import type { ReactNode } from "react";
import { Dialog as AriaDialog, DialogTrigger, Heading, Modal, ModalOverlay } from "react-aria-components";

export type DialogProps = {
  readonly title: string;
  /** The button that opens it; leave out when `isOpen` is kept elsewhere. */
  readonly trigger?: ReactNode;
  readonly isOpen?: boolean;
  readonly onOpenChange?: (isOpen: boolean) => void;
  /** An alert dialog is not closed by pressing beside it. */
  readonly isAlert?: boolean;
  readonly children: ReactNode | ((close: () => void) => ReactNode);
};

/** A sheet laid over the page: in the middle at a desk, at the foot of the screen on a phone. */
export function Dialog({ title, trigger, isOpen, onOpenChange, isAlert = false, children }: DialogProps) {
  const controlled = { ...(isOpen === undefined ? {} : { isOpen }), ...(onOpenChange ? { onOpenChange } : {}) };
  const sheet = (
    <ModalOverlay
      {...(trigger ? {} : controlled)}
      isDismissable={!isAlert}
      className="no-print fixed inset-0 z-40 flex items-end justify-center bg-ink/50 sm:items-center sm:p-6"
    >
      <Modal className="max-h-[92dvh] w-full overflow-auto border-2 border-ink bg-sheet sm:max-w-xl">
        <AriaDialog role={isAlert ? "alertdialog" : "dialog"} className="outline-none">
          {({ close }) => (
            <>
              <Heading slot="title" className="border-b-2 border-ink bg-wash px-4 py-3 text-lg">{title}</Heading>
              <div className="p-4 pb-[max(1rem,env(safe-area-inset-bottom))]">
                {typeof children === "function" ? children(close) : children}
              </div>
            </>
          )}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
  return trigger ? <DialogTrigger {...controlled}>{trigger}{sheet}</DialogTrigger> : sheet;
}
