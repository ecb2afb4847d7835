import type { getOrdersDue } from "#lib/server/gear/orders/get-orders.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { paths } from "#app/paths.ts";

type Due = Extract<Awaited<ReturnType<typeof getOrdersDue>>, { ok: true }>["value"];

/** Orders that should be there, the late ones loud. */
export function OrdersDue({ projectId, orders }: { readonly projectId: string; readonly orders: Due }) {
  return (
    <ul className="flex flex-col gap-2">
      {orders.map(({ id, number, supplier, wantedOn, isLate, lines }) => (
        <li key={id} className={`flex flex-wrap items-center justify-between gap-3 border-2 p-3 ${isLate ? "border-flag bg-flag-wash" : "border-ink bg-sheet"}`}>
          <div className="min-w-0 grow basis-60">
            {isLate ? <p className="font-bold uppercase text-flag-deep">Late</p> : null}
            <p className="font-semibold">{number}, {supplier}: wanted <DayText day={wantedOn} /></p>
            <p className="text-sm text-ink-soft">{lines.map(({ item, open }) => `${open} × ${item}`).join("; ")}</p>
          </div>
          <div className="no-print"><ButtonLink size="glove" kind="primary" href={paths.gearOrder(projectId, id, "receive")}>Receive</ButtonLink></div>
        </li>
      ))}
    </ul>
  );
}
