import { applyFact } from "./apply-fact.ts";
import { inForce, type KnownEvent } from "./in-force.ts";
import { pouredAtOf, type ProgressRule } from "./progress-rule.ts";
import { comesBefore, type SiteEvent } from "./site-event.ts";
import { bitOf, hasDone, STAGES, stageOf, type Stage } from "./stages.ts";
import { untouched, type Raised, type Standing } from "./standing.ts";

/** A broken rule for the owner to see. */
export type Exception = Raised & { readonly acknowledged: boolean };

/** Where one column stands: plain data, wholly made from its events, so any cached copy can be rebuilt and compared. */
export type ColumnState = Readonly<Omit<Standing, "raised">> & {
  /** The furthest stage reached; null is nothing yet. */
  readonly stage: Stage | null;
  /** Bit i is set when STAGES[i] is done. */
  readonly done: number;
  /** Ids of events that wait to be settled. */
  readonly queried: readonly string[];
  readonly exceptions: readonly Exception[];
  /** When somebody said it was poured; null also when a pour is only implied. */
  readonly pouredAt: string | null;
  /** Poured, and no reading of the set concrete's line since. */
  readonly asksForReading: boolean;
  /** Queried or held: the red corner. */
  readonly flagged: boolean;
  /** Every event of the column and what became of it, in the order of the site. */
  readonly known: readonly KnownEvent[];
  readonly lastSeq: number;
};

/**
 * The state of a column from its events. The order they arrived in, or are handed over in, makes no difference:
 * withdrawn and unsettled events are left out first, the rest is laid in the order of the site and taken one by one.
 */
export function foldColumn(events: readonly SiteEvent[], rule: ProgressRule): ColumnState {
  const { facts, known, acknowledged } = inForce(events);
  const standing = facts.reduce((before, fact) => applyFact(before, fact, rule), untouched());
  const done = STAGES.reduce((mask, stage) => mask + (standing.reached[stage] === undefined ? 0 : bitOf(stage)), 0);
  const queried = known.filter(({ fate }) => fate === "queried").map(({ id }) => id);
  const { raised, ...rest } = standing;
  return {
    ...rest,
    stage: stageOf(done),
    done,
    queried,
    exceptions: raised.map((each) => ({ ...each, acknowledged: acknowledged.has(each.eventId) })),
    pouredAt: pouredAtOf(standing),
    asksForReading: asksForReading(standing),
    flagged: queried.length > 0 || standing.held !== null,
    known,
    lastSeq: events.reduce((last, { seq }) => (seq > last ? seq : last), 0),
  };
}

function asksForReading({ reached, readings }: Standing): boolean {
  if (reached.poured === undefined) return false;
  const reading = readings["after-pour"];
  return reading === undefined || (!reached.poured.implied && comesBefore(reading, reached.poured));
}

/** What a list or a plan needs to draw the sign of a column. */
export type CompactState = { readonly done: number; readonly flagged: boolean };

export const compact = ({ done, flagged }: CompactState): CompactState => ({ done, flagged });

export type ProgressCounts = {
  readonly total: number;
  readonly flagged: number;
  /** Columns whose furthest stage it is. */
  readonly at: Readonly<Record<Stage | "nothing", number>>;
  /** Columns that have it done, whatever came after. */
  readonly done: Readonly<Record<Stage, number>>;
};

export function counts(columns: readonly CompactState[]): ProgressCounts {
  const at = { nothing: 0, cut: 0, stood: 0, clamped: 0, plumbed: 0, poured: 0, stripped: 0 };
  const done = { cut: 0, stood: 0, clamped: 0, plumbed: 0, poured: 0, stripped: 0 };
  for (const column of columns) {
    at[stageOf(column.done) ?? "nothing"] += 1;
    for (const stage of STAGES) if (hasDone(column.done, stage)) done[stage] += 1;
  }
  return { total: columns.length, flagged: columns.filter(({ flagged }) => flagged).length, at, done };
}
