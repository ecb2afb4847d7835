import { addDays, instantOf, weekday, type Day } from "#lib/kernel/days.ts";
import type { ProposedEventInput } from "#lib/contracts/progress.ts";

type Step = Pick<Extract<ProposedEventInput, { kind: "stage-reached" }>, "kind" | "stage"> | { kind: "gate-released"; gate: "pre-pour released" | "cage released" };
/** What happens to one column: on which day of its cycle, at what time on site. Common practice, no source. */
const CYCLE: readonly { day: number; time: string; step: Step }[] = [
  { day: 0, time: "07:20", step: { kind: "stage-reached", stage: "cut" } },
  { day: 1, time: "06:50", step: { kind: "gate-released", gate: "cage released" } },
  { day: 1, time: "08:10", step: { kind: "stage-reached", stage: "stood" } },
  { day: 1, time: "10:40", step: { kind: "stage-reached", stage: "clamped" } },
  { day: 2, time: "07:05", step: { kind: "gate-released", gate: "pre-pour released" } },
  { day: 2, time: "09:30", step: { kind: "stage-reached", stage: "poured" } },
  { day: 2, time: "10:15", step: { kind: "stage-reached", stage: "plumbed" } },
  { day: 4, time: "08:00", step: { kind: "stage-reached", stage: "stripped" } },
];
export const STEPS_OF = { nothing: 0, cut: 1, stood: 3, clamped: 4, poured: 6, plumbed: 7, stripped: 8 } as const;

/** The nth working day before `today`. */
export function workingDayBefore(today: Day, count: number, workingDays: readonly number[]): Day {
  let on = today;
  for (let left = count; left > 0; ) {
    on = addDays(on, -1);
    if (workingDays.includes(weekday(on))) left -= 1;
  }
  return on;
}

export type Happening = { readonly step: Step; readonly at: string };

/** The first `steps` of the cycle of a column whose cutting began `daysAgo` working days ago, some minutes after its neighbour. */
export function cycleOf(today: Day, timeZone: string, workingDays: readonly number[], daysAgo: number, steps: number, minutesLater: number): Happening[] {
  return CYCLE.slice(0, steps).map(({ day, time, step }) => {
    const on = workingDayBefore(today, Math.max(daysAgo - day, 0), workingDays);
    const at = new Date(Date.parse(instantOf(on, time, timeZone)) + minutesLater * 60_000).toISOString();
    return { step, at };
  });
}
