import { describe, expect, it } from "vitest";
import { compareSchedule } from "#lib/trade/schedule/compare-schedule.ts";
import { readSchedule } from "#lib/trade/schedule/read-schedule.ts";
import { changeText, counted, importLabel, stageWords } from "#app/(work)/projects/[projectId]/set-up/schedule/preview/preview-words.ts";
import { problemsCsv } from "#app/(work)/projects/[projectId]/set-up/schedule/preview/problems-csv.ts";
import { MOST_SHOWN, shortenPreview } from "#app/(work)/projects/[projectId]/set-up/schedule/preview/shorten-preview.ts";

describe("the findings as a file", () => {
  it.each(["=1+1", "+61 7", "-3", "@name", " =1", "\t=1", "\u0000=1".slice(1)])("does not let %j run as a formula", (text) => {
    const line = problemsCsv([{ source: { sheet: text, row: 2, cell: "A2" }, message: text, remedy: text }], []).split("\r\n")[1] ?? "";
    expect(line).toBe(`"refused","'${text}","2","A2","'${text}","'${text}"`);
  });

  it("keeps quotes, commas and line breaks inside their cell (RFC 4180)", () => {
    const text = problemsCsv([], [{ source: null, message: 'Read "300, 600"\nas a size', remedy: "Nothing to do." }]);
    expect(text).toBe('\uFEFF"Kind","Sheet","Row","Cell","What","What to do"\r\n"warning","","","","Read ""300, 600""\nas a size","Nothing to do."\r\n');
  });
});

describe("the words of a preview", () => {
  it("counts", () => {
    expect([counted(1, "column"), counted(14, "column"), counted(0, "level")]).toEqual(["1 column", "14 columns", "0 levels"]);
  });

  it("names stages from nothing to stripped", () => {
    expect([0, 1, 6].map(stageWords)).toEqual(["not started", "cut", "stripped"]);
  });

  it("tells a change from and to, in the project's units", () => {
    expect(changeText({ what: "width", from: 400, to: 450 }, "metric")).toBe("width 400 → 450");
    expect(changeText({ what: "width", from: 304.8, to: 457.2 }, "us")).toBe(`width 1'-0" → 1'-6"`);
    expect(changeText({ what: "shape", from: "circle", to: "rectangle" }, "metric")).toBe("section round → rectangular");
    expect(changeText({ what: "mark", from: null, to: "C7" }, "metric")).toBe("mark none → C7");
  });
});

describe("a long preview", () => {
  const header = ["Mark", "Grid", "Width (mm)", "Depth (mm)", "From level", "To level", "From elevation (m)", "To elevation (m)"];
  const rows = Array.from({ length: 320 }, (_, place) => [`C${place % 7}`, `A/${place + 1}`, 350, 425, "Yard", "Loft", 1.2, 4.7]);
  const reading = readSchedule([{ name: "Columns", rows: [header, ...rows] }], "metric");
  const known = { levels: [], gridLines: [], marks: [], columns: [] };
  const short = shortenPreview({ reading, preview: compareSchedule(known, reading), digest: "d" });

  it("shows the beginning and says how long it is", () => {
    expect(short.create.columns.first).toHaveLength(MOST_SHOWN);
    expect(short.create.columns.count).toBe(320);
    expect(importLabel(short)).toBe("Import 320 columns");
  });

  it("offers nothing where nothing would change", () => {
    expect(importLabel({ create: { ...short.create, levels: [], columns: { first: [], count: 0 } }, change: short.change })).toBeNull();
  });
});
