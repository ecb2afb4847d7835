import type { Metadata } from "next";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getMovements } from "#lib/server/gear/pages/get-gear.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { MovementList } from "../_parts/movement-list.tsx";

export const metadata: Metadata = { title: "Movements" };
type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ before?: string }> };

export default async function MovementsPage({ params, searchParams }: Props) {
  const [{ projectId }, { before }] = [await params, await searchParams];
  const answer = await getMovements(await currentCaller(), { projectId, ...(before !== undefined && /^\d+$/.test(before) ? { before: Number(before) } : {}) });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, movements, older } = answer.value;
  return (
    <Page title="Movements" subtitle={`${project.name}: gear`}>
      {movements.length === 0
        ? <EmptyState title="Nothing has moved yet" actions={<ButtonLink href={paths.gear(projectId)}>Where it is</ButtonLink>}>Every piece that goes from one place to another stands here, the latest first.</EmptyState>
        : <MovementList projectId={projectId} timeZone={project.timeZone} movements={movements} />}
      {older === null ? null : <p><ButtonLink href={paths.gearMovements(projectId, { before: older })}>Earlier</ButtonLink></p>}
    </Page>
  );
}
