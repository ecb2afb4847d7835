import { applyLines, gathered, mirror, TICK_KINDS, transfer, type Balances, type Item, type Line, type Place, type TickKind } from "./ledger.ts";

/** A movement that followed from a tick and has not been taken back. */
export type Followed = { readonly id: string; readonly kind: TickKind; readonly happenedAt: string; readonly lines: readonly Line[] };
export type ColumnGear = {
  readonly columnId: string;
  readonly placeId: string;
  /** The stages that stand now, with the tick that says so. */
  readonly reached: Readonly<Partial<Record<TickKind, { readonly eventId: string; readonly at: string }>>>;
  /** When the column last went back; null when it never did. */
  readonly setBackAt: string | null;
  readonly followed: readonly Followed[];
  /** Stages of which something used is on record as not in the ledger, and stages on record as taken back too late. */
  readonly noted: readonly TickKind[];
  readonly goneOn: readonly TickKind[];
  readonly panels: readonly string[];
  readonly clamping: readonly { readonly itemId: string; readonly quantity: number }[];
};

export type TickMovement = {
  readonly kind: TickKind | "reversed"; readonly columnId: string; readonly siteEventId: string | null; readonly happenedAt: string;
  readonly reversesId: string | null; readonly lines: readonly Line[];
};
/** Used on the column but not in the ledger where it could be taken from; or taken back although it has gone on since. */
export type Shortfall = {
  readonly about: "not in the ledger" | "gone on"; readonly kind: TickKind; readonly columnId: string; readonly siteEventId: string | null;
  readonly itemId: string; readonly quantity: number;
};
export type Following = {
  readonly movements: readonly TickMovement[]; readonly shortfalls: readonly Shortfall[];
  /** Discrepancies of stages that no longer stand. */
  readonly gone: readonly { readonly columnId: string; readonly kind: TickKind }[];
};

type Hands = {
  readonly balances: Balances;
  readonly item: (id: string) => Item | undefined;
  readonly place: (id: string) => Place | undefined;
  /** Where a crew takes gear from, the first first; and where it puts what comes off. */
  readonly takenFrom: readonly string[];
  readonly bay: string;
};

/**
 * Whether the ledger has taken a stage in: it followed, or what was missing is on record. What was stripped before is not
 * put on again: where all of it had been brought to the column by hand, its stages moved nothing on their way.
 */
export function isFollowed({ followed, noted }: Pick<ColumnGear, "followed" | "noted">, kind: TickKind): boolean {
  const has = (each: TickKind): boolean => followed.some((movement) => movement.kind === each);
  return has(kind) || noted.includes(kind) || (kind !== "stripped" && has("stripped"));
}

/**
 * What the ledger has to take in so that it agrees with the ticks: later stages are taken back first, then what newly
 * stands is posted in the order of the site. A tick is never refused here: what is not there becomes a shortfall.
 */
export function followTicks(columns: readonly ColumnGear[], hands: Hands): Following {
  const [movements, shortfalls, gone]: [TickMovement[], Shortfall[], Following["gone"][number][]] = [[], [], []];
  for (const column of columns) {
    for (const kind of [...TICK_KINDS].reverse()) {
      if (column.reached[kind]) continue;
      if (column.noted.includes(kind)) gone.push({ columnId: column.columnId, kind });
      for (const movement of column.followed.filter((each) => each.kind === kind)) takeBack(column, movement, hands, movements, shortfalls);
    }
  }
  const due = columns.flatMap((column) => TICK_KINDS.flatMap((kind, order) => {
    const tick = column.reached[kind];
    return tick && !isFollowed(column, kind) ? [{ column, kind, order, ...tick }] : [];
  }));
  due.sort((left, right) => left.at.localeCompare(right.at) || left.order - right.order || left.column.columnId.localeCompare(right.column.columnId));
  for (const { column, kind, eventId, at } of due) {
    const { lines, short } = kind === "stripped" ? takeOff(column, hands) : putOn(column, kind, hands);
    const known = { columnId: column.columnId, siteEventId: eventId };
    if (lines.length > 0) {
      hands.balances.add(lines);
      movements.push({ ...known, kind, happenedAt: at, reversesId: null, lines });
    }
    shortfalls.push(...short.map((missing) => ({ ...known, ...missing, kind, about: "not in the ledger" as const })));
  }
  return { movements, shortfalls, gone };
}

function takeBack(column: ColumnGear, movement: Followed, hands: Hands, movements: TickMovement[], shortfalls: Shortfall[]): void {
  const { columnId, setBackAt } = column;
  const lines = mirror(movement.lines);
  if (applyLines(hands.balances, lines, hands).ok) {
    // Going back is a thing that happened; a withdrawn tick never was.
    const happenedAt = setBackAt !== null && setBackAt > movement.happenedAt ? setBackAt : movement.happenedAt;
    return void movements.push({ kind: "reversed", columnId, siteEventId: null, happenedAt, reversesId: movement.id, lines });
  }
  if (column.goneOn.includes(movement.kind)) return;
  for (const { itemId, placeId, quantity } of lines) {
    const missing = -quantity - Math.max(hands.balances.at(itemId, placeId), 0);
    if (quantity < 0 && missing > 0) shortfalls.push({ about: "gone on", kind: movement.kind, columnId, siteEventId: null, itemId, quantity: missing });
  }
}

type Taken = { readonly lines: readonly Line[]; readonly short: readonly { readonly itemId: string; readonly quantity: number }[] };

function putOn(column: ColumnGear, kind: Exclude<TickKind, "stripped">, hands: Hands): Taken {
  const wanted = kind === "stood" ? column.panels.map((itemId) => ({ itemId, quantity: 1 })) : column.clamping;
  const [lines, short]: [Line[], Taken["short"][number][]] = [[], []];
  for (const { itemId, quantity } of wanted) {
    let missing = quantity - hands.balances.at(itemId, column.placeId);
    for (const from of hands.takenFrom) {
      const taken = Math.min(missing, hands.balances.at(itemId, from));
      if (taken <= 0) continue;
      lines.push(...transfer(itemId, from, column.placeId, taken));
      missing -= taken;
    }
    if (missing > 0) short.push({ itemId, quantity: missing });
  }
  return { lines: gathered(lines), short };
}

const takeOff = (column: ColumnGear, { balances, bay }: Hands): Taken => ({
  lines: balances.lines().filter(({ placeId, quantity }) => placeId === column.placeId && quantity > 0).flatMap(({ itemId, quantity }) => transfer(itemId, column.placeId, bay, quantity)),
  short: [],
});
