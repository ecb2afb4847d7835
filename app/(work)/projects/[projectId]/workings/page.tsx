import type { Metadata } from "next";
import { currentCaller } from "#lib/server/gate/session.ts";
import { startWorkings } from "#lib/server/workings/start-workings.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { Caution } from "#app/_ui/message/caution.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../refused.tsx";
import { CALCULATORS } from "./_parts/calculators.ts";

export const metadata: Metadata = { title: "Workings" };

type Props = { readonly params: Promise<{ projectId: string }> };

export default async function WorkingsPage({ params }: Props) {
  const { projectId } = await params;
  const start = await startWorkings(await currentCaller(), { projectId });
  if (!start.ok) return <Refused failure={start.failure} />;
  return (
    <Page title="Workings" subtitle={start.value.project.name}>
      <p className="max-w-prose">
        Six calculations for one form at a time. They need no schedule and keep nothing: each starts from this project&rsquo;s set-up, and what
        you enter stands in the address of the page, to be sent on, opened again or printed on one sheet.
      </p>
      <ul className="grid gap-3 sm:grid-cols-2 lg:grid-cols-3">
        {CALCULATORS.map(({ name, label, about }) => (
          <li key={name}>
            <Link href={paths.working(projectId, name)} className="flex h-full flex-col gap-1 border-2 border-ink bg-sheet p-4 text-ink no-underline hover:bg-accent-wash">
              <span className="text-lg font-semibold underline underline-offset-2">{label}</span>
              <span>{about}</span>
            </Link>
          </li>
        ))}
      </ul>
      <Caution of="calculation" />
    </Page>
  );
}
