import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { EventAnswer, RecordAnswer } from "#lib/contracts/progress.ts";
import { isTick, type KeptEvent, type KeptItem } from "#app/_field/outbox/kept-item.ts";
import { makeEventId } from "#app/_field/outbox/make-event-ids.ts";
import { makeItems, mergeAnswers } from "#app/_field/outbox/make-items.ts";
import {
  countKept, MOST_TOGETHER, neverArrived, nextBatch, onItsWay, outlived, park, requeue, retryPause, settle, stayed, STUMBLES_TOGETHER, stumble,
} from "#app/_field/outbox/outbox-plan.ts";

const NOW = Date.parse("2031-04-17T06:30:00Z");
const MINUTE = 60_000;
const nobody: ReadonlySet<string> = new Set();

function anItem(place: number, given: Partial<KeptItem<KeptEvent>> = {}): KeptItem<KeptEvent> {
  const id = `item-${place}`;
  const event = { id, columnId: `column-${place}`, kind: "stage-reached", stage: "cut", happenedAt: "2031-04-17T06:29:55.000Z", reason: null } as const;
  return {
    place, event, about: "", projectId: "wharf", personId: "ari", personName: "Ari", madeAt: NOW - 5_000, standing: "waiting", tries: 0,
    stumbles: 0, outcome: null, findings: [], failure: null, answeredAt: null, ...given,
  };
}
const some = (count: number, given: Partial<KeptItem<KeptEvent>> = {}) => Array.from({ length: count }, (_, index) => anItem(index + 1, given));
const idsIn = (items: readonly KeptItem[] | undefined) => items?.map(({ event }) => event.id);
const answering = (items: readonly KeptItem<KeptEvent>[], outcome: EventAnswer["outcome"]): RecordAnswer =>
  ({ seq: 9, columns: [], answers: items.map(({ event }) => ({ id: event.id, columnId: event.columnId, outcome, findings: [] })) });

describe("what goes off in one message", () => {
  it("is the oldest first, whatever order the store lists them in", () => {
    expect(idsIn(nextBatch([anItem(3), anItem(1), anItem(2)], "ari", NOW, nobody)?.items)).toEqual(["item-1", "item-2", "item-3"]);
  });

  it("is never more than fit together", () => {
    expect(nextBatch(some(120), "ari", NOW, nobody)?.items).toHaveLength(MOST_TOGETHER);
  });

  it("keeps to one project and leaves the other for the next message", () => {
    const items = [anItem(1), anItem(2, { projectId: "clinic" }), anItem(3)];
    expect(idsIn(nextBatch(items, "ari", NOW, nobody)?.items)).toEqual(["item-1", "item-3"]);
  });

  it("holds nothing of anybody else who used this phone", () => {
    const items = [anItem(1, { personId: "bo" }), anItem(2)];
    expect(idsIn(nextBatch(items, "ari", NOW, nobody)?.items)).toEqual(["item-2"]);
    expect(nextBatch([anItem(1, { personId: "bo" })], "ari", NOW, nobody)).toBeNull();
  });

  it("says that it was saved once nobody can be asked any more, and never mixes the two", () => {
    const items = [anItem(1, { madeAt: NOW - 2 * MINUTE }), anItem(2)];
    expect(nextBatch(items, "ari", NOW, nobody)).toMatchObject({ saved: true, items: [{ place: 1 }] });
    expect(nextBatch([anItem(2)], "ari", NOW, nobody)).toMatchObject({ saved: false });
  });

  it("counts an entry as old when the phone's clock was put back by more than a minute", () => {
    expect(nextBatch([anItem(1, { madeAt: NOW + 5 * MINUTE })], "ari", NOW, nobody)?.saved).toBe(true);
  });

  it("leaves out what is parked, asked about or sent", () => {
    const items = [anItem(1, { standing: "refused" }), anItem(2, { standing: "asks" }), anItem(3, { standing: "sent" }), anItem(4)];
    expect(idsIn(nextBatch(items, "ari", NOW, nobody)?.items)).toEqual(["item-4"]);
  });
});

describe("after an answer", () => {
  it("an entry taken in any way is sent, one with a question asks, one refused is parked", () => {
    const standings = (["accepted", "repeat", "queried", "needs-reason", "refused"] as const)
      .map((outcome) => settle([anItem(1)], answering([anItem(1)], outcome), NOW)[0]?.standing);
    expect(standings).toEqual(["sent", "sent", "sent", "asks", "refused"]);
  });

  it("an entry the answer says nothing about goes on waiting", () => {
    expect(settle([anItem(1), anItem(2)], answering([anItem(1)], "accepted"), NOW).map(({ standing }) => standing)).toEqual(["sent", "waiting"]);
  });

  it("a reason puts it back in the queue with the same id", () => {
    const again = requeue(anItem(1, { standing: "asks", outcome: "needs-reason" }), "cast-in was late");
    expect(again).toMatchObject({ standing: "waiting", outcome: null, event: { id: "item-1", reason: "cast-in was late" } });
  });

  it("one over several messages tells each entry once, and columns as last told", () => {
    const first: RecordAnswer = { ...answering([anItem(1)], "accepted"), seq: 4, columns: [{ id: "c", done: 1, flagged: false }] };
    const second: RecordAnswer = { ...answering([anItem(2), anItem(3)], "accepted"), seq: 6, columns: [{ id: "c", done: 3, flagged: false }] };
    const merged = mergeAnswers([second, first, second], ["item-1", "item-2"]);
    expect(merged.answers.map(({ id }) => id)).toEqual(["item-1", "item-2"]);
    expect(merged).toMatchObject({ seq: 6, columns: [{ id: "c", done: 3 }] });
  });
});

describe("one bad entry holds up no other", () => {
  it("a message refused as a whole is taken apart, and only the one at fault is parked", () => {
    let items: readonly KeptItem[] = some(5);
    const parked: string[] = [];
    for (let round = 0; round < 20; round += 1) {
      const batch = nextBatch(items, "ari", NOW, nobody);
      if (batch === null) break;
      const isBad = batch.items.some(({ place }) => place === 3);
      const after = isBad ? park(batch.items, { kind: "invalid", problems: [] }, NOW) : settle(batch.items, answering(batch.items.filter(isTick), "accepted"), NOW);
      items = items.map((item) => after.find(({ place }) => place === item.place) ?? item);
      parked.push(...after.filter(({ standing }) => standing === "refused").map(({ event }) => event.id));
    }
    expect(parked).toEqual(["item-3"]);
    expect(items.map(({ standing }) => standing)).toEqual(["sent", "sent", "refused", "sent", "sent"]);
  });

  it("what the server fails over goes alone after three times and may be passed over", () => {
    let items: readonly KeptItem[] = some(2);
    for (let time = 0; time < STUMBLES_TOGETHER; time += 1) items = stumble(items);
    expect(nextBatch(items, "ari", NOW, nobody)?.items).toHaveLength(1);
    expect(idsIn(nextBatch(items, "ari", NOW, new Set(["item-1"]))?.items)).toEqual(["item-2"]);
  });

  it("sends each waiting entry exactly once, in the order of entry within a project, whatever is mixed in", () => {
    const mixed = fc.array(fc.record({
      projectId: fc.constantFrom("wharf", "clinic"), personId: fc.constantFrom("ari", "bo"),
      madeAt: fc.constantFrom(NOW - 3_000, NOW - 9 * MINUTE), standing: fc.constantFrom("waiting", "sent", "refused"), stumbles: fc.constantFrom(0, STUMBLES_TOGETHER),
    } as const), { maxLength: 140 });
    fc.assert(fc.property(mixed, (given) => {
      let items: KeptItem[] = given.map((each, index) => anItem(index + 1, each));
      const due = items.filter(({ standing, personId }) => standing === "waiting" && personId === "ari");
      const sent: KeptItem[] = [];
      for (let batch = nextBatch(items, "ari", NOW, nobody); batch !== null; batch = nextBatch(items, "ari", NOW, nobody)) {
        const after = settle(batch.items, answering(batch.items.filter(isTick), "accepted"), NOW);
        sent.push(...batch.items);
        items = items.map((item) => after.find(({ place }) => place === item.place) ?? item);
      }
      for (const project of ["wharf", "clinic"]) {
        const of = (list: readonly KeptItem[]) => list.filter(({ projectId }) => projectId === project).map(({ place }) => place);
        expect(of(sent)).toEqual(of(due));
      }
    }), { numRuns: 60 });
  });
});

describe("what may be struck out without telling the server", () => {
  it("is what never left, what it asked about and what it refused", () => {
    expect([anItem(1), anItem(1, { standing: "asks", tries: 1 }), anItem(1, { standing: "refused", tries: 1 })].map(neverArrived)).toEqual([true, true, true]);
  });
  it("is nothing that was on its way, heard back from or not", () => {
    expect(onItsWay([anItem(1)]).map(neverArrived)).toEqual([false]);
    expect(neverArrived(anItem(1, { standing: "sent", tries: 1 }))).toBe(false);
  });
  it("is what the phone itself held back for want of reception", () => {
    expect(stayed(onItsWay([anItem(1)])).map(neverArrived)).toEqual([true]);
    expect(stayed(onItsWay([anItem(1, { tries: 1 })])).map(neverArrived)).toEqual([false]);
  });
});

describe("what the phone says of it", () => {
  it("counts its own apart from those of others, and warns after a day", () => {
    const items = [anItem(1, { madeAt: NOW - 25 * 60 * MINUTE }), anItem(2, { standing: "asks" }), anItem(3, { standing: "refused" }), anItem(4, { personId: "bo" })];
    expect(countKept(items, "ari", NOW)).toEqual({ waiting: 1, asks: 1, refused: 1, ofOthers: 1, isOverdue: true });
  });
  it("forgets what is sent after half a day and never what is not sent", () => {
    const long = NOW - 13 * 60 * MINUTE;
    const items = [anItem(1, { standing: "sent", answeredAt: long }), anItem(2, { standing: "sent", answeredAt: NOW }), anItem(3, { madeAt: long })];
    expect(idsIn(outlived(items, NOW))).toEqual(["item-1"]);
  });
  it("tries again ever more slowly, but at least every minute and a quarter", () => {
    const pauses = [1, 2, 3, 4, 9, 50].map((failures) => retryPause(failures, 0.5));
    expect([...pauses].sort((left, right) => left - right)).toEqual(pauses);
    expect(retryPause(50, 1)).toBeLessThanOrEqual(75_000);
  });
});

describe("ids made on the phone", () => {
  const random = (length: number) => new Uint8Array(length).fill(0xff);
  it("sort in the order they were made, within one millisecond and after the clock is put back (RFC 9562 section 6.2)", () => {
    const ids = Array.from({ length: 9000 }, (_, index) => makeEventId(index < 8000 ? NOW : NOW - MINUTE, random));
    expect([...ids].sort()).toEqual(ids);
    expect(new Set(ids).size).toBe(ids.length);
  });
  it("make whole events of drafts, keeping a time that was given", () => {
    const earlier = "2031-04-17T05:00:00Z";
    const [now, back] = makeItems(
      [{ kind: "held", columnId: "a", about: "A4, Level 2" }, { kind: "stage-reached", stage: "poured", columnId: "b", happenedAt: earlier, reason: "pump was late" }],
      { projectId: "wharf", personId: "ari", personName: "Ari" }, () => NOW, (at) => makeEventId(at, random),
    );
    expect(now).toMatchObject({ about: "A4, Level 2", event: { kind: "held", columnId: "a", reason: null, happenedAt: new Date(NOW).toISOString() } });
    expect(now?.event).not.toHaveProperty("about");
    expect(back?.event).toMatchObject({ happenedAt: earlier, reason: "pump was late" });
  });
});
