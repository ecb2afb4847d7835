import { differenceOf, lossOf } from "#lib/trade/gear/stocktake.ts";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { moneyText } from "../_parts/money.ts";
import { CountPhotos } from "./count-photos.tsx";
import { SettleLine } from "./settle-line.tsx";

type Line = { readonly itemId: string; readonly item: string; readonly counted: number; readonly expected: number; readonly lossPrice: number | null; readonly currency: string | null; readonly settledAs: string | null; readonly reason: string | null };
type Count = { readonly id: string; readonly lockedAt: string; readonly by: string; readonly place: string; readonly lines: readonly Line[]; readonly loss: number; readonly withoutPrice: number; readonly photos: readonly { readonly id: string; readonly takenAt: string }[] };
type Props = { readonly projectId: string; readonly count: Count; readonly timeZone: string; readonly canSettle: boolean; readonly canCount: boolean };

const signed = (difference: number): string => (difference > 0 ? `+${difference}` : difference < 0 ? `−${-difference}` : "0");
const lossText = (line: Line): string => {
  const loss = lossOf(line);
  return loss === null ? "no price" : loss === 0 || line.currency === null ? "–" : moneyText(loss, line.currency);
};
const standing = (line: Line): string => (differenceOf(line) === 0 ? "agrees" : line.settledAs === null ? "to settle" : `${line.settledAs}: ${line.reason ?? ""}`);

export function LockedCount({ projectId, count, timeZone, canSettle, canCount }: Props) {
  const currency = count.lines.find((line) => line.currency !== null)?.currency;
  return (
    <div className="keep">
      <p className="mb-1 flex flex-wrap gap-x-4">
        <strong className="font-semibold">{count.place}</strong>
        <span>locked by {count.by}, <TimeText at={count.lockedAt} timeZone={timeZone} /></span>
        {count.loss > 0 && currency ? <span>missing: {moneyText(count.loss, currency)}{count.withoutPrice > 0 ? `, ${count.withoutPrice} without a price` : ""}</span> : null}
      </p>
      <DataTable
        caption={`Count of ${count.place}`} isCaptionHidden rows={count.lines} rowKey={({ itemId }) => itemId}
        columns={[
          { key: "item", head: "Item", isRowHead: true, cell: ({ item }) => item },
          { key: "counted", head: "Counted", isFigure: true, cell: ({ counted }) => counted },
          { key: "expected", head: "Ledger", isFigure: true, cell: ({ expected }) => expected },
          { key: "difference", head: "Difference", isFigure: true, cell: (line) => signed(differenceOf(line)) },
          { key: "loss", head: "Price", isFigure: true, cell: lossText },
          { key: "standing", head: "Standing", cell: (line) => (differenceOf(line) !== 0 && line.settledAs === null && canSettle ? <SettleLine projectId={projectId} countId={count.id} itemId={line.itemId} what={`${line.item}: ${signed(differenceOf(line))}`} /> : standing(line)) },
        ]}
      />
      <CountPhotos projectId={projectId} countId={count.id} place={count.place} timeZone={timeZone} canAdd={canCount} photos={count.photos} />
    </div>
  );
}
