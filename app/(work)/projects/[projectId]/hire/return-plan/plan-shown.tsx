import type { ReactNode } from "react";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { NeedChart } from "./need-chart.tsx";
import { PlanLines, type ShownLine } from "./plan-lines.tsx";
import { planMoney } from "./plan-money.ts";
import type { PlanResult } from "./plan-facts.tsx";
import type { ShownTask } from "./tasks/return-tasks.tsx";

type Item = { readonly itemId: string; readonly item: string };
export type ShownPlan = {
  readonly id: string; readonly result: PlanResult | null; readonly dates: readonly string[]; readonly isStale: boolean;
  readonly solver: string | null; readonly wallMs: number | null; readonly orderedAt: string; readonly by: string;
  readonly suppliers: readonly { readonly supplierId: string; readonly supplier: string }[];
  readonly lines: readonly { readonly supplierId: string; readonly supplier: string; readonly on: string; readonly way: "take" | "bring"; readonly callOn: string; readonly trips: number; readonly items: readonly (Item & { readonly quantity: number; readonly kg: number })[] }[];
  readonly need: readonly (Item & { readonly needed: readonly number[]; readonly owned: number; readonly hired: readonly { readonly supplierId: string; readonly count: number }[] })[];
  readonly stock: readonly { readonly itemId: string; readonly onHire: readonly number[]; readonly owned: number }[];
  readonly pinned: readonly (Item & { readonly on: string; readonly needed: number; readonly spare: number; readonly columns: readonly string[] })[];
  readonly short: readonly (Item & { readonly on: string; readonly needed: number; readonly there: number })[];
  readonly leftOut: readonly (Item & { readonly supplierId: string; readonly supplier: string; readonly hired: number; readonly why: "no-need" | "no-rate" })[];
};
export type PlanShownProps = {
  readonly projectId: string; readonly plan: ShownPlan; readonly tasks: readonly (ShownTask & { readonly planId: string; readonly supplierId: string })[]; readonly today: string; readonly currency: string;
  readonly timeZone: string; readonly mayPlan: boolean;
};

/** How many are on hire now, and of whom where there are several. */
function onHireWords(hired: ShownPlan["need"][number]["hired"], suppliers: ShownPlan["suppliers"]): string {
  const all = hired.reduce((sum, { count }) => sum + count, 0).toLocaleString("en");
  if (suppliers.length < 2) return `${all} on hire now`;
  const nameOf = (supplierId: string): string => suppliers.find((each) => each.supplierId === supplierId)?.supplier ?? "";
  if (hired.length === 1) return `${all} on hire now from ${nameOf(hired[0]?.supplierId ?? "")}`;
  return `${all} on hire now: ${hired.map(({ supplierId, count }) => `${count.toLocaleString("en")} from ${nameOf(supplierId)}`).join(", ")}`;
}

const LEFT_OUT = { "no-need": "nothing says what columns need of it: enter it under Hire, Gear per column", "no-rate": "the terms have no rate for it" } as const;

/** A finished plan: what goes when, why no more, and how it was found. */
export function PlanShown({ projectId, plan, tasks, today, currency, timeZone, mayPlan }: PlanShownProps) {
  const accepted = new Set(tasks.filter(({ state, planId }) => state !== "withdrawn" && planId === plan.id).flatMap(({ supplierId, collectOn, lines }) => lines.map(({ itemId }) => `${supplierId} ${collectOn} ${itemId}`)));
  const lines = plan.lines.map((line): ShownLine => ({ ...line, items: line.items.map((item) => ({ ...item, isAccepted: line.way === "take" && accepted.has(`${line.supplierId} ${line.on} ${item.itemId}`) })) }));
  return (
    <>
      {plan.short.length > 0 ? (
        <Notice kind="problem" title="There is too little before more can be had.">
          <ul>{plan.short.map(({ itemId, item, on, needed, there }) => <li key={`${itemId} ${on}`}>{item}, in the days from <DayText day={on} />: {needed} needed, {there} there.</li>)}</ul>
        </Notice>
      ) : null}
      <Section title="By date" note="Send back, and hire again where that is cheaper than keeping">
        <PlanLines projectId={projectId} planId={plan.id} lines={lines} today={today} canAccept={mayPlan && !plan.isStale} isNamed={plan.suppliers.length > 1} />
      </Section>
      <Section title="Needed and on hire" note={<Legend />}>
        <div className="flex flex-col gap-5">
          {plan.need.map(({ itemId, item, needed, owned, hired }) => (
            <figure key={itemId} className="break-inside-avoid border-2 border-ink bg-sheet p-3">
              <figcaption className="mb-1 font-semibold">{item} <span className="font-normal text-ink-soft">{onHireWords(hired, plan.suppliers)}{owned > 0 ? `, ${owned} others here used first` : ""}</span></figcaption>
              <NeedChart item={item} from={plan.dates[0] ?? today} needed={needed} owned={owned} onHire={plan.stock.find((each) => each.itemId === itemId)?.onHire ?? []} />
            </figure>
          ))}
        </div>
      </Section>
      <Section title="What holds the gear here" note="The most needed of each item once a truck can come, and the columns that make it">
        <ul className="flex flex-col gap-2">
          {plan.pinned.map(({ itemId, item, on, needed, spare, columns }) => (
            <li key={itemId} className="border-2 border-ink bg-sheet p-3">
              <p><strong>{item}</strong>: {needed} needed on <DayText day={on} /> with the float; {spare > 0 ? `${spare} on hire will not be needed at once again` : "none can be spared for good"}.</p>
              <p className="text-sm text-ink-soft">In form that day: {columns.slice(0, 24).join(" · ")}{columns.length > 24 ? ` and ${columns.length - 24} more` : ""}</p>
            </li>
          ))}
        </ul>
        {plan.leftOut.length > 0 ? <p className="mt-3">Not in this plan: {plan.leftOut.map(({ supplier, item, hired, why }) => `${hired} × ${item} of ${supplier} (${LEFT_OUT[why]})`).join("; ")}.</p> : null}
      </Section>
      <Found plan={plan} currency={currency} timeZone={timeZone} />
    </>
  );
}

const Legend = (): ReactNode => <>dashed: needed by the columns with the float; shaded: there: hired, on top of our own and other suppliers’</>;

function Found({ plan, currency, timeZone }: { readonly plan: ShownPlan; readonly currency: string; readonly timeZone: string }) {
  const { day, time } = instantWords(plan.orderedAt, timeZone);
  return (
    <p className="text-sm text-ink-soft">
      Made {day}, {time}, for {plan.by}, over {plan.dates.length} dates on which a truck may come. {plan.result ? <>No plan over these dates costs less than {planMoney(plan.result.bound, currency)}. </> : null}
      {plan.solver}, {((plan.wallMs ?? 0) / 1000).toFixed(1)} s. Hire by the supplier&rsquo;s terms as entered here; the hirer&rsquo;s own account decides.
    </p>
  );
}
