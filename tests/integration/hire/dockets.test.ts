import { beforeAll, describe, expect, it } from "vitest";
import { getDockets, getOnHire, getStatement } from "#lib/server/hire/get-hire.ts";
import { addPhoto, getPhoto } from "#lib/server/hire/photos.ts";
import { countDocket, recordDocket } from "#lib/server/hire/record-docket.ts";
import { reverseDocket } from "#lib/server/hire/reverse-docket.ts";
import { addTerms, reverseTerms } from "#lib/server/hire/suppliers.ts";
import { getTerms } from "#lib/server/hire/get-hire.ts";
import { createProject } from "#lib/server/projects/projects.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, PROJECT } from "#tests/support/builders/a-project.ts";
import { aCall, aDelivery, aReturn, aSupplier, paper, RULE, rateOf, type Hire } from "#tests/support/builders/a-hire.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Sedge Boxing")));

let count = 0;
async function aHire(rule = RULE): Promise<Hire> {
  count += 1;
  const { projectId } = await aProject(company.office, { name: `Yard ${count}` });
  return aSupplier(company.office, projectId, `Reed Hire ${count}`, rule);
}
const atPlaces = (hire: Hire) => ask<{ kind: string; quantity: number }>(database.url, `select b.place_kind kind, sum(b.quantity)::int quantity from gear_balance b
  join gear_place p on p.company_id = b.company_id and p.id = b.place_id join hire_supplier s on s.company_id = b.company_id and s.id = $1
  where (p.id = s.place_id or p.project_id = $2) and b.item_id = $3 and b.quantity <> 0 group by 1 order by 1`, [hire.supplierId, hire.projectId, hire.itemId]);
const charge = async (hire: Hire, from: string, to: string): Promise<number> =>
  valueOf(await getStatement(company.owner, { ...hire, from, to })).lines.filter(({ kind }) => kind === "hire").reduce((sum, { amount }) => sum + amount, 0);

describe("the chain of dockets", () => {
  it("moves the gear and charges its days", async () => {
    const hire = await aHire();
    const orderId = valueOf(await recordDocket(company.office, { ...paper(hire, "O1", "2026-11-01"), kind: "order", lines: [{ itemId: hire.itemId, quantity: 150 }] })).docketId;
    const counted = { ...paper(hire, "D1", "2026-11-02"), kind: "delivery" as const, bySupplier: true, orderId, lines: [{ itemId: hire.itemId, quantity: 120, short: 30, damaged: 2 }] };
    valueOf(await countDocket(company.leadingHand, counted));
    const callId = await aCall(company.office, hire, "OFF 7", "2026-11-17", 40);
    await aReturn(company.leadingHand, hire, "R1", "2026-11-20", 40, callId);
    expect(await atPlaces(hire)).toEqual([{ kind: "rack", quantity: 80 }, { kind: "supplier", quantity: -80 }]);
    // 40 from 2 to 20 November are 19 days, 80 to the 25th are 24: (760 + 1920) × 0.60.
    expect(await charge(hire, "2026-11-01", "2026-11-25")).toBe((40 * 19 + 80 * 24) * 60);
    const { dockets } = valueOf(await getDockets(company.leadingHand, { projectId: hire.projectId }));
    expect(dockets.map(({ number, open }) => [number, open.map(({ code, quantity }) => [code, quantity])])).toEqual([
      ["R1", [["no-yard-count", 40]]], ["OFF 7", []], ["D1", []], ["O1", [["to-deliver", 30]]],
    ]);
    const { suppliers } = valueOf(await getOnHire(company.leadingHand, { projectId: hire.projectId, on: "2026-11-25" }));
    const standing = suppliers.find(({ id }) => id === hire.supplierId);
    expect(standing?.rows).toMatchObject([{ quantity: 80, docket: "D1", since: "2026-11-02", days: 24, costToDate: 80 * 24 * 60, next: { on: "2026-11-26", amount: 80 * 60 } }]);
    // Two trips at 180.00 beside the hire.
    expect(standing?.costToDate).toBe((40 * 19 + 80 * 24) * 60 + 2 * 18_000);
    expect(standing?.restOfMonth).toBe(80 * 5 * 60);
  });

  it("refuses more than is on hire, by return, by loss and by call, and writes nothing of it", async () => {
    const hire = await aHire();
    await aDelivery(company.office, hire, "D1", "2026-11-02", 40);
    const lines = [{ itemId: hire.itemId, quantity: 41 }];
    const leaving = { ...paper(hire, "R1", "2026-11-10"), lines };
    expect(refusal(await countDocket(company.leadingHand, { ...leaving, kind: "return", bySupplier: true }))).toBe("more-than-on-hire");
    expect(refusal(await recordDocket(company.office, { ...leaving, kind: "missing" }))).toBe("more-than-on-hire");
    expect(refusal(await recordDocket(company.office, { ...leaving, kind: "off-hire" }))).toBe("more-than-callable");
    expect(refusal(await countDocket(company.leadingHand, { ...paper(hire, "R0", "2026-11-01"), kind: "return", bySupplier: true, lines: [{ itemId: hire.itemId, quantity: 1 }] }))).toBe("more-than-on-hire");
    await aCall(company.office, hire, "OFF 1", "2026-11-10", 30);
    expect(refusal(await recordDocket(company.office, { ...paper(hire, "OFF 2", "2026-11-11"), kind: "off-hire", lines: [{ itemId: hire.itemId, quantity: 11 }] }))).toBe("more-than-callable");
    expect(await atPlaces(hire)).toEqual([{ kind: "rack", quantity: 40 }, { kind: "supplier", quantity: -40 }]);
  });

  it("lets one of two have the last pieces when both send them back at once", async () => {
    const hire = await aHire();
    await aDelivery(company.office, hire, "D1", "2026-11-02", 40);
    const back = (number: string) => countDocket(company.leadingHand, { ...paper(hire, number, "2026-11-10"), kind: "return", bySupplier: true, lines: [{ itemId: hire.itemId, quantity: 40 }] });
    expect((await Promise.all([back("R1"), back("R2")])).map(refusal).sort()).toEqual(["more-than-on-hire", null].sort());
  });

  it("refuses a docket before its order, ahead of today, or entered already", async () => {
    const hire = await aHire();
    const orderId = valueOf(await recordDocket(company.office, { ...paper(hire, "O1", "2026-11-05"), kind: "order", lines: [{ itemId: hire.itemId, quantity: 10 }] })).docketId;
    const delivery = (number: string, on: string) => countDocket(company.office, { ...paper(hire, number, on), kind: "delivery", bySupplier: false, orderId, lines: [{ itemId: hire.itemId, quantity: 10 }] });
    expect(refusal(await delivery("D1", "2026-11-04"))).toBe("docket-before-answered");
    expect(refusal(await delivery("D1", "2090-01-01"))).toBe("docket-ahead");
    valueOf(await delivery("D1", "2026-11-05"));
    expect(refusal(await delivery("d1", "2026-11-06"))).toBe("docket-number-known");
  });

  it("takes a mistake back with what it moved, unless something rests on it", async () => {
    const hire = await aHire();
    const deliveryId = await aDelivery(company.office, hire, "D1", "2026-11-02", 40);
    const returnId = await aReturn(company.office, hire, "R1", "2026-11-10", 15);
    const reverse = (subjectId: string) => reverseDocket(company.office, { projectId: hire.projectId, subjectId, reason: "Keyed for the wrong site" });
    expect(refusal(await reverse(deliveryId))).toBe("docket-needed");
    valueOf(await reverse(returnId));
    expect(refusal(await reverse(returnId))).toBe("reversed-already");
    expect(await charge(hire, "2026-11-01", "2026-11-25")).toBe(40 * 24 * 60);
    valueOf(await reverse(deliveryId));
    expect(await atPlaces(hire)).toEqual([]);
    await aDelivery(company.office, hire, "D1", "2026-11-03", 40);
  });

  it("charges what is missing and settles it", async () => {
    const hire = await aHire({ ...RULE, missingShare: 6667 });
    await aDelivery(company.office, hire, "D1", "2026-11-02", 30);
    const reportId = valueOf(await recordDocket(company.office, { ...paper(hire, "M1", "2026-11-11"), kind: "missing", lines: [{ itemId: hire.itemId, quantity: 3 }] })).docketId;
    const settle = () => recordDocket(company.office, { ...paper(hire, "S1", "2026-11-19"), kind: "settlement", answersId: reportId });
    valueOf(await settle());
    expect(refusal(await recordDocket(company.office, { ...paper(hire, "S2", "2026-11-19"), kind: "settlement", answersId: reportId }))).toBe("settled-already");
    expect(await atPlaces(hire)).toEqual([{ kind: "rack", quantity: 27 }, { kind: "supplier", quantity: -27 }]);
    const { lines } = valueOf(await getStatement(company.owner, { ...hire, from: "2026-11-12", to: "2026-11-30" }));
    // 3 × 8 days × 0.60 × 0.6667 = 9.60; 27 × 19 days × 0.60.
    expect(lines.map(({ kind, amount }) => [kind, amount])).toEqual([["hire", 27 * 19 * 60], ["missing", 960]]);
  });
});

describe("terms", () => {
  it("do not overlap, do not come in another currency, and are reversed from the latest back", async () => {
    const hire = await aHire();
    const add = (validFrom: string, currency = "AUD") => addTerms(company.office, { ...hire, validFrom, currency, rule: RULE, rates: [{ ...rateOf(hire.itemId), perDay: 7000 }] });
    expect(refusal(await add("2026-01-01"))).toBe("terms-overlap");
    expect(refusal(await add("2025-06-01"))).toBe("terms-overlap");
    expect(refusal(await add("2026-11-11", "EUR"))).toBe("hire-foreign-currency");
    await aDelivery(company.office, hire, "D1", "2026-11-02", 10);
    const { termsId } = valueOf(await add("2026-11-11"));
    expect(await charge(hire, "2026-11-01", "2026-11-15")).toBe(10 * 9 * 60 + 10 * 5 * 70);
    const first = valueOf(await getTerms(company.owner, { projectId: hire.projectId })).terms.filter(({ supplierId }) => supplierId === hire.supplierId).at(-1);
    const reverse = (subjectId: string) => reverseTerms(company.office, { projectId: hire.projectId, subjectId, reason: "Letter withdrawn" });
    expect(refusal(await reverse(first?.id ?? ""))).toBe("terms-not-latest");
    valueOf(await reverse(termsId));
    expect(await charge(hire, "2026-11-01", "2026-11-15")).toBe(10 * 14 * 60);
  });

  it("in another currency than a project's are not hired by there", async () => {
    const hire = await aHire();
    const { id: projectId } = valueOf(await createProject(company.office, { ...PROJECT, name: "Dollar site", currency: "USD" }));
    const given = { ...paper({ ...hire, projectId }, "D1", "2026-11-02"), kind: "delivery" as const, bySupplier: true, lines: [{ itemId: hire.itemId, quantity: 1 }] };
    expect(refusal(await countDocket(company.office, given))).toBe("hire-foreign-currency");
  });

  it("without a stand-down know none", async () => {
    const hire = await aHire({ ...RULE, standDownShare: null });
    const standDown = { ...paper(hire, "SD1", "2026-11-02"), kind: "stand-down" as const, until: "2026-11-08", share: 5000, itemId: null };
    expect(refusal(await recordDocket(company.office, standDown))).toBe("no-stand-down");
  });
});

describe("photos", () => {
  it("are kept as they are, and anything but a picture is refused", async () => {
    const hire = await aHire();
    const { projectId } = hire;
    const docketId = await aDelivery(company.office, hire, "D1", "2026-11-02", 10);
    const jpeg = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]);
    const { photoId } = valueOf(await addPhoto(company.leadingHand, { projectId, docketId, takenAt: "2026-11-02T01:00:00Z", file: jpeg }));
    const photo = valueOf(await getPhoto(company.office, { projectId, photoId }));
    expect([photo.contentType, [...photo.bytes]]).toEqual(["image/jpeg", [...jpeg]]);
    const page = Uint8Array.from(Buffer.from("<script>"));
    expect(refusal(await addPhoto(company.leadingHand, { projectId, docketId, takenAt: "2026-11-02T01:00:00Z", file: page }))).toBe("invalid");
    expect(refusal(await addPhoto(company.leadingHand, { projectId, docketId, takenAt: "2026-11-02T01:00:00Z", file: new Uint8Array(4 * 1024 * 1024 + 1).fill(0xff) }))).toBe("invalid");
  });
});
