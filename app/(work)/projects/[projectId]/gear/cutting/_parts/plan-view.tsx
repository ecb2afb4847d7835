import type { CuttingPlan } from "#lib/server/cutting/plan-cutting.ts";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { amountFigure } from "#lib/kernel/money.ts";
import { can } from "#lib/access/permissions.ts";
import { boundWords } from "./bound-words.ts";
import { CutButton } from "../_cut/cut-button.tsx";
import { SheetFigures } from "./sheet-figures.tsx";
import { stockRows } from "./stock-rows.ts";
import { TimberFigures } from "./timber-figures.tsx";
import { ToBuy } from "./to-buy.tsx";

export function PlanView({ plan }: { readonly plan: CuttingPlan }) {
  const { task: { orders, cuttingRule, project, ply, level, groups, role }, sheets, timbers } = plan;
  const fromRack = sheets.ok ? besideWords(sheets.value.layouts.map(({ sheetId, count }) => ({ id: sheetId, count }))) : "";
  const { units, currency } = project;
  const money = (minor: number): string => `${amountFigure(minor, currency)} ${currency}`;
  return (
    <>
      <Section title="Stock" note="At the prices kept for this project"><ToBuy rows={stockRows(plan, (value) => lengthFigure(value, units))} money={money} /></Section>
      <Section title="Ply" note={ply.label}>
        {sheets.ok ? (
          <div className="flex flex-col gap-4">
            <p><strong className="font-semibold">{boundWords(sheets.value, cuttingRule.sheets, "sheet", "sheets", money)}</strong>{fromRack}{` ${areaWords(sheets.value.wasteMm2, sheets.value.keptMm2, units)}`}</p>
            {level && can(role, "gear.move") ? (
              <CutButton
                key={JSON.stringify(sheets.value.layouts)} projectId={project.id} levelId={level.id} sets={groups.map(({ size, sets }) => ({ size, count: sets }))} layouts={sheets.value.layouts}
                timbers={timbers.flatMap(({ use, plan: timber }) => (timber.ok ? [{ use, layouts: timber.value.layouts }] : []))} isWithoutTimbers={timbers.some(({ plan: timber }) => !timber.ok)}
                panels={groups.reduce((sum, { panels, sets }) => sum + panels.length * sets, 0)}
              />
            ) : null}
            <SheetFigures plan={sheets.value} sheets={orders.sheets.sheets} pieces={orders.pieces} units={units} />
          </div>
        ) : <FailureNotice failure={sheets.failure} />}
      </Section>
      {timbers.map(({ use, material, plan: timber }) => {
        const order = orders.timbers.find((candidate) => candidate.use === use)?.order;
        return (
          <Section key={use} title={use === "backing" ? "Backing timber" : "Fillets"} note={material}>
            {timber.ok && order ? (
              <div className="flex flex-col gap-3">
                <p><strong className="font-semibold">{boundWords(timber.value, cuttingRule.timbers.filter((row) => row.use === use), "length", "lengths", money)}</strong>{besideWords(timber.value.layouts.map(({ stockId, count }) => ({ id: stockId, count })))}{` ${quantityText(timber.value.wasteMm / 1000, "m", units, 1)} of it is waste.`}</p>
                <TimberFigures plan={timber.value} stock={order.stock} pieces={orders.pieces} units={units} />
              </div>
            ) : timber.ok ? null : <FailureNotice failure={timber.failure} />}
          </Section>
        );
      })}
    </>
  );
}

/** What the plan takes of offcuts in the ledger, which are not bought. */
function besideWords(taken: readonly { readonly id: string; readonly count: number }[]): string {
  const count = taken.reduce((sum, each) => sum + (each.id.startsWith("o") ? each.count : 0), 0);
  return count === 0 ? "" : ` Beside them ${count === 1 ? "1 offcut" : `${count} offcuts`} from the rack.`;
}

const areaWords = (wasteMm2: number, keptMm2: number, units: Units): string =>
  `Waste ${quantityText(wasteMm2 / 1e6, "m2", units)}, kerfs in it; offcuts to keep ${quantityText(keptMm2 / 1e6, "m2", units)}.`;
