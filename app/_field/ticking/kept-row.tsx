"use client";

import { useState, type ReactNode } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { wordFinding } from "#app/_ui/wording-findings.ts";
import { wordFailure } from "#app/_ui/wording.ts";
import { outbox } from "#app/_field/outbox.ts";
import { isMove, type KeptItem } from "#app/_field/outbox/kept-item.ts";
import { actWords } from "./act-words.ts";
import type { TickProject } from "./tick-column.ts";

export const STANDING_WORDS = { waiting: "saved on this phone", asks: "give a reason", refused: "not taken", sent: "sent" } as const;

/** One entry made on this phone, where it has got to, and what can be done about one that was not taken. */
export function KeptRow({ item, project, children }: { readonly item: KeptItem; readonly project: TickProject; /** What else can be done about one that is stuck. */ readonly children?: ReactNode }) {
  const { event, about, standing, outcome } = item;
  const { day, time } = instantWords(event.happenedAt, project.timeZone);
  const isStuck = standing === "refused" || standing === "asks";
  return (
    <li className={`border-2 p-3 ${isStuck ? "border-flag" : "border-edge"}`}>
      <p className="flex flex-wrap justify-between gap-x-3">
        <strong className="font-semibold">{about ? `${about}: ` : ""}{actWords(event, project.units)}</strong>
        <span>{outcome === "queried" ? "sent, to be settled" : STANDING_WORDS[standing]}</span>
      </p>
      <p className="text-sm text-ink-soft">{day}, {time}</p>
      <Findings item={item} timeZone={project.timeZone} />
      {standing === "asks" ? <ReasonForm id={event.id} /> : null}
      {isStuck ? (
        <div className="mt-2 flex flex-wrap gap-2">
          {standing === "refused" ? <Button size="glove" onPress={() => void outbox().tryAgain([event.id]).then(() => outbox().flush())}>Try again</Button> : null}
          {children}
          <Button size="glove" onPress={() => void outbox().drop([event.id])}>Dismiss</Button>
        </div>
      ) : null}
    </li>
  );
}

const FAILURES: Readonly<Record<string, string>> = {
  "not-allowed": "Your role does not cover this; ask the owner.",
  "not-found": "The project is not there any more, or not yours to see.",
};

function Findings({ item, timeZone }: { readonly item: KeptItem; readonly timeZone: string }) {
  const words = item.findings.map((finding) => wordFinding(finding, timeZone));
  if (isMove(item) && item.refusal) words.push(wordFailure(item.refusal));
  else if (item.failure !== null) words.push({ title: FAILURES[item.failure] ?? "The entry could not be read.", todo: "" });
  return words.map(({ title, todo }) => <p key={title} className="mt-1">{title} <span className="text-ink-soft">{todo}</span></p>);
}

function ReasonForm({ id }: { readonly id: string }) {
  const [reason, setReason] = useState("");
  return (
    <form
      className="mt-2 flex flex-col gap-2"
      onSubmit={(event) => { event.preventDefault(); if (reason.trim() !== "") void outbox().giveReason([id], reason.trim()).then(() => outbox().flush()); }}
    >
      <TextField name="reason" label="Reason" size="glove" maxLength={300} value={reason} onChange={setReason} isRequired />
      <Button type="submit" kind="primary" size="glove" isDisabled={reason.trim() === ""}>Send with this reason</Button>
    </form>
  );
}
