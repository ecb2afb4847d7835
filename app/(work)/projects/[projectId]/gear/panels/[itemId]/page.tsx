import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getPanel } from "#lib/server/gear/pages/get-panels.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { Quantity } from "#app/_ui/value/quantity.tsx";
import { dayWords } from "#app/_ui/value/time-words.ts";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../../refused.tsx";
import { PanelActs, WithdrawEntry } from "../../_parts/forms/panel-acts.tsx";
import { moneyText } from "../../_parts/money.ts";
import { MovementList } from "../../_parts/movement-list.tsx";

export const metadata: Metadata = { title: "Panel" };
type Props = { readonly params: Promise<{ projectId: string; itemId: string }> };

/** The life of one panel: what it was made of, where it served, what was done to it, and what a use has cost. */
export default async function PanelPage({ params }: Props) {
  const { projectId, itemId } = await params;
  const answer = await getPanel(await currentCaller(), { projectId, itemId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, panel, saw, parent, cutInto, movements, coming, role } = answer.value;
  const { life, currency } = panel;
  const mayMove = can(role, "gear.move");
  const money = (minor: number): string => moneyText(minor, currency);
  return (
    <Page
      title={panel.name} subtitle={`${project.name}: panel`}
      facts={[
        { label: "Width × height", value: <><Quantity value={panel.widthMm} unit="mm" units={project.units} /> × <Quantity value={panel.heightMm} unit="mm" units={project.units} /></> },
        { label: "Thickness", value: <Quantity value={panel.thicknessMm} unit="mm" units={project.units} places={1} /> },
        { label: "Film", value: panel.filmFaces === 2 ? (life.turnedAt ? "both faces, turned" : "both faces") : "one face" },
        { label: "Where", value: panel.placeKind === "column" && panel.columnId ? <Link href={paths.column(projectId, panel.columnId)}>{panel.place}</Link> : (panel.place ?? "nowhere") },
        { label: "Set", value: panel.set === null ? "none" : `${panel.set}, face ${panel.face}` },
        { label: "Uses", value: life.turnedAt ? `${life.uses}, ${life.usesOfFace} since turned` : life.uses },
        { label: "Cost per use", value: life.costPerUse === null ? "not used yet" : money(life.costPerUse) },
      ]}
    >
      {mayMove && life.ended === null ? <PanelActs projectId={projectId} panel={{ itemId, name: panel.name, widthMm: panel.widthMm, heightMm: panel.heightMm, restDoubt: panel.restDoubt, isDamaged: life.damaged !== null, mayTurn: panel.filmFaces === 2 && life.turnedAt === null, isDemoted: life.demoted !== null }} saw={saw} units={project.units} currency={currency} /> : null}
      {life.damaged ? <Notice kind="problem" title="Damaged">{life.damaged.reason}. It serves no column until its repair is recorded.</Notice> : null}
      {coming.length > 0 ? (
        <Section title="Coming columns" note="Spoken for by the accepted reuse plan, one after another">
          <ol className="border-2 border-ink bg-sheet px-4 py-1">
            {coming.map(({ columnId, gridRef, level, face, stoodOn, cutDown }) => (
              <li key={columnId} className="border-b border-rule-soft py-2 last:border-b-0"><Link href={paths.column(projectId, columnId)}>{gridRef}</Link>, {level}, face {face}{stoodOn ? `, stood ${dayWords(stoodOn)}` : ""}{cutDown ? "; cut down for it" : ""}</li>
            ))}
          </ol>
        </Section>
      ) : null}
      <Section title="What it cost">
        <dl className="flex flex-wrap gap-x-8 gap-y-2 border-2 border-ink bg-sheet p-4">
          {([["Sheet", panel.sheetCost], ["Making", panel.labourCost], ["Fillet and nails", panel.sundryCost], ["With repairs, less what it brought", life.cost]] as const).map(([label, minor]) => (
            <div key={label}><dt className="lettering">{label}</dt><dd className="font-semibold">{money(minor)}</dd></div>
          ))}
        </dl>
      </Section>
      <Section title="Its life">
        <ol className="border-2 border-ink bg-sheet">
          <li className="border-b border-rule-soft px-4 py-3">
            {parent ? <>Cut from <Link href={paths.gearPanel(projectId, parent.itemId)}>{parent.name}</Link></> : <>Cut from a sheet{panel.sheetBatch ? `, batch ${panel.sheetBatch}` : ""}</>}
          </li>
          {panel.events.map(({ id, kind, at, by, reason, amount, isWithdrawn }) => (
            <li key={id} className="flex flex-wrap items-center justify-between gap-x-4 gap-y-2 border-b border-rule-soft px-4 py-3 last:border-b-0">
              <p className={`min-w-0 grow basis-60 ${isWithdrawn ? "text-ink-soft line-through" : ""}`}>
                <strong className="font-semibold first-letter:uppercase">{kind}</strong>{amount > 0 ? `, ${money(amount)}` : ""}{reason ? `: ${reason}` : ""}
              </p>
              <p className="text-sm text-ink-soft"><TimeText at={at} timeZone={project.timeZone} /> · {by}</p>
              {mayMove && kind !== "withdrawn" && !isWithdrawn ? <WithdrawEntry projectId={projectId} eventId={id} what={kind} /> : null}
            </li>
          ))}
          {cutInto.length > 0 ? <li className="px-4 py-3">Cut into {cutInto.map(({ itemId: id, name }, index) => <span key={id}>{index > 0 ? " and " : ""}<Link href={paths.gearPanel(projectId, id)}>{name}</Link></span>)}</li> : null}
        </ol>
      </Section>
      <Section title="Movements"><MovementList projectId={projectId} timeZone={project.timeZone} movements={movements} /></Section>
    </Page>
  );
}
