import { instantWords } from "./time-words.ts";

export type TimeTextProps = {
  /** ISO 8601, UTC. */
  readonly at: string;
  /** The project's, as an IANA name. */
  readonly timeZone: string;
  /** `time` where the day stands beside it already. */
  readonly show?: "day-and-time" | "time";
};

/** An instant in the project's time, never in that of the reader's device. */
export function TimeText({ at, timeZone, show = "day-and-time" }: TimeTextProps) {
  const { day, time, zone } = instantWords(at, timeZone);
  // A server and a browser may know different abbreviations for the same zone.
  return (
    <time dateTime={at} suppressHydrationWarning className="whitespace-nowrap">
      {show === "time" ? "" : `${day}, `}{time} <span className="text-ink-soft">{zone}</span>
    </time>
  );
}
