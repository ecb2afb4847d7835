import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getPlannedDays } from "#lib/server/pours/planned-days.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Link } from "#app/_ui/control/link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../own-account.ts";
import { Refused } from "../../../refused.tsx";
import { PlannedBoard } from "./planned-board.tsx";

export const metadata: Metadata = { title: "Pours" };

type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ level?: string }> };

export default async function PoursPage({ params, searchParams }: Props) {
  const [{ projectId }, { level }] = [await params, await searchParams];
  const [answer, account] = await Promise.all([getPlannedDays(await currentCaller(), { projectId, levelId: level }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, levels, levelId, columns, now } = answer.value;
  const shown = levels.find(({ id }) => id === levelId);
  return (
    <Page title="Pours" subtitle={project.name} actions={<PrintButton />} facts={shown ? [{ label: "Level", value: shown.name }, { label: "Columns", value: shown.columns }, { label: "With a pour day", value: shown.planned }] : []}>
      {levels.length === 0 ? (
        <EmptyState title="No columns yet" actions={<ButtonLink href={paths.setUp(project.id)}>Go to Set-up</ButtonLink>}>
          Once the column schedule is in, the days on which columns are to be stood and poured are set here. Hire returns and cutting lists go by them.
        </EmptyState>
      ) : (
        <>
          <nav aria-label="Levels" className="no-print flex flex-wrap gap-2">
            {levels.map((each) => (
              <Link
                key={each.id} href={paths.pours(project.id, { level: each.id })} aria-current={each.id === levelId ? "page" : undefined}
                className="flex min-h-glove items-center border-2 border-edge bg-sheet px-4 font-semibold text-ink no-underline hover:bg-accent-wash sm:min-h-hand aria-[current=page]:border-ink aria-[current=page]:bg-ink aria-[current=page]:text-white"
              >
                {each.name}<span className="ml-2 font-normal">{each.planned} of {each.columns}</span>
              </Link>
            ))}
          </nav>
          <PlannedBoard
            key={levelId} project={{ id: project.id, workingDays: project.workingDays, timeZone: project.timeZone }} columns={columns}
            canPlan={account.ok && can(account.value.role, "pours.plan")} now={now}
          />
        </>
      )}
    </Page>
  );
}
