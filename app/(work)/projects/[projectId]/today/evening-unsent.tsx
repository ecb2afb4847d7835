"use client";

import { Notice } from "#app/_ui/message/notice.tsx";
import { useOutbox } from "#app/_field/use-outbox.ts";

/** Before the phone goes into the pocket for the night: whether all of it has arrived. */
export function EveningUnsent({ personId }: { readonly personId: string }) {
  const { counts, isRead } = useOutbox(personId);
  if (!isRead) return null;
  const { waiting, asks, refused } = counts;
  if (waiting + asks + refused === 0) return <Notice kind="done" title="Everything recorded on this phone has been sent." />;
  const parts = [
    waiting > 0 ? `${waiting} not sent yet` : null,
    asks > 0 ? `${asks} waiting for a reason` : null,
    refused > 0 ? `${refused} not taken` : null,
  ].filter((part) => part !== null);
  return <Notice kind="problem" title={`On this phone: ${parts.join(", ")}.`}>Keep the phone on until it has reception again; press the line at the top of the page to see each entry.</Notice>;
}
