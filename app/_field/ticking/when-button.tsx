"use client";

import { useState } from "react";
import { dayIn, instantOf, isDay, toDay } from "#lib/kernel/days.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";

/** When it happened: null is just now. */
export type When = { readonly at: string; readonly reason: string | null } | null;

export function whenWords(when: When, timeZone: string): string {
  if (when === null) return "just now";
  const { day, time, zone } = instantWords(when.at, timeZone);
  return `${day}, ${time} ${zone}`;
}

/** "Just now", "14:10", or "Fri 20 Nov, 14:10" when it was on another day. */
function shortWords(when: When, timeZone: string): string {
  if (when === null) return "Just now";
  const { day, time } = instantWords(when.at, timeZone);
  return dayIn(when.at, timeZone) === dayIn(new Date().toISOString(), timeZone) ? time : `${day.replace(/ \d{4}$/, "")}, ${time}`;
}

export type WhenButtonProps = { readonly when: When; readonly timeZone: string; readonly onChange: (when: When) => void };

/** Sets the time for what is recorded next, where it happened earlier. */
export function WhenButton({ when, timeZone, onChange }: WhenButtonProps) {
  return (
    <Dialog
      title="When did it happen?"
      trigger={<Button size="glove"><span className="-mx-2 whitespace-nowrap text-base">{shortWords(when, timeZone)}<span className="sr-only">: set when it happened</span></span></Button>}
    >
      {(close) => <WhenForm when={when} timeZone={timeZone} onSet={(set) => { onChange(set); close(); }} />}
    </Dialog>
  );
}

function readAt(day: string, time: string, timeZone: string): string | undefined {
  return isDay(day) && /^\d{2}:\d{2}$/.test(time) ? instantOf(toDay(day), time, timeZone) : undefined;
}

function WhenForm({ when, timeZone, onSet }: { readonly when: When; readonly timeZone: string; readonly onSet: (when: When) => void }) {
  const shown = when?.at ?? new Date().toISOString();
  const [day, setDay] = useState<string>(dayIn(shown, timeZone));
  const [time, setTime] = useState(instantWords(shown, timeZone).time);
  const [reason, setReason] = useState(when?.reason ?? "");
  const at = readAt(day, time, timeZone);
  const isAhead = at !== undefined && Date.parse(at) > Date.now() + 60_000;
  const problem = at === undefined ? "Give a day and a time." : isAhead ? "This lies ahead of now." : undefined;
  return (
    <form
      className="flex flex-col gap-4"
      onSubmit={(event) => { event.preventDefault(); if (at !== undefined && !isAhead) onSet({ at, reason: reason.trim() || null }); }}
    >
      <p>In the time of the site ({instantWords(shown, timeZone).zone}). It holds for what you record next.</p>
      <div className="grid grid-cols-2 gap-3">
        <TextField name="day" type="date" label="Day" size="glove" value={day} onChange={setDay} isRequired />
        <TextField name="time" type="time" label="Time" size="glove" value={time} onChange={setTime} isRequired {...(problem ? { problem } : {})} />
      </div>
      <TextField
        name="reason" label="Why it is recorded only now" hint="Asked for when it lies more than half an hour back." size="glove" maxLength={300}
        value={reason} onChange={setReason}
      />
      <Button type="submit" kind="primary" size="glove" wide isDisabled={problem !== undefined}>Use this time</Button>
      <Button size="glove" wide onPress={() => onSet(null)}>Just now</Button>
    </form>
  );
}
