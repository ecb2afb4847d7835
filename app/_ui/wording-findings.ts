import type { FindingCode } from "#lib/trade/progress/finding.ts";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { fillIn } from "./wording.ts";
import type { Wording } from "./wording/shape.ts";

type SpokenCode = FindingCode | "unknown-column" | "id-used" | "owner-only";

/** What the rules of progress say about a tick, a gate or a reading, and what to do then. */
const FINDING_WORDING: Readonly<Record<SpokenCode, Wording>> = {
  "gate-missing": { title: "{gate} is not given, yet it is to be {stage}.", todo: "Get the release first. If it has happened already, say why; the owner is told." },
  "strip-early": { title: "Strip time runs until {stripFrom}: {hoursMissing} h are missing.", todo: "Wait. If it is stripped already, say why; the owner is told." },
  "strip-age-unknown": { title: "Nobody recorded when it was poured, so its strip time is unknown.", todo: "Record the pour with its time, or say why it is stripped; the owner is told." },
  "while-held": { title: "The column has been held since {heldAt}.", todo: "Have the hold lifted first, or say why work went on; the owner is told." },
  "set-back-after-pour": { title: "It is poured, and would go back to {to}.", todo: "Say what happened; the owner is told." },
  "backdated": { title: "This lies {minutes} min back; up to {allowedMinutes} min need no reason.", todo: "Say why it is recorded only now." },
  "release-after-stage": { title: "{gate} comes after the column was {stage} ({reachedAt}).", todo: "Say why the release came late." },
  "gate-revoked": { title: "{gate} is taken back.", todo: "Say why, so that the crew knows what to put right." },
  "hold": { title: "The column is put on hold.", todo: "Say why and what has to happen before work goes on." },
  "withdrawal": { title: "An entry is withdrawn.", todo: "Say what was wrong with it." },
  "setting-aside": { title: "A queried entry is set aside.", todo: "Say why it does not stand." },
  "before-set-back": { title: "The column went back to {to} at {setBackAt}, after this.", todo: "Settle which of the two is right." },
  "not-poured": { title: "It is not known to be poured.", todo: "Record the pour, then settle this entry." },
  "before-pour": { title: "It was poured at {pouredAt}, after this.", todo: "Check both times and settle which is right." },
  "pour-time-differs": { title: "The pour is recorded at {pouredAt}, {minutes} min from this.", todo: "Settle which time is right; the strip time counts from it." },
  "later-work-known": { title: "It was {stage} at {reachedAt}, after this.", todo: "Check both times and settle which is right." },
  "back-at-unreached": { title: "It cannot go back to {to}: it never got there.", todo: "Settle this entry, or withdraw it." },
  "reading-out-of-turn": { title: "This {when} reading does not fit the pour at {pouredAt}.", todo: "Check the times and settle the reading." },
  "time-unreadable": { title: "The time of this entry cannot be read.", todo: "Record it again." },
  "in-the-future": { title: "This lies {minutes} min ahead of now.", todo: "Set the clock of the phone, then record it again." },
  "before-project": { title: "This lies before the project began ({startsAt}).", todo: "Correct the day, or the start of the project in Set-up." },
  "offsets-unreadable": { title: "The reading is no number.", todo: "Enter both offsets in figures." },
  "unknown-event": { title: "The entry this belongs to is not known.", todo: "Load the column again." },
  "already-withdrawn": { title: "That entry is withdrawn already.", todo: "Nothing more to do." },
  "not-queried": { title: "That entry is settled already.", todo: "Nothing more to do." },
  "no-exception": { title: "There is no exception to acknowledge.", todo: "Load the column again." },
  "reached-already": { title: "It is {stage} already, since {reachedAt}.", todo: "Nothing more to do." },
  "unknown-column": { title: "There is no such column in this project.", todo: "It may have been removed from the schedule. Load the page again." },
  "id-used": { title: "This entry clashes with another one.", todo: "Record it again." },
  "owner-only": { title: "Only the owner can do this.", todo: "Ask the owner." },
};

export type SpokenFinding = { readonly code: SpokenCode; readonly values: Readonly<Record<string, string | number>> };

const isInstant = (value: string | number): value is string => typeof value === "string" && /^\d{4}-\d{2}-\d{2}T/.test(value);

/** The words for a finding, its times told in the project's zone. */
export function wordFinding({ code, values }: SpokenFinding, timeZone: string): Wording {
  const told = Object.fromEntries(Object.entries(values).map(([name, value]) => {
    if (!isInstant(value)) return [name, value];
    const { day, time, zone } = instantWords(value, timeZone);
    return [name, `${day}, ${time} ${zone}`];
  }));
  const { title, todo } = FINDING_WORDING[code];
  const filled = fillIn(title, told);
  return { title: filled.charAt(0).toUpperCase() + filled.slice(1), todo: fillIn(todo, told) };
}
