import type { Role } from "#lib/access/roles.ts";
import { anotherRack, aStock, gearOf, NOON } from "#tests/support/builders/a-stock.ts";
import type { Row, Site } from "./permission-table.ts";

const all: readonly Role[] = ["owner", "leading hand", "office"];
const desk: readonly Role[] = ["owner", "office"];
type OfProject = (may: Row["may"], example?: (site: Site) => object) => Row;

const stockOf = ({ company, project }: Site) => gearOf(company.owner, project.projectId);
const opened = ({ company, project }: Site) => aStock(company.owner, project.projectId);
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
  "gear.reverseMovement": ofProject(all, async (site) => ({ movementId: (await opened(site)).movementId, reason: "Keyed twice" })),
});
