import type { BuyingPlan } from "#lib/server/gear/orders/plan-buying.ts";
import { can } from "#lib/access/permissions.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { isExample } from "#app/_ui/message/example-notice.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { amountText } from "#app/_ui/value/money.tsx";
import { dayWords } from "#app/_ui/value/time-words.ts";
import { paths } from "#app/paths.ts";
import { materialText } from "../_parts/order-words.ts";

type Size = BuyingPlan["sizes"][number];
type Line = Size["rows"][number] & { readonly size: Size; readonly isFirst: boolean };

const NO_DAY = "no day planned";
const dayOr = (day: string | null) => (day === null ? NO_DAY : <DayText day={day} />);

/** What an order needs by the address: pieces by size, all of them or those needed by one day. */
const orderHref = (projectId: string, lines: readonly Line[], wanted: string | null): string => {
  const counts = new Map<string, number>();
  for (const { size, buy } of lines) if (buy > 0) counts.set(`n.${size.key}`, (counts.get(`n.${size.key}`) ?? 0) + buy);
  return paths.orderPart(projectId, "new", { ...(wanted === null ? {} : { wanted }), ...Object.fromEntries(counts) });
};

export function ToBuyShown({ plan: { task, sizes, fromRack, failures } }: { readonly plan: BuyingPlan }) {
  const { project, cuttingRule, role } = task;
  const lines = sizes.flatMap((size) => size.rows.map((row, index): Line => ({ ...row, size, isFirst: index === 0 })));
  const toBuy = lines.filter(({ buy }) => buy > 0);
  const days = [...new Set(toBuy.map(({ on }) => on))].sort((a, b) => (a === null ? 1 : b === null ? -1 : a < b ? -1 : 1));
  const sum = toBuy.reduce((all, { buy, size }) => all + buy * size.price, 0);
  const past = toBuy.filter(({ isPast }) => isPast);
  const columns: readonly DataColumn<Line>[] = [
    { key: "what", head: "Size", isRowHead: true, cell: ({ size }) => <span className="inline-block min-w-40">{materialText(size, project.units)}</span> },
    { key: "by", head: "Order by", cell: ({ orderBy, isPast }) => <>{dayOr(orderBy)}{isPast ? <span className="block text-sm font-bold uppercase text-flag-deep">past</span> : null}</> },
    { key: "yard", head: "In the yard by", cell: ({ on }) => dayOr(on) },
    { key: "stand", head: "First stood", cell: ({ standOn }) => dayOr(standOn) },
    { key: "plan", head: "Plan", isFigure: true, cell: ({ planned }) => planned },
    { key: "over", head: "Over", isFigure: true, cell: ({ allowance }) => allowance || "–" },
    { key: "hand", head: "At hand", isFigure: true, cell: ({ fromHand }) => (fromHand > 0 ? `−${fromHand}` : "–") },
    { key: "coming", head: "On order", isFigure: true, cell: ({ fromOrders, tooLate }) => <>{fromOrders > 0 ? `−${fromOrders}` : "–"}{tooLate > 0 ? <span className="block text-sm font-semibold text-flag-deep">{tooLate} too late</span> : null}</> },
    { key: "buy", head: "To buy", isFigure: true, cell: ({ buy }) => <strong>{buy}</strong> },
  ];
  return (
    <>
      {failures.map((failure, index) => <FailureNotice key={index} failure={failure} />)}
      {past.length > 0 ? <Notice kind="problem" title="Some of it should have been ordered already.">Ask the merchant for a shorter time, plan fewer sets, or move the days under Pours.</Notice> : null}
      {lines.length === 0 ? (failures.length > 0 ? null : <p>The cutting plan takes nothing that has to be bought.</p>) : (
        <Section title="Sheets and timber" note={`from one cutting plan of all sets; ${project.workingDays.length} working days a week`}>
          <DataTable
            caption="What to buy by size and day" isCaptionHidden columns={columns} rows={lines} rowKey={({ size, on }) => `${size.key} ${on ?? ""}`}
            foot={<tr><th scope="row" colSpan={8} className="px-3 py-2 text-left">{isExample(cuttingRule.source) ? "At example prices: put in your own under Set-up, Stock" : "At the prices kept for this project"}</th><td className="whitespace-nowrap px-3 py-2 text-right">{amountText(sum, project.currency)} {project.currency}</td></tr>}
          />
        </Section>
      )}
      {lines.some(({ fromHand }) => fromHand > 0) ? <p className="text-sm text-ink-soft">At hand counts the racks and trucks of this project and the company’s yard, which its other projects share.</p> : null}
      {fromRack.length > 0 ? <p>From the rack, offcuts and what is counted in Set-up: {fromRack.map((size) => `${size.count} × ${materialText(size, project.units)}`).join(", ")}.</p> : null}
      {toBuy.length > 0 && can(role, "order.record") ? (
        <nav aria-label="Order it" className="no-print flex flex-wrap gap-3">
          <ButtonLink kind="primary" href={orderHref(project.id, toBuy, days[0] ?? null)}>Order all of it</ButtonLink>
          {days.length > 1 ? days.map((on) => <ButtonLink key={on ?? ""} href={orderHref(project.id, toBuy.filter((line) => line.on === on), on)}>Order what is needed {on === null ? "without a day" : `by ${dayWords(on)}`}</ButtonLink>) : null}
        </nav>
      ) : null}
    </>
  );
}
