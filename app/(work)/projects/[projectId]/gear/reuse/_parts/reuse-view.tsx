import type { PlannedReuse } from "#lib/server/cutting/reuse/plan-reuse.ts";
import type { ReusePlan } from "#lib/trade/planning/reuse/reuse-order.ts";
import { can } from "#lib/access/permissions.ts";
import { amountFigure } from "#lib/kernel/money.ts";
import { dayWords } from "#app/_ui/value/time-words.ts";
import { AcceptPlan } from "./accept-plan.tsx";
import { reuseGroups } from "./reuse-rows.ts";

export function ReuseView(planned: PlannedReuse) {
  const { task: { project: { id, currency }, by, whole, role }, plan } = planned;
  const money = (minor: number): string => `${amountFigure(minor, currency)} ${currency}`;
  const again = plan.uses.length - plan.newPanels;
  const groups = reuseGroups(planned, money).map(({ start, rows }) => ({ title: by === "day" ? dayWords(start) : start, rows }));
  return (
    <>
      <p>
        <strong className="font-semibold">{`${plan.uses.length} panels: ${again} used again, ${plan.cutDowns} of them cut down, ${plan.newPanels} new. ${boundWords(plan, money)}`}</strong>
        {` Counted are new ply, cutting down with the ply it loses, and carrying from the yard.`}
      </p>
      <AcceptPlan key={JSON.stringify(planned.lines)} projectId={id} whole={whole} groups={groups} mayAccept={can(role, "reuse.accept")} />
    </>
  );
}

const boundWords = ({ cost, bound, proven }: ReusePlan, money: (minor: number) => string): string =>
  proven ? `${money(cost)}; no plan costs less.` : `${money(cost)}; no plan can cost less than ${money(bound)}.`;
