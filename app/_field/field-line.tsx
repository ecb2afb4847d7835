"use client";

import { useEffect, useState, useSyncExternalStore } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { KeptList } from "#app/_field/ticking/kept-list.tsx";
import type { TickPerson, TickProject } from "#app/_field/ticking/tick-column.ts";
import { followReception, noteContact, readReception, type Reception } from "./reception.ts";
import { whenPageWasKept } from "./kept-pages.ts";
import { useOutbox, type OutboxState } from "./use-outbox.ts";

export type FieldLineProps = { readonly project: TickProject; readonly me: TickPerson };

const UNTRIED: Reception = { isReached: undefined, lastAt: undefined };

function useReception(): Reception {
  const reception = useSyncExternalStore(followReception, readReception, () => UNTRIED);
  useEffect(() => {
    const lost = () => noteContact(false);
    if (!navigator.onLine) lost();
    window.addEventListener("offline", lost);
    return () => window.removeEventListener("offline", lost);
  }, []);
  return reception;
}

/** "10:42", when what is on the screen was last true; undefined while there is reception. */
function useAsOf({ isReached, lastAt }: Reception, timeZone: string): string | undefined {
  const [keptAt, setKeptAt] = useState<number | undefined>(undefined);
  useEffect(() => {
    if (isReached === false && lastAt === undefined) void whenPageWasKept(location.href).then(setKeptAt);
  }, [isReached, lastAt]);
  const at = lastAt ?? keptAt;
  if (isReached !== false || at === undefined) return undefined;
  const { day, time } = instantWords(new Date(at).toISOString(), timeZone);
  return Date.now() - at > 12 * 3_600_000 ? `${day}, ${time}` : time;
}

/** What the phone has to say before the page speaks: that there is no reception, and what is saved and not sent. Silent when all is well. */
export function FieldLine({ project, me }: FieldLineProps) {
  const reception = useReception();
  const asOf = useAsOf(reception, project.timeZone);
  const kept = useOutbox(me.id);
  const { waiting, asks, refused } = kept.counts;
  const isOut = reception.isReached === false;
  const isLoud = kept.counts.isOverdue || kept.isSignedOut || refused + asks > 0;
  const hasKept = waiting + asks + refused > 0;
  if (!isOut && !hasKept && kept.isLasting && kept.counts.ofOthers === 0) return <div role="status" />;
  return (
    <div role="status" className={`no-print sticky top-0 z-10 border-b-2 ${isLoud ? "border-flag bg-flag-wash" : "border-ink bg-wash"}`}>
      <div className="mx-auto flex max-w-7xl flex-wrap items-center gap-x-4 gap-y-1 px-3 py-1 sm:px-6">
        {isOut ? <p className="font-semibold">No reception.{asOf ? ` This page is as of ${asOf}.` : ""}</p> : null}
        {hasKept ? (
          <Dialog title="On this phone" trigger={<Button size="hand"><span>{keptWords(kept)}</span></Button>}>
            {(close) => <KeptList project={project} kept={kept} me={me} onClose={close} />}
          </Dialog>
        ) : null}
        <Warnings kept={kept} />
      </div>
    </div>
  );
}

function keptWords({ counts: { waiting, asks, refused }, isSending }: OutboxState): string {
  return [
    waiting > 0 ? `${waiting} saved on this phone${isSending ? ", sending" : ""}` : null,
    asks > 0 ? `${asks} to give a reason for` : null,
    refused > 0 ? `${refused} not taken` : null,
  ].filter((part) => part !== null).join(" · ");
}

function Warnings({ kept }: { readonly kept: OutboxState }) {
  const { counts, isSignedOut, isLasting } = kept;
  return (
    <>
      {isSignedOut && counts.waiting > 0 ? <p className="font-semibold text-flag-deep">Signed out: sign in again to send.</p> : null}
      {counts.isOverdue ? <p className="font-semibold text-flag-deep">Unsent for more than a day: find reception soon.</p> : null}
      {counts.ofOthers > 0 ? <p>{counts.ofOthers} by somebody else on this phone; sent when they sign in.</p> : null}
      {isLasting ? null : <p className="font-semibold text-flag-deep">This browser saves nothing: do not reload before everything is sent.</p>}
    </>
  );
}
