import type { Metadata } from "next";
import { headers } from "next/headers";
import { isLabelKind, type LabelKind } from "#lib/contracts/gear.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { listLabels } from "#lib/server/gear/pages/labels.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { LabelDrawing } from "#app/_ui/drawing/label/label-drawing.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { LabelChoice } from "./label-choice.tsx";
import { labelDetail } from "./label-words.ts";
import { isOwnMachineOnly, ownAddress } from "./own-address.ts";

export const metadata: Metadata = { title: "Labels" };
type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ kind?: string; level?: string }> };

/** Three by four on A4 or Letter. */
const ON_A_PAGE = 12;

/** Sheets of labels to cut apart: a phone that scans one opens the panel, set or column it hangs on. */
export default async function LabelsPage({ params, searchParams }: Props) {
  const [{ projectId }, asked] = [await params, await searchParams];
  const answer = await listLabels(await currentCaller(), { projectId, kind: isLabelKind(asked.kind) ? asked.kind : "panel", ...(asked.level ? { levelId: asked.level } : {}) });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, kind, levels, levelId, labels } = answer.value;
  const address = ownAddress(await headers(), process.env["NEXTAUTH_URL"]);
  const pages = Array.from({ length: Math.ceil(labels.length / ON_A_PAGE) }, (_, page) => labels.slice(page * ON_A_PAGE, (page + 1) * ON_A_PAGE));
  return (
    <Page
      title="Labels" subtitle={`${project.name}: gear`} actions={labels.length > 0 ? <PrintButton /> : null}
      facts={[{ label: "Labels", value: labels.length }, { label: "Pages", value: pages.length }, { label: "Codes lead to", value: address }]}
    >
      <LabelChoice projectId={projectId} kind={kind} levels={levels} levelId={levelId} />
      {labels.length > 0 && isOwnMachineOnly(address) ? (
        <div className="no-print">
          <Notice title={`A phone cannot reach ${address}.`}>
            That name means &ldquo;this machine&rdquo;. Open this page by the address the phones use, or have the server&rsquo;s public address set, and print then.
          </Notice>
        </div>
      ) : null}
      {labels.length > 0
        ? <p className="no-print">Print at full size (100 %), three across, and cut along the dashed lines. The code holds an address of this server and nothing else: whoever scans it has to sign in first.</p>
        : <NothingToLabel projectId={projectId} kind={kind} hasLevels={levels.length > 0} />}
      <div className="grid gap-6 print:block">
        {pages.map((page) => (
          <ul key={page[0]?.id} className="label-page grid max-w-4xl pl-px pt-px grid-cols-2 content-start sm:grid-cols-3">
            {page.map((label) => (
              <li key={label.id} className="keep -ml-px -mt-px border border-dashed border-edge bg-white">
                <LabelDrawing address={`${address}${paths.label(kind, projectId, label.id)}`} name={label.name} detail={labelDetail(label, project.units)} />
              </li>
            ))}
          </ul>
        ))}
      </div>
    </Page>
  );
}

function NothingToLabel({ projectId, kind, hasLevels }: { readonly projectId: string; readonly kind: LabelKind; readonly hasLevels: boolean }) {
  if (kind !== "column") {
    return (
      <EmptyState title={kind === "panel" ? "No panel in use" : "No set yet"}>
        Make the first {kind === "panel" ? "panels" : "set"} under <Link href={paths.gearPanels(projectId)}>Panels and sets</Link>; their labels stand here then.
      </EmptyState>
    );
  }
  return (
    <EmptyState title={hasLevels ? "No column starts from this level" : "No levels yet"}>
      {hasLevels ? <>Choose another level, or add its columns under <Link href={paths.setUpPart(projectId, "columns")}>Set-up, Columns</Link>.</> : <>Give the levels under <Link href={paths.setUpPart(projectId, "levels")}>Set-up, Levels</Link>, then their columns.</>}
    </EmptyState>
  );
}
