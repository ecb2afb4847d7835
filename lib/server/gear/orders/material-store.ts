import "server-only";
import type { BuyingRule, Material } from "#lib/contracts/planning/orders.ts";
import type { CompanyScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";

export type MaterialItem = Material & { readonly itemId: string; readonly name: string };

/** Every size of sheet and timber the company has ever bought or taken in. */
export const listMaterials = (scope: CompanyScope) =>
  scope.tx.$queryRaw<MaterialItem[]>`
    select m.item_id::text "itemId", m.use, m.material, m.length_mm "lengthMm", m.width_mm "widthMm", i.name
    from gear_material m join gear_item i on i.company_id = m.company_id and i.id = m.item_id
    where m.company_id = ${scope.companyId}::uuid order by array_position(array['sheet', 'backing', 'fillet'], m.use), m.material, m.length_mm desc, m.width_mm desc`;

type Named = Material & { readonly name: string };
/** Adds what is not known yet; a size that two add at once is added by one of them. */
export async function addMaterials(scope: CompanyScope, materials: readonly Named[]): Promise<void> {
  const rows = materials.map((each) => ({ ...each, id: newId(), family: each.use === "sheet" ? "sheet" : "timber" }));
  await scope.tx.$executeRaw`
    with given as (
      select * from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as m(id uuid, family text, name text, use text, material text, "lengthMm" int, "widthMm" int)
    ), added as (
      insert into gear_item (company_id, id, family, name) select ${scope.companyId}::uuid, id, family, name from given on conflict do nothing returning id
    )
    insert into gear_material (company_id, item_id, use, material, length_mm, width_mm)
    select ${scope.companyId}::uuid, given.id, use, material, "lengthMm", "widthMm" from given join added using (id)`;
}

/** Until the company says otherwise: a week to come, two days to make, a tenth over. Common practice, no source. */
const USUAL: BuyingRule = { leadDays: 5, makingDays: 2, waste: 1000 };

export async function readBuyingRule(scope: CompanyScope): Promise<BuyingRule & { readonly isOwn: boolean }> {
  const row = await scope.tx.buyingRule.findUnique({ where: { companyId: scope.companyId }, select: { leadDays: true, makingDays: true, waste: true } });
  return row ? { ...row, isOwn: true } : { ...USUAL, isOwn: false };
}

export async function writeBuyingRule(scope: CompanyScope, rule: BuyingRule): Promise<void> {
  const row = { ...rule, changedAt: scope.now, changedById: scope.member.id };
  await scope.tx.buyingRule.upsert({ where: { companyId: scope.companyId }, create: { ...row, companyId: scope.companyId }, update: row, select: { companyId: true } });
}
