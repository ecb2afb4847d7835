import type { getColumnGear } from "#lib/server/gear/pages/get-gear.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Link } from "#app/_ui/control/link.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";

type Gear = Extract<Awaited<ReturnType<typeof getColumnGear>>, { ok: true }>["value"];

/** What of the gear lies at this column, and what its ticks move. */
export function GearHere({ projectId, columnId, gear: { here, isRound, mayGather } }: { readonly projectId: string; readonly columnId: string; readonly gear: Gear }) {
  return (
    <Section title="Gear at the column" className="no-print" {...(mayGather && !isRound ? { actions: <ButtonLink href={paths.gather(projectId, { columns: columnId })}>Gather for it</ButtonLink> } : {})}>
      <div className="flex flex-col gap-2">
        {here.length === 0 ? <p>Nothing is counted here.</p> : (
          <ul className="flex flex-wrap gap-x-6">
            {here.map(({ itemId, item, family, quantity }) => (
              <li key={itemId}><Link href={family === "panel" ? paths.gearPanel(projectId, itemId) : paths.gearItem(projectId, itemId)} className="inline-flex min-h-glove items-center sm:min-h-hand">{family === "panel" ? `Panel ${item}` : `${quantity} × ${item}`}</Link></li>
            ))}
          </ul>
        )}
        {isRound ? (
          <p className="border-2 border-l-8 border-ink bg-sheet p-3">
            A round column is cast in a round form, for which this ledger knows no clamp set: ticking it clamped moves no clamps. What is moved to it by hand comes off when it is ticked stripped.
          </p>
        ) : null}
      </div>
    </Section>
  );
}
