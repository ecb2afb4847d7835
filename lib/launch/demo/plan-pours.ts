import { addDays, dayIn, weekday, type Day } from "#lib/kernel/days.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { savePlannedDays } from "#lib/server/pours/planned-days.ts";
import type { LaidColumn } from "./lay-out-site.ts";
import { must } from "./must.ts";

const COLUMNS_A_POUR = 5;

/** From the given level up, five columns a pour and a pour every other working day; stood the working day before. */
export async function planPours(caller: Caller, site: { projectId: string; timeZone: string; workingDays: readonly number[] }, columns: readonly LaidColumn[]): Promise<void> {
  let day = dayIn(new Date().toISOString(), site.timeZone);
  const nextWorkingDay = (on: Day): Day => {
    const next = addDays(on, 1);
    return site.workingDays.includes(weekday(next)) ? next : nextWorkingDay(next);
  };
  const planned = [];
  for (let first = 0; first < columns.length; first += COLUMNS_A_POUR) {
    const stoodOn = nextWorkingDay(day);
    const pouredOn = nextWorkingDay(stoodOn);
    planned.push(...columns.slice(first, first + COLUMNS_A_POUR).map(({ id }) => ({ columnId: id, pour: `Pour ${first / COLUMNS_A_POUR + 11}`, stoodOn, pouredOn })));
    day = pouredOn;
  }
  must("plan the pours", await savePlannedDays(caller, { projectId: site.projectId, columns: planned }));
}
