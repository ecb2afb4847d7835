import "server-only";
import type { Family } from "#lib/trade/gear/ledger.ts";
import type { CompanyScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";

export type ItemRow = {
  readonly id: string; readonly family: Family; readonly name: string; readonly clampKindId: string | null;
  readonly barsEach: number | null; readonly wedgesEach: number | null; readonly lossPrice: number | null; readonly currency: string | null;
};

/** What is counted, panels apart; an item of a clamp kind goes by the kind's name. */
export async function listCountedItems(scope: CompanyScope): Promise<ItemRow[]> {
  const rows = await scope.tx.$queryRaw<(Omit<ItemRow, "lossPrice"> & { lossPrice: bigint | null })[]>`
    select i.id::text, i.family, case i.family when 'clamp set' then coalesce(k.name, i.name) else i.name end as name, i.clamp_kind_id::text "clampKindId",
           i.bars_each "barsEach", i.wedges_each "wedgesEach", i.loss_price "lossPrice", i.currency
    from gear_item i left join clamp_kind k on k.company_id = i.company_id and k.id = i.clamp_kind_id
    where i.company_id = ${scope.companyId}::uuid and i.retired_at is null and i.family <> 'panel'
    order by array_position(array['clamp set', 'clamp bar', 'wedge', 'prop', 'sheet', 'timber', 'other'], i.family), 3`;
  return rows.map((row) => ({ ...row, lossPrice: row.lossPrice === null ? null : Number(row.lossPrice) }));
}

/** Four bars locked by four wedges: common practice, no source; the office changes it on the item. */
const USUAL_PARTS = { barsEach: 4, wedgesEach: 4 };

/** An item for every clamp kind in use, and one for loose wedges; what is there already stays as it is. */
export async function addClampItems(scope: CompanyScope): Promise<void> {
  const kinds = await scope.tx.clampKind.findMany({
    where: { companyId: scope.companyId, retiredAt: null, gearItems: { none: { family: "clamp set" } } }, select: { id: true, name: true },
  });
  const sets = kinds.map(({ id, name }) => ({ id: newId(), family: "clamp set", name, clampKindId: id, ...USUAL_PARTS }));
  const wedges = await scope.tx.gearItem.count({ where: { companyId: scope.companyId, family: "wedge", retiredAt: null } });
  const rows = wedges > 0 ? sets : [...sets, { id: newId(), family: "wedge", name: "Wedge", clampKindId: null, barsEach: null, wedgesEach: null }];
  if (rows.length === 0) return;
  await scope.tx.$executeRaw`
    insert into gear_item (company_id, id, family, name, clamp_kind_id, bars_each, wedges_each)
    select ${scope.companyId}::uuid, id, family, name, "clampKindId", "barsEach", "wedgesEach"
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as i(id uuid, family text, name text, "clampKindId" uuid, "barsEach" int, "wedgesEach" int)
    on conflict do nothing`;
}

type Written = Omit<ItemRow, "id">;
export async function writeItem(scope: CompanyScope, itemId: string | undefined, item: Written): Promise<string | null> {
  const { companyId, tx } = scope;
  if (itemId === undefined) return (await tx.gearItem.create({ data: { ...item, id: newId(), companyId }, select: { id: true } })).id;
  const { name, barsEach, wedgesEach, lossPrice, currency } = item;
  const changed = await tx.gearItem.updateMany({
    where: { companyId, id: itemId, family: item.family, retiredAt: null }, data: { name, barsEach, wedgesEach, lossPrice, currency },
  });
  return changed.count === 1 ? itemId : null;
}

export const hasClampKind = async (scope: CompanyScope, id: string): Promise<boolean> =>
  (await scope.tx.clampKind.count({ where: { companyId: scope.companyId, id } })) === 1;
