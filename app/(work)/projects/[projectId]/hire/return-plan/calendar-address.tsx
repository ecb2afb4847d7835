"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import { brokenRule, type Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { paths } from "#app/paths.ts";
import { closeCalendarAction, openCalendarAction } from "./actions.ts";

/** A secret address for the calendar on the phone; shown once, replaced or closed at will. */
export function CalendarAddress({ projectId, isOpen }: { readonly projectId: string; readonly isOpen: boolean }) {
  const router = useRouter();
  const [address, setAddress] = useState<string | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const open = async () => {
    const answer = await openCalendarAction(projectId).catch(() => brokenRule("not-reached"));
    setFailure(answer.ok ? null : answer.failure);
    if (answer.ok) setAddress(`${window.location.origin}${paths.calendar(answer.value.token)}`);
  };
  const close = async () => {
    const answer = await closeCalendarAction(projectId).catch(() => brokenRule("not-reached"));
    setFailure(answer.ok ? null : answer.failure);
    setAddress(null);
    if (answer.ok) router.refresh();
  };
  return (
    <div className="no-print flex flex-col gap-3">
      {failure ? <FailureNotice failure={failure} /> : null}
      <p className="text-sm">Accepted returns can stand in your own calendar. The address is yours alone: whoever has it can read these tasks, so make a new one if it gets about.</p>
      {address ? (
        <p className="border-2 border-accent bg-accent-wash p-3"><span className="block text-sm font-semibold">Subscribe to this address; it is shown only now.</span><code className="break-all">{address}</code></p>
      ) : null}
      <div className="flex flex-wrap gap-2">
        <Button onPress={() => void open()}>{isOpen || address ? "Make a new address" : "Make a calendar address"}</Button>
        {isOpen || address ? <Button onPress={() => void close()}>Close the address</Button> : null}
      </div>
    </div>
  );
}
