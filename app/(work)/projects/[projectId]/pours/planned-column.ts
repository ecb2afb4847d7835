import { addDays, toDay, weekday, type Day } from "#lib/kernel/days.ts";
import { groupBy } from "#lib/kernel/group-by.ts";

export type ShownDay = { readonly on: string; readonly isRecorded: boolean } | null;
export type PlannedColumn = {
  readonly id: string; readonly gridRef: string; readonly mark: string; readonly pour: string | null;
  readonly plannedStoodOn: string | null; readonly plannedPouredOn: string | null;
  readonly stood: ShownDay; readonly poured: ShownDay; readonly stripped: ShownDay;
};
export type PlannedDays = { readonly columnId: string; readonly pour: string | null; readonly stoodOn: string | null; readonly pouredOn: string | null };

export const asPlanned = (column: PlannedColumn): PlannedDays =>
  ({ columnId: column.id, pour: column.pour, stoodOn: column.plannedStoodOn, pouredOn: column.plannedPouredOn });

/** What to set; an empty text leaves each column what it has. */
export type Wish = { readonly stoodOn: string; readonly pouredOn: string; readonly pour: string };

export const withWish = (column: PlannedColumn, wish: Wish): PlannedDays => {
  const before = asPlanned(column);
  return {
    ...before, stoodOn: wish.stoodOn === "" ? before.stoodOn : wish.stoodOn, pouredOn: wish.pouredOn === "" ? before.pouredOn : wish.pouredOn,
    pour: wish.pour.trim() === "" ? before.pour : wish.pour.trim(),
  };
};

export const withoutDays = (column: PlannedColumn): PlannedDays => ({ columnId: column.id, pour: null, stoodOn: null, pouredOn: null });

/** The nth working day after `on`; before it when `count` is negative. */
function workingDayFrom(on: Day, count: number, workingDays: readonly number[]): Day {
  const step = Math.sign(count);
  let day = on;
  for (let left = Math.abs(count); left > 0; ) {
    day = addDays(day, step);
    if (workingDays.includes(weekday(day))) left -= 1;
  }
  return day;
}

export function moved(column: PlannedColumn, count: number, workingDays: readonly number[]): PlannedDays {
  const move = (on: string | null): string | null => (on === null ? null : workingDayFrom(toDay(on), count, workingDays));
  return { ...asPlanned(column), stoodOn: move(column.plannedStoodOn), pouredOn: move(column.plannedPouredOn) };
}

/** Names of pours with the columns of each, in the order of the table. */
export const pourGroups = (columns: readonly PlannedColumn[]) =>
  [...groupBy(columns.filter(({ pour }) => pour !== null), ({ pour }) => pour ?? "")].map(([name, group]) => ({ name, ids: group.map(({ id }) => id) }));
