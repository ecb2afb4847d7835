import type { ReuseTask } from "#lib/server/cutting/reuse/plan-reuse.ts";
import type { ReusePlan } from "#lib/trade/planning/reuse/reuse-order.ts";
import { amountFigure } from "#lib/kernel/money.ts";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { dayWords } from "#app/_ui/value/time-words.ts";
import { lengthFigure } from "#app/_ui/value/format-quantity.ts";
import { reuseGroups, type ReuseRow } from "./reuse-rows.ts";

export function ReuseView({ task, plan }: { readonly task: ReuseTask; readonly plan: ReusePlan }) {
  const { units, currency } = task.project;
  const money = (minor: number): string => `${amountFigure(minor, currency)} ${currency}`;
  const size = (row: ReuseRow): string => `${lengthFigure(row.widthMm, units)} × ${lengthFigure(row.heightMm, units)}`;
  const again = plan.uses.length - plan.newPanels;
  const columns: readonly DataColumn<ReuseRow>[] = [
    { key: "column", head: "Column", isRowHead: true, cell: ({ column, mark }) => <>{column}<span className="ml-2 font-normal text-ink-soft">{mark}</span></> },
    { key: "face", head: "Face", cell: ({ face }) => face },
    { key: "size", head: "Size", isFigure: true, cell: size },
    { key: "from", head: "Panel", cell: ({ from, where, kind }) => <><span className={kind === "new" ? "text-accent" : ""}>{from}</span>{where ? <span className="block text-sm text-ink-soft">{where}</span> : null}</> },
    { key: "cut", head: "Work", cell: ({ cutDown, kind }) => (kind === "new" ? "make" : cutDown ? "cut down" : "as it is") },
    { key: "cost", head: "Cost", isFigure: true, cell: ({ cost }) => money(cost) },
  ];
  return (
    <>
      <p>
        <strong className="font-semibold">{`${plan.uses.length} panels: ${again} used again, ${plan.cutDowns} of them cut down, ${plan.newPanels} new. ${boundWords(plan, money)}`}</strong>
        {` Counted are new ply, cutting down with the ply it loses, and carrying from the yard.`}
      </p>
      {reuseGroups(task, plan).map(({ start, rows }) => (
        <Section key={start} title={task.by === "day" ? dayWords(start) : start} note={`${rows.length} panels, ${rows.filter(({ kind }) => kind === "new").length} new`}>
          <DataTable caption={`Panels for ${start}`} isCaptionHidden columns={columns} rows={rows} rowKey={({ key }) => key} />
        </Section>
      ))}
    </>
  );
}

const boundWords = ({ cost, bound, proven }: ReusePlan, money: (minor: number) => string): string =>
  proven ? `${money(cost)}; no plan costs less.` : `${money(cost)}; no plan can cost less than ${money(bound)}.`;
