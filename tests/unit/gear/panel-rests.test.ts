import { describe, expect, it } from "vitest";
import { panelLife } from "#lib/trade/gear/panel-life.ts";
import { isSound, panelRests, restDoubt, strangeRest } from "#lib/trade/gear/panel-rests.ts";

const RULE = { kerfMm: 3, longMm: 600, shortMm: 200, sheet: { widthMm: 1200, heightMm: 2400 } };
type Pair = readonly [widthMm: number, heightMm: number];
const sized = ([widthMm, heightMm]: Pair) => ({ widthMm, heightMm });
const rests = (panel: Pair, ...pieces: Pair[]) => panelRests(sized(panel), pieces.map(sized), RULE).map(({ widthMm, heightMm }) => [widthMm, heightMm]);

// Hand arithmetic, no source.
describe("what is left of a panel that is cut down", () => {
  it("is two rests beside one piece, each a saw cut less", () => {
    // Ripped first: 900 - 500 - 3 = 397 over the full 3400, and over the piece 3400 - 2400 - 3 = 997 of 500.
    // Cross-cut first it would be 900 x 997 and 397 x 2400: squared 0.81e12 + 0.91e12, against 1.82e12 + 0.25e12.
    expect(rests([900, 3400], [500, 2400])).toEqual([[397, 3400], [500, 997]]);
  });

  it("is cut the other way where only that leaves something worth keeping", () => {
    // Ripped first: 600 - 450 - 3 = 147 is too narrow, and over the piece 450 x (3000 - 2700 - 3 = 297) is 450 long, too short.
    // Cross-cut first the strip above is 600 x 297.
    expect(rests([600, 3000], [450, 2700])).toEqual([[600, 297]]);
  });

  it("is kept from the size the project keeps, either way round, and not a millimetre under", () => {
    // 703 - 500 - 3 = 200; 702 leaves 199. 500 x 200 along the width is 500 long, under 600.
    expect(rests([703, 2400], [500, 2400])).toEqual([[200, 2400]]);
    expect(rests([702, 2400], [500, 2400])).toEqual([]);
    expect(rests([500, 2603], [500, 2400])).toEqual([]);
    expect(rests([600, 2603], [600, 2400])).toEqual([[600, 200]]);
  });

  it("is whole millimetres, never more than there is", () => {
    // 900.4 - 500 - 3 = 397.4.
    expect(rests([900.4, 2400], [500, 2400])).toEqual([[397, 2400]]);
  });

  it("is nothing where the saw takes it, or the piece does not come out", () => {
    // 2 mm of width go with the kerf.
    expect(rests([502, 2400], [500, 2400])).toEqual([]);
    expect(rests([500, 2400], [501, 1000])).toEqual([]);
    expect(rests([500, 2400], [300, 2400], [198, 2400])).toEqual([]);
  });

  it("is found beside two pieces, over the shorter one too", () => {
    // Beside: 300 + 3 + 250 + 3 = 556 of 1000 leave 444 x 3000; over the shorter 3000 - 2000 - 3 = 997 of 250.
    expect(rests([1000, 3000], [300, 3000], [250, 2000])).toEqual([[444, 3000], [250, 997]]);
    // Above each other: 1500 + 3 + 1297 = 2800 just comes out; beside the narrower 634 - 400 - 3 = 231 of 1297.
    expect(rests([634, 2800], [634, 1500], [400, 1297])).toEqual([[231, 1297]]);
  });

  it("without a kerf is what is cut off", () => {
    expect(panelRests(sized([900, 2400]), [sized([500, 2400])], { ...RULE, kerfMm: 0 })).toEqual([sized([400, 2400])]);
  });
});

describe("rests that are asked for", () => {
  const found = [sized([397, 3400]), sized([500, 997])];
  it("are those of the cut, each once", () => {
    expect([strangeRest([], found), strangeRest([sized([500, 997])], found), strangeRest([...found].reverse(), found)]).toEqual([null, null, null]);
    expect(strangeRest([sized([997, 500])], found)).toEqual(sized([997, 500]));
    expect(strangeRest([sized([500, 997]), sized([500, 997])], found)).toEqual(sized([500, 997]));
  });
});

describe("a panel whose rest serves like a new sheet", () => {
  const event = (kind: "damaged" | "repaired" | "turned" | "demoted", day: number) => ({ id: kind, kind, at: `2031-05-0${day}T00:00:00.000Z`, reason: null, amount: 0, eventId: null });
  const sound = (filmFaces: number, ...events: ReturnType<typeof event>[]) => isSound({ filmFaces }, panelLife({ sheetCost: 0, labourCost: 0, sundryCost: 0 }, events, []));
  it("has film on both faces and nothing broken or worn", () => {
    expect([sound(2), sound(2, event("damaged", 1), event("repaired", 2))]).toEqual([true, true]);
    expect([sound(1), sound(2, event("damaged", 1)), sound(2, event("turned", 1)), sound(2, event("demoted", 1))]).toEqual([false, false, false, false]);
  });

  it("is in doubt where it came from several sheets, and where it does not serve like a new one", () => {
    const doubt = (pair: Pair, isPanelSound = true) => restDoubt(isPanelSound, sized(pair), RULE);
    expect([doubt([1200, 2400]), doubt([600, 2401]), doubt([1201, 2000]), doubt([1200, 2400], false)]).toEqual([null, "joint", "joint", "film"]);
  });
});
