import {
  isFact,
  isRemark,
  siteOrder,
  type EventKind,
  type FactEvent,
  type SiteEvent,
} from "./site-event.ts";

/** `stands` counts; `queried` waits to be settled; `set-aside` was settled not to stand; `withdrawn` is as if it never was. */
export type Fate = "stands" | "queried" | "set-aside" | "withdrawn";
export type KnownEvent = {
  readonly id: string;
  readonly kind: EventKind;
  readonly by: string;
  readonly happenedAt: string;
  readonly fate: Fate;
};
type Settlement = { readonly stands: boolean; readonly reason: string | null };

export type InForce = {
  /** In the order of the site; a fact settled to stand without a reason of its own takes the settlement's. */
  readonly facts: readonly FactEvent[];
  readonly known: readonly KnownEvent[];
  readonly acknowledged: ReadonlySet<string>;
};

/** Which of a column's events count. Depends on the set of events only, never on the order they are handed in. */
export function inForce(events: readonly SiteEvent[]): InForce {
  const ordered = inSiteOrder(events);
  const withdrawn = withdrawnAmong(ordered);
  const settlements = settlementsAmong(ordered, withdrawn);
  const fates = ordered.map((event) => fateOf(event, withdrawn, settlements));
  const standing = ordered.filter((_, index) => fates[index] === "stands");
  return {
    facts: standing.filter(isFact).map((fact) => ({
      ...fact,
      reason: fact.reason ?? (fact.standing === "queried" ? settlements.get(fact.id)?.reason ?? null : null),
    })),
    known: ordered.map(({ id, kind, by, happenedAt }, index) => ({
      id,
      kind,
      by,
      happenedAt,
      fate: fates[index] ?? "stands",
    })),
    acknowledged: new Set(standing.flatMap((event) => (event.kind === "acknowledged" ? [event.eventId] : []))),
  };
}

/** The same id twice is the same event: the first to arrive is it. */
function inSiteOrder(events: readonly SiteEvent[]): readonly SiteEvent[] {
  const unique = new Map<string, SiteEvent>();
  for (const event of events) {
    const known = unique.get(event.id);
    if (known === undefined || event.seq < known.seq) unique.set(event.id, event);
  }
  return [...unique.values()].sort((left, right) =>
    siteOrder({ eventId: left.id, at: left.happenedAt }, { eventId: right.id, at: right.happenedAt }),
  );
}

/**
 * An event is out when some withdrawal of it is not itself out. Worked from the withdrawals nobody withdrew towards
 * their targets; withdrawals that chase each other in a circle are never reached and take nothing out.
 */
function withdrawnAmong(ordered: readonly SiteEvent[]): ReadonlySet<string> {
  const targetOf = new Map<string, string>();
  for (const event of ordered)
    if (event.kind === "withdrawn" && event.standing === "accepted") targetOf.set(event.id, event.eventId);
  const undecided = new Map<string, number>();
  for (const target of targetOf.values()) undecided.set(target, (undecided.get(target) ?? 0) + 1);

  const out = new Set<string>();
  const decided = [...targetOf.keys()].filter((id) => !undecided.has(id));
  for (let id = decided.pop(); id !== undefined; id = decided.pop()) {
    const target = targetOf.get(id);
    if (target === undefined || out.has(target)) continue;
    const left = (undecided.get(target) ?? 1) - 1;
    undecided.set(target, left);
    if (!out.has(id)) out.add(target);
    if (out.has(target) || left === 0) decided.push(target);
  }
  return out;
}

function settlementsAmong(
  ordered: readonly SiteEvent[],
  withdrawn: ReadonlySet<string>,
): ReadonlyMap<string, Settlement> {
  const last = new Map<string, Settlement>();
  for (const event of ordered)
    if (event.kind === "settled" && event.standing === "accepted" && !withdrawn.has(event.id))
      last.set(event.eventId, { stands: event.stands, reason: event.reason });
  return last;
}

/** Only facts can wait to be settled: a remark is never queried, and one stored so all the same does nothing. */
function fateOf(
  event: SiteEvent,
  withdrawn: ReadonlySet<string>,
  settlements: ReadonlyMap<string, Settlement>,
): Fate {
  if (withdrawn.has(event.id)) return "withdrawn";
  if (event.standing === "accepted") return "stands";
  if (isRemark(event.kind)) return "set-aside";
  const settlement = settlements.get(event.id);
  return settlement === undefined ? "queried" : settlement.stands ? "stands" : "set-aside";
}
