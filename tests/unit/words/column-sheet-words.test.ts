import { describe, expect, it } from "vitest";
import { term } from "#lib/trade/engineering/working.ts";
import { checkValue, formulaText, percent, significant, termText, toldAgain } from "#app/_ui/value/working-words.ts";
import { givenText, remedyOf } from "#app/_ui/value/refusal-words.ts";
import { rebase } from "#app/(work)/projects/[projectId]/columns/[columnId]/_parts/change/rebase.ts";
import { storedLines } from "#app/(work)/projects/[projectId]/columns/[columnId]/_parts/change/stored-lines.ts";
import { heightSum } from "#app/(work)/projects/[projectId]/columns/[columnId]/_parts/height-sum.ts";
import { changeWords } from "#app/(work)/projects/[projectId]/columns/[columnId]/_parts/history/change-words.ts";
import { historyEntries, type NamedEvent } from "#app/(work)/projects/[projectId]/columns/[columnId]/_parts/history/history-entries.ts";

describe("the working on paper", () => {
  it("keeps four significant figures, and whole numbers as they are", () => {
    expect([significant(82.41237), significant(0.36504), significant(7000), significant(-0.5)]).toEqual(["82.41", "0.365", "7000", "−0.5"]);
  });

  it("writes a term with its unit as the trade does", () => {
    expect(termText(term("EI", 2.6, "kN.m2/m"))).toBe("EI = 2.6 kN·m²/m");
    expect(termText(term("governs", "formula", ""))).toBe("governs = formula");
  });

  it("raises powers and leaves the names of coefficients alone", () => {
    expect(formulaText("M = f b d2 / 6; d = c_d p L4 / EI")).toBe("M = f b d² / 6; d = c_d p L⁴ / EI");
    expect(formulaText("P = D (C1 sqrt(R) + C2 K sqrt(H - C1 sqrt(R)))")).toBe("P = D (C1 √(R) + C2 K √(H − C1 √(R)))");
  });

  // 1 kPa = 20.885 psf by the pound-force and foot of 1959; 50 × 20.885 = 1044.3.
  it("tells a result again only where the project reads US customary units", () => {
    expect(toldAgain(term("p", 50, "kPa"), "us")).toBe(" (1044 psf)");
    expect(toldAgain(term("p", 50, "kPa"), "metric")).toBe("");
    expect(toldAgain(term("EI", 2.6, "kN.m2/m"), "us")).toBe("");
  });

  // 1 in. = 25.4 mm exactly; 1 kN = 224.81 lbf.
  it("reads checks in the project's units", () => {
    expect(checkValue(0.508, "mm", "us")).toBe("0.020 in");
    expect(checkValue(10, "kN", "us")).toBe("2248 lb");
    expect(checkValue(0.47, "kN.m/m", "metric")).toBe("0.47 kN·m/m");
    expect(percent(0.874)).toBe("87 %");
  });
});

describe("a refusal", () => {
  const refusal = { limit: "size over the backing timbers (mm)", given: "508 × 762", allowed: "Short clamp 300 to 700 mm", source: "hirer", message: "size over the backing timbers (mm) is 508 × 762; allowed: Short clamp 300 to 700 mm. Add a clamp kind." };

  it("has its remedy apart from its numbers", () => {
    expect(remedyOf(refusal)).toBe("Add a clamp kind.");
    expect(remedyOf({ ...refusal, message: "Something else." })).toBe("Something else.");
  });

  it("says millimetres in inches beside them for a US customary project", () => {
    expect(givenText(refusal, "us")).toBe('508 × 762 (20" × 30")');
    expect(givenText({ ...refusal, limit: "pressure", given: 81.23456 }, "us")).toBe("81.23");
  });
});

describe("the form height in the title block", () => {
  it("shows the sum it came from", () => {
    const inputs = [term("storey height", 3450, "mm"), term("slab or beam depth", 550, "mm"), term("kicker", 75, "mm")];
    expect(heightSum({ inputs }, "beam", "metric")).toBe("storey 3450 − beam 550 − kicker 75");
  });

  it("says when it was given", () => {
    expect(heightSum({ inputs: [term("given height", 3100, "mm")] }, "slab", "metric")).toBe("given for this column");
  });
});

describe("the history of a column", () => {
  const tick = (id: string, happenedAt: string, arrivedAt: string, seq: number): NamedEvent =>
    ({ id, columnId: "c", kind: "stage-reached", stage: "cut", happenedAt, arrivedAt, seq, by: "p", byName: "Tavita", reason: null, standing: "accepted" });

  it("runs from the latest, by when it happened, with set-up changes between", () => {
    const entries = historyEntries({
      events: [tick("early", "2031-03-04T06:00:00Z", "2031-03-04T11:00:00Z", 9), tick("late", "2031-03-04T09:00:00Z", "2031-03-04T09:00:20Z", 8)],
      fates: new Map([["early", "withdrawn"]]), queried: [],
      changes: [{ seq: 5, at: "2031-03-04T07:30:00.000Z", by: "Ines", detail: {} }],
    });
    expect(entries.map((entry) => (entry.kind === "event" ? entry.event.id : "change"))).toEqual(["late", "change", "early"]);
    expect(entries.map((entry) => (entry.kind === "event" ? entry.arrivedLate : null))).toEqual([null, null, "2031-03-04T11:00:00Z"]);
    expect(entries.map((entry) => (entry.kind === "event" ? entry.fate : null))).toEqual(["stands", null, "withdrawn"]);
  });

  it("says what a change changed and nothing else", () => {
    const before = { shape: "rectangle", widthMm: 400, depthMm: 400, headedBy: "slab", formHeightMm: null, concrete: null, remarks: null };
    const words = changeWords({ changed: "A/1", before, after: { ...before, depthMm: 450, formHeightMm: 3100 }, reason: "Revision C" }, "metric");
    expect(words).toEqual({ title: "Size, height or remarks changed", lines: ["section 400 square → 400 × 450", "form height from the levels → 3100 mm"], reason: "Revision C" });
  });

  it("names the file a column came from, and survives a line it does not know", () => {
    expect(changeWords({ importId: "i", fileName: "issue-2.xlsx", created: 3, changed: 0 }, "metric").lines).toEqual(["issue-2.xlsx"]);
    expect(changeWords(null, "metric").title).toBe("Schedule changed");
  });
});

describe("a form behind somebody else's change", () => {
  const base = {
    projectId: "p", columnId: "c", name: "A/1, Yard", version: 3, units: "metric", shape: "rectangle", widthMm: 425, depthMm: 425, headedBy: "slab",
    formHeightMm: null, concrete: null, remarks: null, stage: null, isStood: false, lastChange: null,
  } as const;
  const stored = { ...base, version: 4, depthMm: 500, formHeightMm: 3100, remarks: "Fair faced" };

  it("keeps what was typed and takes over the rest", () => {
    const typed = { shape: "rectangle", widthMm: 475, depthMm: 425, headedBy: "slab", formHeightMm: null, concrete: "", remarks: "Typed" };
    expect(rebase(base, stored, typed)).toEqual({ ...stored, widthMm: 425, remarks: null });
    expect(storedLines(base, stored)).toEqual(["Section: 425 square is now 425 × 500", "Form height: from the levels is now 3100", "Remarks: none is now Fair faced"]);
  });
});
