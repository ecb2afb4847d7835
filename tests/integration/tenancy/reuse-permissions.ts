import type { Role } from "#lib/access/roles.ts";
import type { ReuseLine } from "#lib/contracts/planning/reuse.ts";
import { getCuttingOrder, planCutting } from "#lib/server/cutting/plan-cutting.ts";
import { acceptReuse } from "#lib/server/cutting/reuse/accept-reuse.ts";
import { faceOf } from "#lib/server/cutting/reuse/panels-at-hand.ts";
import { getReuseOrder } from "#lib/server/cutting/reuse/plan-reuse.ts";
import { aPanel } from "#tests/support/builders/a-form-set.ts";
import { NOON } from "#tests/support/builders/a-stock.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import type { Row, Site } from "./permission-table.ts";

const all: readonly Role[] = ["owner", "leading hand", "office"];
const desk: readonly Role[] = ["owner", "office"];
type OfProject = (may: Row["may"], example?: (site: Site) => object) => Row;

/** One face of the first column that asks for one, spoken for by a panel larger than it. */
async function aLine({ company: { owner }, project: { projectId } }: Site): Promise<ReuseLine> {
  const { order } = valueOf(await getReuseOrder(owner, { projectId }));
  const { itemId } = await aPanel(owner, projectId, { widthMm: 650, heightMm: 3400, thicknessMm: 18 });
  return { ...faceOf(order.demands[0]?.id ?? ""), source: { kind: "panel", itemId } };
}

async function accepted(site: Site): Promise<string> {
  const { company: { owner }, project: { projectId } } = site;
  const line = await aLine(site);
  valueOf(await acceptReuse(owner, { projectId, whole: false, lines: [line] }));
  const { accepted: lines } = valueOf(await getReuseOrder(owner, { projectId }));
  return lines.find(({ columnId, face }) => columnId === line.columnId && face === line.face)?.id ?? "";
}

export const reusePermissions = (ofProject: OfProject): Readonly<Record<string, Row>> => ({
  "cutting.acceptReuse": ofProject(desk, async (site) => ({ whole: false, lines: [await aLine(site)] })),
  "cutting.withdrawReserved": ofProject(desk, async (site) => ({ reservationIds: [await accepted(site)], reason: "Wanted elsewhere" })),
  "cutting.cutAsPlanned": ofProject(all, async ({ company: { owner }, project: { projectId, levels } }) => {
    const asked = { projectId, levelId: levels["Ground"] ?? "" };
    const { groups: [group] } = valueOf(await getCuttingOrder(owner, asked));
    const sets = [{ size: group?.size ?? "", count: 1 }];
    const { layouts } = valueOf(valueOf(await planCutting(owner, { ...asked, sets })).sheets);
    return { levelId: asked.levelId, sets, happenedAt: NOON, sheetBatch: null, layouts };
  }),
  "gear.getReserved": ofProject(all),
  "gear.cutReserved": ofProject(all, async (site) => ({ reservationId: await accepted(site), happenedAt: NOON })),
});
