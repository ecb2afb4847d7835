import { bitOf, hasDone, impliedBy, placeOf, STAGES, type Plumbing } from "#lib/trade/progress/stages.ts";
import type { KeptEvent } from "./kept-item.ts";

export type SignState = { readonly done: number; readonly flagged: boolean };
export type ExpectedSign = SignState & { /** Drawn ahead of the server. */ readonly isAhead: boolean };

/** The sign a column will have once what waits on this phone has arrived, as far as the phone can tell. */
export function expectedSign(known: SignState, columnId: string, waiting: readonly KeptEvent[], plumbing: Plumbing): ExpectedSign {
  const own = waiting.filter((event) => event.columnId === columnId);
  const takenBack = new Set(own.flatMap((event) => (event.kind === "withdrawn" ? [event.eventId] : [])));
  const counting = own.filter((event) => !takenBack.has(event.id));
  const { done, flagged } = counting.reduce<SignState>((sign, event) => after(sign, event, plumbing), known);
  return { done, flagged, isAhead: done !== known.done || flagged !== known.flagged };
}

function after(sign: SignState, event: KeptEvent, plumbing: Plumbing): SignState {
  switch (event.kind) {
    case "stage-reached": {
      const added = [...impliedBy(event.stage, plumbing), event.stage].filter((stage) => !hasDone(sign.done, stage));
      return { ...sign, done: added.reduce((mask, stage) => mask + bitOf(stage), sign.done) };
    }
    case "set-back":
      return { ...sign, done: STAGES.filter((stage) => hasDone(sign.done, stage) && placeOf(stage) <= placeOf(event.to)).reduce((mask, stage) => mask + bitOf(stage), 0) };
    case "held":
      return { ...sign, flagged: true };
    default:
      return sign;
  }
}
