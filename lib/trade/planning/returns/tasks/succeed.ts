import type { Day } from "#lib/kernel/days.ts";

export type ReturnLine = { readonly itemId: string; readonly item: string; readonly quantity: number };
export type TaskKind = "call" | "load" | "collect";

/** A task that stands; the tasks of one return share plan, supplier and day of collection. */
export type StandingTask = { readonly id: string; readonly planId: string; readonly supplierId: string; readonly kind: TaskKind; readonly state: "open" | "done"; readonly on: Day; readonly collectOn: Day; readonly lines: readonly ReturnLine[] };

/** A return the plan proposes, with the days of its three tasks. */
export type ProposedReturn = { readonly supplierId: string; readonly days: Readonly<Record<TaskKind, Day>>; readonly lines: readonly ReturnLine[] };

export type TaskWanted = Pick<StandingTask, "supplierId" | "kind" | "on" | "collectOn" | "lines">;
export type Succession = {
  /** Word for word what the plan proposes too; they only change hands. */
  readonly kept: readonly string[];
  readonly changed: readonly { readonly id: string; readonly on: Day; readonly lines: readonly ReturnLine[] }[];
  readonly withdrawn: readonly string[];
  readonly added: readonly TaskWanted[];
};

const KINDS = ["call", "load", "collect"] as const;

/**
 * What becomes of the tasks that stand when lines of a plan are accepted, one plan at a time having the say. A return not
 * called yet stays where the plan proposes the same, is changed where it moves other pieces that day, and else is withdrawn.
 * One that was called is the hirer's word by now: it stays as it is.
 */
export function succeed(standing: readonly StandingTask[], plan: { readonly id: string; readonly proposed: readonly ProposedReturn[] }, isChosen: (supplierId: string, collectOn: Day, itemId: string) => boolean): Succession {
  const calledDays = new Set(standing.filter(({ kind, state }) => kind === "call" && state === "done").map(keyOf));
  const open = standing.filter((task) => task.state === "open" && !calledDays.has(keyOf(task)));
  const isHeld = (from: string, on: Day, line: ReturnLine): boolean => open.some(({ supplierId, collectOn, lines }) => supplierId === from && collectOn === on && lines.some((each) => each.itemId === line.itemId && each.quantity === line.quantity));
  const isCalled = (from: string, on: Day, { itemId }: ReturnLine): boolean => standing.some((task) => task.planId === plan.id && task.supplierId === from && task.collectOn === on && calledDays.has(keyOf(task)) && task.lines.some((each) => each.itemId === itemId));
  const wanted = plan.proposed.flatMap(({ supplierId, days, lines }) => {
    const taken = lines.filter((line) => !isCalled(supplierId, days.collect, line) && (isChosen(supplierId, days.collect, line.itemId) || isHeld(supplierId, days.collect, line)));
    return taken.length > 0 ? KINDS.map((kind): TaskWanted => ({ supplierId, kind, on: days[kind], collectOn: days.collect, lines: taken })) : [];
  });
  const paired = wanted.map((task) => ({ task, was: open.find(({ supplierId, kind, collectOn }) => supplierId === task.supplierId && kind === task.kind && collectOn === task.collectOn) }));
  const used = new Set(paired.flatMap(({ was }) => (was ? [was.id] : [])));
  return {
    kept: paired.flatMap(({ task, was }) => (was && isSame(task, was) ? [was.id] : [])),
    changed: paired.flatMap(({ task, was }) => (was && !isSame(task, was) ? [{ id: was.id, on: task.on, lines: task.lines }] : [])),
    added: paired.flatMap(({ task, was }) => (was ? [] : [task])),
    withdrawn: open.filter(({ id }) => !used.has(id)).map(({ id }) => id),
  };
}

const keyOf = ({ planId, supplierId, collectOn }: StandingTask): string => `${planId} ${supplierId} ${collectOn}`;
const isSame = (one: TaskWanted, other: TaskWanted): boolean => one.on === other.on && textOf(one) === textOf(other);
const textOf = ({ lines }: TaskWanted): string => lines.map(({ itemId, quantity }) => `${itemId} ${quantity}`).sort().join(",");
