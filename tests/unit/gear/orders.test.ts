import { describe, expect, it } from "vitest";
import { isLate, judgeReceipt, orderState, stillToCome } from "#lib/trade/gear/orders.ts";

const line = (quantity: number, taken: number) => ({ itemId: "ply", quantity, taken });

describe("where an order stands", () => {
  it("is open, part or complete by what was taken; one line over does not complete another", () => {
    expect(orderState([line(40, 0), line(20, 0)], null)).toBe("open");
    expect(orderState([line(40, 1), line(20, 0)], null)).toBe("part");
    expect(orderState([line(40, 60), line(20, 0)], null)).toBe("part");
    expect(orderState([line(40, 40), line(20, 23)], null)).toBe("complete");
  });

  it("ends by being cancelled, or closed with the rest not to come", () => {
    expect(orderState([line(40, 0)], "cancelled")).toBe("cancelled");
    expect(orderState([line(40, 30)], "closed")).toBe("closed");
    expect(orderState([line(40, 40)], "closed")).toBe("complete");
    expect(stillToCome(line(40, 30), "part")).toBe(10);
    expect(stillToCome(line(40, 30), "closed")).toBe(0);
    expect(stillToCome(line(40, 43), "part")).toBe(0);
  });

  it("is late from the day after the one it was wanted", () => {
    expect(isLate("2031-03-05", "part", "2031-03-05")).toBe(false);
    expect(isLate("2031-03-05", "part", "2031-03-06")).toBe(true);
    expect(isLate("2031-03-05", "complete", "2031-03-06")).toBe(false);
    expect(isLate("2031-03-05", "cancelled", "2031-03-06")).toBe(false);
  });
});

describe("a receipt", () => {
  const order = { number: "PO-7", orderedOn: "2031-03-03", ending: null, dockets: ["D1"], lines: [line(40, 30)] };
  const came = { number: "D2", on: "2031-03-05", reason: null, lines: [{ itemId: "ply", taken: 10, short: 0, refused: 0 }] };
  const judged = (changes: Partial<typeof order> | null, receipt: object = {}) => judgeReceipt({ ...order, ...changes }, { ...came, ...receipt }, "2031-03-05", () => "Ply");
  const counted = (taken: number, refused = 0) => ({ lines: [{ itemId: "ply", taken, short: 0, refused }] });

  it("takes what is still to come", () => expect(judged(null)).toBeNull());

  it("takes more only with a reason, and says by how much: 30 + 13 - 40 = 3", () => {
    expect(judged(null, counted(13))).toEqual({ code: "receipt-over", values: { item: "Ply", ordered: 40, before: 30, taken: 13, over: 3 } });
    expect(judged(null, { ...counted(13), reason: "Pack of 13, kept for the cores" })).toBeNull();
  });

  it("sends damaged ones back only with a reason; short ones need none", () => {
    expect(judged(null, counted(8, 2))?.code).toBe("receipt-refused-why");
    expect(judged(null, { ...counted(8, 2), reason: "Corners broken" })).toBeNull();
    expect(judged(null, { lines: [{ itemId: "ply", taken: 8, short: 2, refused: 0 }] })).toBeNull();
  });

  it("is neither before its order nor still to come, and not entered twice", () => {
    expect(judged(null, { on: "2031-03-02" })?.code).toBe("receipt-before-order");
    expect(judged(null, { on: "2031-03-06" })?.code).toBe("receipt-to-come");
    expect(judged(null, { number: "d1" })?.code).toBe("receipt-known");
    expect(judgeReceipt({ ...order, ending: "cancelled" }, came, "2031-03-05", () => "Ply")?.code).toBe("order-has-ended");
    expect(judged(null, { lines: [{ itemId: "pine", taken: 1, short: 0, refused: 0 }] })?.code).toBe("receipt-not-ordered");
  });
});
