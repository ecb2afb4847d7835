import { can } from "#lib/access/permissions.ts";
import type { Role } from "#lib/access/roles.ts";
import type { GatherPage } from "#lib/server/gear/pages/gather.ts";
import { Section } from "#app/_ui/page/section.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { CutDownSection } from "../reuse/_parts/reserved/cut-down-section.tsx";
import { ReservedList } from "../reuse/_parts/reserved/reserved-list.tsx";

type Props = { readonly projectId: string; readonly waiting: GatherPage["waiting"]; readonly units: Units; readonly role: Role };

/** Panels spoken for by these columns that cannot be taken yet: to be cut down first, or still to come off a column. */
export function WaitingPanels({ projectId, waiting: { cutDown, comesOff }, units, role }: Props) {
  return (
    <>
      <CutDownSection projectId={projectId} lines={cutDown} units={units} mayCut={can(role, "gear.move")} />
      {comesOff.length > 0 ? (
        <Section title="Still to come off a column">
          <div className="border-2 border-ink bg-sheet px-4 py-1"><ReservedList projectId={projectId} lines={comesOff} units={units} mayCut={false} withColumn /></div>
        </Section>
      ) : null}
    </>
  );
}
