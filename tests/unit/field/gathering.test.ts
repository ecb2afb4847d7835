import { describe, expect, it } from "vitest";
import { expectedTake, gatheredSince, isBuiltOn } from "#app/_field/outbox/expected-take.ts";
import type { KeptEntry, KeptGathering, KeptItem } from "#app/_field/outbox/kept-item.ts";
import { makeItems } from "#app/_field/outbox/make-items.ts";
import { nextBatch, park, pointless, requeue, settleMoves } from "#app/_field/outbox/outbox-plan.ts";
import { mayBeSplit, splitGathering } from "#app/_field/outbox/split-gathering.ts";
import { actWords } from "#app/_field/ticking/act-words.ts";
import type { ToTake } from "#lib/trade/gear/gather.ts";

const NOW = Date.parse("2031-04-17T06:30:00Z");
const READ_AT = "2031-04-17T06:00:00.000Z";
const nobody: ReadonlySet<string> = new Set();
const told = { happenedAt: "2031-04-17T06:29:55.000Z", reason: null };

const took = (id: string, fromId: string, to: KeptGathering["to"], quantities: Readonly<Record<string, number>>, itemId = "wedge"): KeptGathering =>
  ({ ...told, id, kind: "gathered", to, readAt: READ_AT, lines: Object.entries(quantities).map(([columnId, quantity]) => ({ itemId, fromId, columnId, quantity })) });
const onTruck = { what: "truck", truckId: "truck" } as const;
const atColumn = { what: "columns" } as const;
const stood = (id: string): KeptEntry => ({ ...told, id, kind: "stage-reached", stage: "stood", columnId: "a" });
const undo = (movementId: string): KeptEntry => ({ ...told, id: `undo ${movementId}`, kind: "taken-back", movementId });

function kept<Entry extends KeptEntry>(place: number, event: Entry, given: Partial<KeptItem<Entry>> = {}): KeptItem<Entry> {
  return {
    place, event, about: "", projectId: "wharf", personId: "ari", personName: "Ari", madeAt: NOW - 5_000, standing: "waiting", tries: 0,
    stumbles: 0, outcome: null, findings: [], failure: null, answeredAt: null, ...given,
  };
}
/** The order in which all of it goes off, message by message. */
function messages(items: readonly KeptItem[]): string[][] {
  const sent: string[][] = [];
  let left = items;
  for (let batch = nextBatch(left, "ari", NOW, nobody); batch !== null; batch = nextBatch(left, "ari", NOW, nobody)) {
    const places = batch.items.map(({ place }) => place);
    sent.push(batch.items.map(({ event }) => event.id));
    left = left.filter(({ place }) => !places.includes(place));
  }
  return sent;
}

describe("gathering goes off among the ticks", () => {
  it("one entry to a message, and in the order it was made: what was brought to a column before the tick that it stands", () => {
    const items = [kept(1, stood("t1")), kept(2, stood("t2")), kept(3, took("g1", "rack", onTruck, { a: 4 })), kept(4, took("g2", "truck", atColumn, { a: 4 })), kept(5, stood("t3")), kept(6, stood("t4"))];
    expect(messages(items)).toEqual([["t1", "t2"], ["g1"], ["g2"], ["t3", "t4"]]);
  });

  it("taken it is sent, with the server's instant; refused it is parked with the reason until it is tried again", () => {
    const one = kept(1, took("g1", "rack", atColumn, { a: 4 }));
    expect(settleMoves([one], "2031-04-17T06:31:00.000Z", NOW)).toMatchObject([{ standing: "sent", takenAt: "2031-04-17T06:31:00.000Z", answeredAt: NOW }]);
    const failure = { kind: "rule", code: "gear-not-there", values: { item: "Wedge", place: "Rack", asked: 4, there: 0 } } as const;
    const [refused] = park([one], failure, NOW);
    expect(refused).toMatchObject({ standing: "refused", refusal: failure });
    expect(nextBatch(refused ? [refused] : [], "ari", NOW, nobody)).toBeNull();
    const again = requeue(refused ?? one, null);
    expect([again.standing, again.refusal, again.event.id]).toEqual(["waiting", undefined, "g1"]);
  });

  it("refused and to be taken back anyway, neither of the two is told about", () => {
    const refused = kept(1, took("g1", "rack", atColumn, { a: 4 }), { standing: "refused" });
    expect(pointless([refused, kept(2, undo("g1"))]).sort()).toEqual(["g1", "undo g1"]);
    expect(pointless([refused, kept(2, undo("g2"))])).toEqual([]);
    expect(pointless([kept(1, took("g1", "rack", atColumn, { a: 4 })), kept(2, undo("g1"))])).toEqual([]);
  });

  it("is made whole on the phone, with the moment it happened", () => {
    const [made] = makeItems([{ kind: "gathered", to: atColumn, lines: [], readAt: READ_AT, about: "4 × Wedge for A/1" }], { projectId: "wharf", personId: "ari", personName: "Ari" }, () => NOW, () => "own-id");
    expect(made).toMatchObject({ about: "4 × Wedge for A/1", standing: "waiting", event: { id: "own-id", happenedAt: "2031-04-17T06:30:00.000Z" } });
    expect([onTruck, atColumn].map((to) => actWords(took("g", "rack", to, {})))).toEqual(["on the truck", "at the column"]);
  });
});

describe("the list with what waits on this phone counted in", () => {
  const wedges: ToTake = { itemId: "wedge", placeId: "rack", quantity: 10, columns: [{ columnId: "a", quantity: 6 }, { columnId: "b", quantity: 4 }] };
  const panel: ToTake = { itemId: "panel", placeId: "rack", quantity: 1, columns: [{ columnId: "a", quantity: 1 }] };

  it("has no line that was brought to its columns", () => {
    expect(expectedTake([wedges, panel], [took("g", "rack", atColumn, { a: 6, b: 4 })])).toEqual([panel]);
  });
  it("takes what is on the truck from the truck, and nothing more once it is at the column", () => {
    const loaded = took("g1", "rack", onTruck, { a: 6, b: 4 });
    expect(expectedTake([wedges, panel], [loaded])).toEqual([panel, { ...wedges, placeId: "truck" }]);
    expect(expectedTake([wedges, panel], [loaded, took("g2", "truck", atColumn, { a: 6, b: 4 })])).toEqual([panel]);
  });
  it("keeps what another column still needs, and never takes more than the list says", () => {
    // 10 − 6 = 4 are left, for b alone.
    expect(expectedTake([wedges], [took("g", "rack", atColumn, { a: 9, elsewhere: 3 })])).toEqual([{ ...wedges, quantity: 4, columns: [{ columnId: "b", quantity: 4 }] }]);
    expect(expectedTake([wedges], [took("g", "yard", onTruck, { a: 6 })])).toEqual([wedges]);
  });

  const waiting = kept(1, took("g1", "rack", onTruck, { a: 6 }));
  it("counts what waits, and what the server took after the list was read; nothing else", () => {
    const sent = (takenAt: string | null) => gatheredSince([{ ...waiting, standing: "sent", takenAt }], READ_AT).length;
    expect([gatheredSince([waiting], READ_AT).length, sent("2031-04-17T06:00:00.001Z"), sent(READ_AT), sent(null)]).toEqual([1, 1, 0, 0]);
    expect(gatheredSince([{ ...waiting, standing: "refused" }, kept(2, stood("t"))], READ_AT)).toEqual([]);
  });
  it("does not count what is taken back again, unless that was refused", () => {
    expect(gatheredSince([waiting, kept(2, undo("g1"))], READ_AT)).toEqual([]);
    expect(gatheredSince([waiting, kept(2, undo("g1"), { standing: "refused" })], READ_AT)).toEqual([waiting]);
  });
  it("lets nothing be undone that was taken on since: that first", () => {
    const on = kept(2, took("g2", "truck", atColumn, { a: 6 }));
    expect([isBuiltOn(waiting, [waiting, on]), isBuiltOn(on, [waiting, on]), isBuiltOn(waiting, [waiting])]).toEqual([true, false, false]);
    expect(isBuiltOn(waiting, [waiting, kept(2, took("g2", "truck", atColumn, { a: 1 }, "panel"))])).toBe(false);
  });
});

describe("a gathering refused for one of its lines", () => {
  it("is made into one for each thing and place, its columns together, at the time it was done", () => {
    const all: KeptGathering = { ...took("all", "rack", onTruck, { a: 8, b: 4 }), lines: [...took("", "rack", onTruck, { a: 8, b: 4 }).lines, ...took("", "bay", onTruck, { a: 2 }).lines, ...took("", "rack", onTruck, { b: 1 }, "clamp").lines] };
    const apart = splitGathering(all, (lines) => String(lines.reduce((sum, { quantity }) => sum + quantity, 0)));
    expect(apart.map((each) => ("lines" in each ? [each.about, each.lines.map(({ itemId, fromId, columnId }) => `${itemId} ${fromId} ${columnId}`)] : []))).toEqual([
      ["12", ["wedge rack a", "wedge rack b"]], ["2", ["wedge bay a"]], ["1", ["clamp rack b"]],
    ]);
    for (const each of apart) expect(each).toMatchObject({ to: onTruck, readAt: READ_AT, happenedAt: told.happenedAt });
  });

  it("stays one where it is one line", () => {
    expect([mayBeSplit(took("one", "rack", atColumn, { a: 8, b: 4 })), mayBeSplit({ ...took("two", "rack", atColumn, { a: 8 }), lines: [...took("", "rack", atColumn, { a: 8 }).lines, ...took("", "bay", atColumn, { a: 8 }).lines] })]).toEqual([false, true]);
  });
});
