import type { ReactNode } from "react";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { Link } from "#app/_ui/control/link.tsx";
import { paths } from "#app/paths.ts";
import type { MovementKind } from "#lib/trade/gear/ledger.ts";
import { MOVEMENT_WORDS } from "./movement-words.ts";
import { TakeBack } from "./forms/take-back.tsx";

type Line = { readonly itemId: string; readonly item: string; readonly place: string; readonly quantity: number };
export type Movement = {
  readonly id: string; readonly kind: MovementKind; readonly happenedAt: string; readonly arrivedAt: string; readonly by: string; readonly reason: string | null;
  readonly column: string | null; readonly columnId: string | null; readonly followsTick: boolean; readonly reversesId: string | null; readonly reversedById: string | null; readonly lines: readonly Line[];
};
type Props = {
  readonly projectId: string; readonly timeZone: string; readonly movements: readonly Movement[];
  /** How one of them is taken back, where that need not be done at once. */
  readonly takeBack?: (movement: Movement) => ReactNode;
};

/** Out of where and into where, by item; a reader sees one line for each item instead of two entries of a book. */
const byItem = (lines: readonly Line[]) =>
  [...new Set(lines.map(({ itemId }) => itemId))].map((itemId) => {
    const own = lines.filter((line) => line.itemId === itemId);
    const [from, to] = [own.filter(({ quantity }) => quantity < 0), own.filter(({ quantity }) => quantity > 0)];
    const names = (list: readonly Line[]): string => list.map(({ place, quantity }) => (list.length > 1 ? `${place} (${Math.abs(quantity)})` : place)).join(", ");
    return { itemId, item: own[0]?.item ?? "", count: to.reduce((sum, { quantity }) => sum + quantity, 0), from: names(from), to: names(to) };
  });

export function MovementList({ projectId, timeZone, movements, takeBack }: Props) {
  return (
    <ol className="flex flex-col border-2 border-ink bg-sheet">
      {movements.map((movement) => (
        <li key={movement.id} className={`keep flex flex-wrap items-start gap-x-4 gap-y-2 border-b border-rule-soft px-4 py-3 last:border-b-0 ${movement.reversedById ? "text-ink-soft" : ""}`}>
          <div className="min-w-0 grow basis-72">
            <p>
              <strong className="font-semibold">{MOVEMENT_WORDS[movement.kind]}</strong>
              {movement.column && movement.columnId ? <>{" "}<Link href={paths.column(projectId, movement.columnId)}>{movement.column}</Link></> : null}
              {movement.reversedById ? <span className="ml-2 border border-current px-1 text-xs font-bold uppercase tracking-wider">taken back</span> : null}
            </p>
            <ul className={movement.reversedById ? "line-through" : ""}>
              {byItem(movement.lines).map(({ itemId, item, count, from, to }) => (
                <li key={itemId}>{count} × {item}: <span className="text-ink-soft">{from} → {to}</span></li>
              ))}
            </ul>
            {movement.reason ? <p className="text-sm text-ink-soft">{movement.reason}</p> : null}
          </div>
          <div className="text-sm text-ink-soft">
            <p><TimeText at={movement.happenedAt} timeZone={timeZone} /></p>
            <p>{movement.by}{movement.followsTick ? ", by a tick" : ""}</p>
          </div>
          {movement.reversedById || movement.reversesId || movement.followsTick ? null : (takeBack?.(movement) ?? <TakeBack projectId={projectId} movementId={movement.id} what={MOVEMENT_WORDS[movement.kind]} />)}
        </li>
      ))}
    </ol>
  );
}
