import { addDays, dayIn, instantOf, type Day } from "#lib/kernel/days.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { prepareGear, saveItem } from "#lib/server/gear/stock.ts";
import { countDocket, recordDocket } from "#lib/server/hire/record-docket.ts";
import { addTerms, saveSupplier } from "#lib/server/hire/suppliers.ts";
import { changeColumnGear, getColumnGear } from "#lib/server/returns/column-gear.ts";
import { must } from "../must.ts";
import { importDemoInvoice } from "./demo-invoice.ts";
import { BY_DAY, BY_WEEK, PROP, type DemoSupplier } from "./suppliers.ts";

type Site = { readonly projectId: string; readonly timeZone: string; readonly currency: string };
type Papers = { readonly office: Caller; readonly gate: Caller; readonly supplierId: string; readonly site: Site; readonly dayAgo: (days: number) => Day };

/** Two suppliers with what was ordered, came, was called off and went back, and one's invoice with two mistakes in it. */
export async function hireOut(office: Caller, gate: Caller, site: Site): Promise<void> {
  const today = dayIn(new Date().toISOString(), site.timeZone);
  const dayAgo = (days: number): Day => addDays(today, -days);
  must("add a prop", await saveItem(office, { projectId: site.projectId, family: "prop", name: PROP, lossPrice: 7900 }));
  const { items } = must("list the gear", await prepareGear(office, { projectId: site.projectId }));
  const clamp = items.find(({ family }) => family === "clamp set")?.name ?? "";
  const itemId = (name: string): string => items.find((item) => item.name === name)?.id ?? "";
  const papers = async (supplier: DemoSupplier): Promise<Papers> =>
    ({ office, gate, site, dayAgo, supplierId: await addSupplier(office, site, supplier, itemId, dayAgo) });
  const week = await papers(BY_WEEK(clamp));
  await clampsByTheWeek(week, itemId(clamp), itemId("Wedge"));
  await propsByTheDay(await papers(BY_DAY), itemId(PROP));
  await propsOnColumns(office, site, itemId(PROP));
  await importDemoInvoice(office, { ...week, from: dayAgo(30), to: dayAgo(1), returnedItemId: itemId(clamp), dearerItemId: itemId("Wedge") });
}

/** Four props a column up to a side of 600 mm, six over it: made up, as the formwork's design would say. */
async function propsOnColumns(office: Caller, { projectId }: Site, propId: string): Promise<void> {
  const { project: { version } } = must("read the gear of the columns", await getColumnGear(office, { projectId }));
  const row = { itemId: propId, levelId: null, sideOverMm: null, sideUpToMm: null, heightOverMm: null, heightUpToMm: null };
  must("enter the gear of the columns", await changeColumnGear(office, { projectId, version, columnGear: { rows: [{ ...row, count: 4, sideUpToMm: 600 }, { ...row, count: 6, sideOverMm: 600 }] } }));
}

async function addSupplier(office: Caller, site: Site, supplier: DemoSupplier, itemId: (name: string) => string, dayAgo: (days: number) => Day): Promise<string> {
  const { projectId, currency } = site;
  const { name, contact, phone, email, terms } = supplier;
  const { supplierId } = must("add a supplier", await saveSupplier(office, { projectId, name, contact, phone, email }));
  for (const { validDaysAgo, rule, rates } of terms) {
    const priced = rates.map(({ item, ...rate }) => ({ ...rate, itemId: itemId(item) }));
    must("enter terms", await addTerms(office, { projectId, supplierId, validFrom: dayAgo(validDaysAgo), currency, rule, rates: priced }));
  }
  return supplierId;
}

type Pieces = { readonly itemId: string; readonly quantity: number; readonly short?: number; readonly damaged?: number; readonly dirty?: number };
function writer({ office, gate, supplierId, site, dayAgo }: Papers) {
  const head = (number: string, daysAgo: number, name: string) => {
    const on = dayAgo(daysAgo);
    return { projectId: site.projectId, supplierId, number, on, happenedAt: instantOf(on, "07:10", site.timeZone), name };
  };
  const plain = (lines: readonly Pieces[]) => lines.map(({ itemId, quantity }) => ({ itemId, quantity }));
  return {
    order: async (number: string, daysAgo: number, lines: Pieces[]) => must("order", await recordDocket(office, { ...head(number, daysAgo, "Order desk"), kind: "order", lines: plain(lines) })).docketId,
    delivery: async (number: string, daysAgo: number, orderId: string, lines: Pieces[]) =>
      must("count a delivery", await countDocket(gate, { ...head(number, daysAgo, "Driver Okoro"), kind: "delivery", orderId, bySupplier: true, lines })).docketId,
    call: async (number: string, daysAgo: number, lines: Pieces[]) => must("call off", await recordDocket(office, { ...head(number, daysAgo, "Hire desk"), kind: "off-hire", lines: plain(lines) })).docketId,
    back: async (number: string, daysAgo: number, callId: string | null, lines: Pieces[]) =>
      must("count a return", await countDocket(gate, { ...head(number, daysAgo, "Driver Okoro"), kind: "return", callId, bySupplier: true, lines })).docketId,
    yard: async (number: string, daysAgo: number, answersId: string, lines: Pieces[]) => must("enter a yard count", await recordDocket(office, { ...head(number, daysAgo, "Yard"), kind: "yard-count", answersId, lines })).docketId,
  };
}

async function clampsByTheWeek(papers: Papers, clamp: string, wedge: string): Promise<void> {
  const write = writer(papers);
  const orderId = await write.order("Q-2207", 32, [{ itemId: clamp, quantity: 200 }, { itemId: wedge, quantity: 240 }]);
  await write.delivery("MG-4410", 30, orderId, [{ itemId: clamp, quantity: 120 }, { itemId: wedge, quantity: 240, damaged: 6 }]);
  await write.delivery("MG-4436", 24, orderId, [{ itemId: clamp, quantity: 40, short: 10 }]);
  const callId = await write.call("OFF-318", 12, [{ itemId: clamp, quantity: 40 }]);
  const returnId = await write.back("MG-R771", 9, callId, [{ itemId: clamp, quantity: 40, damaged: 2, dirty: 5 }]);
  await write.yard("MG-Y771", 7, returnId, [{ itemId: clamp, quantity: 38, damaged: 4 }]);
  await write.call("OFF-326", 1, [{ itemId: clamp, quantity: 30 }]);
}

async function propsByTheDay(papers: Papers, prop: string): Promise<void> {
  const write = writer(papers);
  const orderId = await write.order("Q-2215", 27, [{ itemId: prop, quantity: 60 }]);
  await write.delivery("KW1093", 26, orderId, [{ itemId: prop, quantity: 60 }]);
  await write.back("KW1131", 5, null, [{ itemId: prop, quantity: 20 }]);
}
