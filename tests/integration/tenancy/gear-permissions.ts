import type { Role } from "#lib/access/roles.ts";
import { anotherRack, aStock, gearOf, NOON } from "#tests/support/builders/a-stock.ts";
import { assignSet } from "#lib/server/gear/panels/form-sets.ts";
import { getGear } from "#lib/server/gear/pages/get-gear.ts";
import { recordPanelEvent } from "#lib/server/gear/panels/change-panels.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { A_PANEL, aFormSet, aPanel } from "#tests/support/builders/a-form-set.ts";
import { lockCount } from "#lib/server/gear/counts/stocktake.ts";
import { addCountPhoto } from "#lib/server/gear/counts/count-photos.ts";
import { A_PICTURE } from "./hire-permissions.ts";
import { anId, aTick } from "#tests/support/builders/a-site-event.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import type { Row, Site } from "./permission-table.ts";

const all: readonly Role[] = ["owner", "leading hand", "office"];
const desk: readonly Role[] = ["owner", "office"];
type OfProject = (may: Row["may"], example?: (site: Site) => object) => Row;

const stockOf = ({ company, project }: Site) => gearOf(company.owner, project.projectId);
const opened = ({ company, project }: Site) => aStock(company.owner, project.projectId);
const columnOf = ({ project }: Site): string => project.columnIds[0] ?? "";
const panelOf = async ({ company, project }: Site) => ({ itemId: (await aPanel(company.owner, project.projectId)).itemId });
const setOf = (site: Site) => aFormSet(site.company.owner, site.project.projectId, columnOf(site), site.word);
async function countOf(site: Site) {
  const stock = await opened(site);
  return { countId: anId(), placeId: stock.place("rack"), lines: [{ itemId: stock.item("Wedge"), counted: 37 }] };
}
async function lockedCount(site: Site): Promise<string> {
  const count = await countOf(site);
  valueOf(await lockCount(site.company.owner, { projectId: site.project.projectId, ...count }));
  return count.countId;
}
const rackFor = ({ company, project, word }: Site) => anotherRack(company.owner, project.projectId, word);

export const gearPermissions = (ofProject: OfProject): Readonly<Record<string, Row>> => ({
  "gear.prepareGear": ofProject(all),
  "gear.openStock": ofProject(all, async (site) => {
    const stock = await stockOf(site);
    return { happenedAt: NOON, placeId: stock.place("rack"), lines: [{ itemId: stock.item("Wedge"), quantity: 12 }] };
  }),
  "gear.saveItem": ofProject(desk, ({ word }) => ({ family: "prop", name: word, lossPrice: 4500 })),
  "gear.savePlace": ofProject(all, ({ word }) => ({ kind: "rack", name: word })),
  "gear.moveGear": ofProject(all, async (site) => {
    const stock = await opened(site);
    return { happenedAt: NOON, fromId: stock.place("rack"), toId: await rackFor(site), lines: [{ itemId: stock.item("Wedge"), quantity: 12 }] };
  }),
  "gear.cleanGear": ofProject(all, async (site) => {
    const stock = await stockOf(site);
    return { happenedAt: NOON, fromId: stock.place("cleaning bay"), toId: stock.place("rack") };
  }),
  "gear.getGear": ofProject(all),
  "gear.getCounts": ofProject(all),
  "gear.lockCount": ofProject(all, countOf),
  "gear.settleCount": ofProject(desk, async (site) => {
    const count = await countOf(site);
    valueOf(await lockCount(site.company.owner, { projectId: site.project.projectId, ...count }));
    return { countId: count.countId, itemId: count.lines[0]?.itemId ?? "", as: "accepted", reason: "Not found" };
  }),
  "gear.addCountPhoto": ofProject(all, async (site) => ({ countId: await lockedCount(site), takenAt: NOON, file: A_PICTURE })),
  "gear.getCountPhoto": ofProject(all, async (site) => {
    const { company: { owner }, project: { projectId } } = site;
    return { photoId: valueOf(await addCountPhoto(owner, { projectId, countId: await lockedCount(site), takenAt: NOON, file: A_PICTURE })).photoId };
  }),
  "gear.gather": ofProject(all, (site) => ({ columnIds: [columnOf(site)] })),
  "gear.gatherLines": ofProject(all, async (site) => {
    const stock = await opened(site);
    return { movementId: anId(), happenedAt: NOON, to: { what: "columns" }, lines: [{ itemId: stock.item("Wedge"), fromId: stock.place("rack"), columnId: columnOf(site), quantity: 3 }] };
  }),
  "gear.getItems": ofProject(all),
  "gear.getColumnGear": ofProject(all, (site) => ({ columnId: columnOf(site) })),
  "gear.getMovements": ofProject(all),
  "gear.getItem": ofProject(all, async (site) => ({ itemId: (await opened(site)).item("Wedge") })),
  "gear.getPanels": ofProject(all),
  "gear.getPanel": ofProject(all, panelOf),
  "gear.listLabels": ofProject(all, () => ({ kind: "column" })),
  "gear.findLabelled": ofProject(all, (site) => ({ kind: "column", id: columnOf(site) })),
  "gear.makePanels": ofProject(all, async (site) => ({ ...A_PANEL, placeId: (await stockOf(site)).place("rack") })),
  "gear.recordPanelEvent": ofProject(all, async (site) => ({ ...(await panelOf(site)), kind: "repaired", happenedAt: NOON, reason: "Patched", amount: 400 })),
  "gear.cutDownPanel": ofProject(all, async (site) => ({ ...(await panelOf(site)), happenedAt: NOON, pieces: [{ widthMm: 300, heightMm: 3000 }] })),
  "gear.withdrawPanelEvent": ofProject(all, async (site) => {
    const { company: { owner }, project: { projectId } } = site;
    const entry = await recordPanelEvent(owner, { ...(await panelOf(site)), projectId, kind: "turned", happenedAt: NOON, reason: null });
    return { eventId: valueOf(entry).id, reason: "Another panel" };
  }),
  "gear.saveFormSet": ofProject(all, async (site) => ({ name: site.word, panels: [{ face: "A", itemId: (await panelOf(site)).itemId }] })),
  "gear.assignSet": ofProject(all, async (site) => ({ setId: (await setOf(site)).setId, columnId: columnOf(site), happenedAt: NOON })),
  "gear.fittingColumns": ofProject(all, async (site) => ({ setId: (await setOf(site)).setId })),
  "gear.unassignSet": ofProject(all, async (site) => {
    const { company: { owner }, project: { projectId } } = site;
    const assigned = await assignSet(owner, { projectId, setId: (await setOf(site)).setId, columnId: columnOf(site), happenedAt: NOON });
    return { assignmentId: valueOf(assigned).id, reason: "Another set" };
  }),
  "gear.settleShortfalls": ofProject(desk, async (site) => {
    const { company: { owner }, project: { projectId } } = site;
    await opened(site);
    valueOf(await recordSiteEvents(owner, { projectId, saved: true, events: [aTick(columnOf(site), "clamped")] }));
    const { shortfalls } = valueOf(await getGear(owner, { projectId }));
    return { shortfallIds: shortfalls.map(({ id }) => id), as: "dismissed", reason: "Counted wrong" };
  }),
  "gear.reverseMovement": ofProject(all, async (site) => ({ movementId: (await opened(site)).movementId, reason: "Keyed twice" })),
});
