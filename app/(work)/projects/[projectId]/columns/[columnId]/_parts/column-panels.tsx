import { can } from "#lib/access/permissions.ts";
import type { ReservedPage } from "#lib/server/gear/reserved/get-reserved.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { FallenNotice } from "../../../gear/reuse/_parts/reserved/fallen-notice.tsx";
import { ReservedList } from "../../../gear/reuse/_parts/reserved/reserved-list.tsx";

/** The panels that are spoken for by the column, from where they come, and what fell out. */
export function ColumnPanels({ reserved: { project, lines, fallen, role } }: { readonly reserved: ReservedPage }) {
  if (lines.length === 0 && fallen.length === 0) return null;
  return (
    <Section title="Its panels" note={lines[0]?.set ? `set ${lines[0].set}, made up from panels used before` : "by the accepted reuse plan"}>
      <FallenNotice projectId={project.id} fallen={fallen} isElsewhere />
      {lines.length > 0 ? <div className="border-2 border-ink bg-sheet px-4 py-1"><ReservedList projectId={project.id} lines={lines} units={project.units} mayCut={can(role, "gear.move")} /></div> : null}
    </Section>
  );
}
