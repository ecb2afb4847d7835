import type { Metadata } from "next";
import { ASSUMED_SPACING_MM } from "#lib/server/columns/import-schedule.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { SetUpPage, type SetUpParams } from "../_parts/set-up-page.tsx";
import { ImportDesk } from "./import-desk.tsx";
import { PastImports } from "./past-imports.tsx";

export const metadata: Metadata = { title: "Schedule" };

export default function SchedulePage({ params }: SetUpParams) {
  return (
    <SetUpPage params={params} title="Column schedule" permission="schedule.import">
      {({ project, imports }, canEdit) => (
        <>
          {canEdit ? (
            <>
              <ImportDesk projectId={project.id} units={project.units} assumedSpacingMm={ASSUMED_SPACING_MM} />
              <div className="flex flex-wrap items-center gap-x-5 gap-y-2">
                <ButtonLink href={paths.scheduleTemplate(project.id)} download>Template to fill in</ButtonLink>
                <p className="max-w-prose text-ink-soft">
                  Two layouts are recognised: a list with one row for each mark and lift, and a matrix with levels down and marks or grid
                  references across. A new issue of the schedule can be imported over an older one; nothing is ever deleted by it.
                </p>
              </div>
            </>
          ) : null}
          <Section title="Past imports"><PastImports project={project} imports={imports} canDownload={canEdit} /></Section>
        </>
      )}
    </SetUpPage>
  );
}
