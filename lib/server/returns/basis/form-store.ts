import "server-only";
import type { PlannedAndRecorded } from "#lib/trade/planning/pours/column-days.ts";
import type { ProjectScope } from "../../gate/scope.ts";

/** Every column still in the schedule, with the sizes its form is designed from. */
export const listForms = (scope: ProjectScope) =>
  scope.tx.column.findMany({
    where: { companyId: scope.companyId, projectId: scope.projectId, removedAt: null },
    include: { mark: true, fromLevel: true, toLevel: true }, orderBy: [{ gridRef: "asc" }, { id: "asc" }],
  });
export type FormRow = Awaited<ReturnType<typeof listForms>>[number];

export const listDays = (scope: ProjectScope) =>
  scope.tx.$queryRaw<(PlannedAndRecorded & { id: string })[]>`
    select c.id::text, p.stood_on::text "plannedStoodOn", p.poured_on::text "plannedPouredOn",
           c.state #>> '{reached,stood,at}' "stoodAt", c.state #>> '{reached,poured,at}' "pouredAt", c.state #>> '{reached,stripped,at}' "strippedAt"
    from column_lift c
    left join planned_days p on p.company_id = c.company_id and p.project_id = c.project_id and p.column_id = c.id
    where c.company_id = ${scope.companyId}::uuid and c.project_id = ${scope.projectId}::uuid and c.removed_at is null`;

/** Pieces of each item on this project, in whatever place: the rack, the cleaning bay, the truck, columns. */
export const listOnProject = (scope: ProjectScope) =>
  scope.tx.$queryRaw<{ itemId: string; quantity: number }[]>`
    select b.item_id::text "itemId", sum(b.quantity)::int quantity
    from gear_balance b join gear_place p on p.company_id = b.company_id and p.id = b.place_id
    where b.company_id = ${scope.companyId}::uuid and p.project_id = ${scope.projectId}::uuid group by 1`;
