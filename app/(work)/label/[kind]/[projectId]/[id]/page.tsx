import { notFound, redirect } from "next/navigation";
import { isLabelKind, type LabelKind } from "#lib/contracts/gear.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { findLabelled } from "#lib/server/gear/pages/labels.ts";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";

type Props = { readonly params: Promise<{ kind: string; projectId: string; id: string }> };

const PAGE_OF: Readonly<Record<LabelKind, (projectId: string, id: string) => string>> = { panel: paths.gearPanel, set: paths.gearPanels, column: paths.column };

/** Where a scanned label leads: on to the page of the thing it hangs on. */
export default async function LabelledPage({ params }: Props) {
  const { kind, projectId, id } = await params;
  if (!isLabelKind(kind)) notFound();
  const found = await findLabelled(await currentCaller(), { kind, projectId, id });
  if (!found.ok) return <Refused failure={found.failure} />;
  redirect(PAGE_OF[found.value.kind](projectId, id));
}
