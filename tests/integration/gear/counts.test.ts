import { beforeAll, expect, it } from "vitest";
import { addCountPhoto, getCountPhoto } from "#lib/server/gear/counts/count-photos.ts";
import { A_PICTURE } from "#tests/integration/tenancy/hire-permissions.ts";
import { getCounts, lockCount, settleCount } from "#lib/server/gear/counts/stocktake.ts";
import { recordPanelEvent } from "#lib/server/gear/panels/change-panels.ts";
import { getPanel } from "#lib/server/gear/pages/get-panels.ts";
import { gather } from "#lib/server/gear/pages/gather.ts";
import { getGear } from "#lib/server/gear/pages/get-gear.ts";
import { saveItem } from "#lib/server/gear/stock.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aPanel } from "#tests/support/builders/a-form-set.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { aStock } from "#tests/support/builders/a-stock.ts";
import { anId } from "#tests/support/builders/a-site-event.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Comfrey Boxing")));

it("is locked against the ledger, priced, and settled once by the office", async () => {
  const { projectId } = await aProject(company.owner);
  const stock = await aStock(company.owner, projectId, { Wedge: 40 });
  const [itemId, rack] = [stock.item("Wedge"), stock.place("rack")];
  valueOf(await saveItem(company.office, { projectId, itemId, family: "wedge", name: "Wedge", lossPrice: 1250 }));
  const count = { projectId, countId: anId(), placeId: rack, lines: [{ itemId, counted: 37 }] };
  expect(refusal(await lockCount(company.leadingHand, { ...count, lines: [{ itemId, counted: -1 }] }))).toBe("invalid");
  expect(valueOf(await lockCount(company.leadingHand, count)).differences).toBe(1);
  // The answer was lost and it is sent again: answered again. Other figures or another person under its id: refused.
  expect(valueOf(await lockCount(company.leadingHand, count))).toEqual({ countId: count.countId, differences: 1 });
  expect(refusal(await lockCount(company.leadingHand, { ...count, lines: [{ itemId, counted: 38 }] }))).toBe("count-locked-already");
  expect(refusal(await lockCount(company.office, count))).toBe("count-locked-already");
  expect(valueOf(await getCounts(company.office, { projectId })).counts).toHaveLength(1);
  // 3 wedges at 12.50 are 37.50.
  expect(valueOf(await getCounts(company.office, { projectId })).counts[0]).toMatchObject({ by: "leading hand", loss: 3750, lines: [{ counted: 37, expected: 40 }] });
  const settle = { projectId, countId: count.countId, itemId, as: "accepted" as const, reason: "Buried in rubbish" };
  expect(refusal(await settleCount(company.leadingHand, settle))).toBe("not-allowed");
  valueOf(await settleCount(company.office, settle));
  expect(refusal(await settleCount(company.office, settle))).toBe("conflict");
  const at = async (kind: string) => valueOf(await getGear(company.office, { projectId })).standings.find((standing) => standing.itemId === itemId && standing.kind === kind)?.quantity ?? 0;
  expect([await at("rack"), await at("lost")]).toEqual([37, 3]);
  // Five more turn up: the three that were lost, and two that were never counted.
  const again = { ...count, countId: anId(), lines: [{ itemId, counted: 42 }] };
  valueOf(await lockCount(company.leadingHand, again));
  valueOf(await settleCount(company.office, { ...settle, countId: again.countId, reason: "Under the stair" }));
  expect([await at("rack"), await at("lost"), await at("bought")]).toEqual([42, 0, -42]);
});

it("takes photos of what was counted, pictures only, and shows them to nobody else", async () => {
  const { projectId } = await aProject(company.owner, { name: "Photos" });
  const stock = await aStock(company.owner, projectId, { Wedge: 4 });
  const countId = anId();
  valueOf(await lockCount(company.leadingHand, { projectId, countId, placeId: stock.place("rack"), lines: [{ itemId: stock.item("Wedge"), counted: 4 }] }));
  const add = (file: Uint8Array<ArrayBuffer>, id = countId) => addCountPhoto(company.leadingHand, { projectId, countId: id, takenAt: "2031-05-05T02:00:00Z", file });
  expect(refusal(await add(new TextEncoder().encode("<svg onload=alert(1)>")))).toBe("invalid");
  expect(refusal(await add(new Uint8Array()))).toBe("invalid");
  expect(refusal(await add(A_PICTURE, anId()))).toBe("not-found");
  const { photoId } = valueOf(await add(A_PICTURE));
  expect(valueOf(await getCountPhoto(company.office, { projectId, photoId }))).toMatchObject({ contentType: "image/png" });
  expect(valueOf(await getCounts(company.office, { projectId })).counts[0]?.photos).toEqual([{ id: photoId, takenAt: "2031-05-05T02:00:00.000Z" }]);
  const stranger = await aCompany("Mallow Boxing");
  expect(refusal(await getCountPhoto(stranger.owner, { projectId, photoId }))).toBe("not-found");
  for (let more = 1; more < 12; more += 1) valueOf(await add(A_PICTURE));
  expect(refusal(await add(A_PICTURE))).toBe("count-photos-enough");
});

it("counts panels by label: one not found is lost at what it cost, one that lies elsewhere comes from there", async () => {
  const { projectId } = await aProject(company.owner, { name: "Labels" });
  const stock = await aStock(company.owner, projectId, { Wedge: 1 });
  const [rack, bay] = [stock.place("rack"), stock.place("cleaning bay")];
  const [gone, stays, strays] = [await aPanel(company.owner, projectId), await aPanel(company.owner, projectId), await aPanel(company.owner, projectId)];
  const where = async (itemId: string) => valueOf(await getPanel(company.office, { projectId, itemId })).panel.place;
  const lines = [{ itemId: gone.itemId, counted: 0 }, { itemId: stays.itemId, counted: 1 }];
  const count = { projectId, countId: anId(), placeId: rack, lines };
  expect(refusal(await lockCount(company.leadingHand, { ...count, lines: [{ itemId: stays.itemId, counted: 2 }] }))).toBe("panel-counted-twice");
  expect(valueOf(await lockCount(company.leadingHand, count)).differences).toBe(1);
  // 31.50 of sheet, 18.00 of making, 2.50 of fillet and nails: 52.00.
  expect(valueOf(await getCounts(company.office, { projectId })).counts[0]).toMatchObject({ loss: 5200, withoutPrice: 0 });
  const settle = { projectId, countId: count.countId, itemId: gone.itemId, as: "accepted" as const, reason: "Gone with the rubbish" };
  expect(refusal(await settleCount(company.leadingHand, settle))).toBe("not-allowed");
  valueOf(await settleCount(company.office, settle));
  expect([await where(gone.itemId), await where(stays.itemId)]).toEqual(["Lost", "Rack"]);

  const inBay = { projectId, countId: anId(), placeId: bay, lines: [{ itemId: strays.itemId, counted: 1 }, { itemId: gone.itemId, counted: 1 }] };
  expect(valueOf(await lockCount(company.leadingHand, inBay)).differences).toBe(2);
  for (const itemId of [strays.itemId, gone.itemId]) valueOf(await settleCount(company.office, { ...settle, countId: inBay.countId, itemId, reason: "Lay in the bay" }));
  expect([await where(strays.itemId), await where(gone.itemId)]).toEqual(["Cleaning bay", "Cleaning bay"]);

  valueOf(await recordPanelEvent(company.office, { projectId, itemId: strays.itemId, kind: "scrapped", happenedAt: new Date().toISOString(), reason: "Delaminated", amount: 0 }));
  const scrapped = { projectId, countId: anId(), placeId: rack, lines: [{ itemId: strays.itemId, counted: 1 }] };
  valueOf(await lockCount(company.leadingHand, scrapped));
  expect(refusal(await settleCount(company.office, { ...settle, countId: scrapped.countId, itemId: strays.itemId }))).toBe("panel-ended");
});

it("says for chosen columns what to take and what is short", async () => {
  const { projectId, columnIds } = await aProject(company.owner, { name: "Wide" });
  const stock = await aStock(company.owner, projectId, { Wedge: 40 });
  const { chosen, list } = valueOf(await gather(company.leadingHand, { projectId, columnIds: columnIds.slice(0, 2) }));
  expect(chosen).toHaveLength(2);
  expect(list.take).toMatchObject([{ itemId: stock.item("Wedge"), placeId: stock.place("rack"), quantity: 40 }]);
  // Four faces a column, two columns of one size: two pairs of two panels each.
  expect(list.cutPanels.map(({ count }) => count)).toEqual([4, 4]);
  expect(list.short.length).toBeGreaterThan(0);
  expect(valueOf(await gather(company.leadingHand, { projectId, on: "2031-03-03" })).chosen).toEqual([]);
});
