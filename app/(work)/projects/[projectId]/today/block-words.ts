import { dayIn } from "#lib/kernel/days.ts";
import type { Next } from "#lib/trade/progress/next.ts";
import type { Gate } from "#lib/trade/progress/stages.ts";
import { instantWords } from "#app/_ui/value/time-words.ts";

/** A time of the site: the day is named when it is not the day shown. */
export function siteTime(at: string, now: string, timeZone: string): string {
  const { day, time } = instantWords(at, timeZone);
  return dayIn(at, timeZone) === dayIn(now, timeZone) ? time : `${day.replace(/ \d{4}$/, "")}, ${time}`;
}

const NOT_GIVEN: Readonly<Record<Gate, string>> = {
  "set-out checked": "set-out not checked yet",
  "cage released": "cage not released yet",
  "pre-pour released": "no pre-pour release yet",
  "strip released": "no strip release yet",
};

/** What stands in the way, in words: "strip from 16:20", "no pre-pour release yet". */
export function blockWords(next: Next, blocks: Next["blockedBy"], now: string, timeZone: string): string[] {
  return blocks.map((block) => {
    switch (block) {
      case "held":
        return "on hold";
      case "queried":
        return "to be settled";
      case "strip time":
        return next.stripFrom === null ? "pour time not known" : `strip from ${siteTime(next.stripFrom, now, timeZone)}`;
      default:
        return NOT_GIVEN[block];
    }
  });
}
