import { describe, expect, it } from "vitest";
import { clashOfRows, type ColumnGearRow, gearByRows } from "#lib/trade/planning/demand/column-gear.ts";

const row = (part: Partial<ColumnGearRow>): ColumnGearRow => ({ itemId: "prop", count: 4, levelId: null, sideOverMm: null, sideUpToMm: null, heightOverMm: null, heightUpToMm: null, ...part });
const column = { levelId: "L1", sideMm: 600, heightMm: 3000 };

describe("gear counted by rows of the set-up", () => {
  // Four props up to a side of 600, six over it, two ties more on level 2 alone: the limits as the rows say them.
  const rows = [row({ sideUpToMm: 600 }), row({ sideOverMm: 600, count: 6 }), row({ itemId: "tie", levelId: "L2", count: 2 })];
  it("is that of the row whose limits the column lies within, a limit itself belonging below it", () => {
    expect(gearByRows(column, rows)).toEqual([{ itemId: "prop", count: 4 }]);
    expect(gearByRows({ ...column, sideMm: 600.1 }, rows)).toEqual([{ itemId: "prop", count: 6 }]);
    expect(gearByRows({ ...column, levelId: "L2" }, rows)).toEqual([{ itemId: "prop", count: 4 }, { itemId: "tie", count: 2 }]);
  });

  it("hangs on the form height only where a row does", () => {
    const tall = [row({ heightOverMm: 3000, count: 8 }), row({ heightUpToMm: 3000 })];
    expect(gearByRows(column, tall)).toEqual([{ itemId: "prop", count: 4 }]);
    expect(gearByRows({ ...column, heightMm: 3001 }, tall)).toEqual([{ itemId: "prop", count: 8 }]);
    expect(gearByRows({ ...column, heightMm: null }, tall)).toBeNull();
    expect(gearByRows({ ...column, heightMm: null }, rows)).toEqual([{ itemId: "prop", count: 4 }]);
  });

  it("is never counted twice: rows that would are named", () => {
    expect(clashOfRows(rows)).toBeNull();
    expect(clashOfRows([...rows, row({ sideOverMm: 500, sideUpToMm: 550 })])).toEqual([0, 3]);
    expect(clashOfRows([row({ levelId: "L1" }), row({ levelId: "L2" }), row({ levelId: null, heightOverMm: 4000 })])).toEqual([0, 2]);
    expect(clashOfRows([row({ levelId: "L1" }), row({ levelId: "L2" })])).toBeNull();
    expect(clashOfRows([row({ sideUpToMm: 400 }), row({ sideOverMm: 400, heightUpToMm: 3000 }), row({ sideOverMm: 400, heightOverMm: 3000 })])).toBeNull();
  });
});
