"use client";

import { useEffect, useSyncExternalStore } from "react";
import { countKept, type OutboxCounts } from "#app/_field/outbox/outbox-plan.ts";
import { outbox, type OutboxView } from "./outbox.ts";

const UNREAD: OutboxView = { items: [], isRead: false, isLasting: true, isSignedOut: false, isSending: false };
const follow = (hear: () => void) => outbox().follow(hear);
const read = () => outbox().read();

export type OutboxState = OutboxView & { readonly counts: OutboxCounts };

/** What this phone has saved, and for whom it sends. */
export function useOutbox(personId: string): OutboxState {
  const view = useSyncExternalStore(follow, read, () => UNREAD);
  useEffect(() => {
    outbox().serve(personId);
    askToStay();
  }, [personId]);
  return { ...view, counts: countKept(view.items, personId, Date.now()) };
}

let asked = false;

/** Some browsers clear what a page has saved when space runs short, unless it was asked to stay. */
function askToStay(): void {
  if (asked || typeof navigator.storage?.persist !== "function") return;
  asked = true;
  void navigator.storage.persisted().then((stays) => (stays ? true : navigator.storage.persist())).catch(() => undefined);
}
