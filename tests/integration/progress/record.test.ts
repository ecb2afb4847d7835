import { beforeAll, describe, expect, it } from "vitest";
import type { ProposedEventInput } from "#lib/contracts/progress.ts";
import { removeColumns } from "#lib/server/columns/change-columns.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, type Project } from "#tests/support/builders/a-project.ts";
import { anId, aSiteEvent, aTick } from "#tests/support/builders/a-site-event.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask, withOwner } from "#tests/support/raw-sql.ts";
import { keptStates } from "./kept-states.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Yarrow Boxing")));

let count = 0;
async function aSite(): Promise<Project & { column: (index: number) => string }> {
  const project = await aProject(company.owner, { name: `Site ${(count += 1)}` });
  return { ...project, column: (index) => project.columnIds[index] ?? "" };
}
const record = async (by: Caller, projectId: string, events: ProposedEventInput[], saved = false) =>
  valueOf(await recordSiteEvents(by, { projectId, saved, events })).answers;
const outcomes = async (...given: Parameters<typeof record>): Promise<string[]> => (await record(...given)).map(({ outcome }) => outcome);
const rowsOf = (projectId: string) =>
  ask(database.url, `select (select count(*)::int from site_event where project_id = $1) events, (select count(*)::int from change_line where project_id = $1) lines,
    (select last_seq::int from project where id = $1) seq`, [projectId]);

describe("the same id again", () => {
  it("gets the answer it got first: accepted, repeat, broken rule or queried", async () => {
    const { projectId, column } = await aSite();
    const events = [
      aTick(column(0), "cut"), aTick(column(0), "cut"), { ...aTick(column(1), "poured"), reason: "Gate released by telephone" },
      aTick(column(2), "stripped"), aSiteEvent("held", column(3), {}, { reason: "Starter bars bent" }),
    ];
    const first = await record(company.leadingHand, projectId, events);
    expect(first.map(({ outcome }) => outcome)).toEqual(["accepted", "repeat", "accepted", "queried", "accepted"]);
    expect(first[2]?.findings.map(({ code }) => code)).toEqual(["gate-missing"]);
    const before = await rowsOf(projectId);
    const kept = await keptStates(database.url, projectId);
    expect(await record(company.leadingHand, projectId, events)).toEqual(first);
    await record(company.owner, projectId, [aSiteEvent("set-back", column(0), { to: null, cause: "weather" })]);
    const [cut] = events;
    expect(await record(company.owner, projectId, [...events].reverse())).toEqual([...first].reverse());
    expect((await rowsOf(projectId))[0]).toMatchObject({ events: Number(before[0]?.["events"]) + 1, lines: Number(before[0]?.["lines"]) + 1 });
    expect((await keptStates(database.url, projectId)).filter(({ id }) => id !== cut?.columnId)).toEqual(kept.filter(({ id }) => id !== cut?.columnId));
  });

  it("twice in one batch is kept once and answered twice", async () => {
    const { projectId, column } = await aSite();
    const event = aTick(column(0), "cut");
    expect(await outcomes(company.leadingHand, projectId, [event, event])).toEqual(["accepted", "accepted"]);
    expect((await rowsOf(projectId))[0]).toMatchObject({ events: 1 });
  });

  it("for another column or another kind is refused", async () => {
    const { projectId, column } = await aSite();
    const id = anId();
    const answers = await record(company.leadingHand, projectId, [aTick(column(0), "cut", { id }), aTick(column(1), "cut", { id })]);
    const later = await record(company.leadingHand, projectId, [aTick(column(1), "cut", { id }), aSiteEvent("hold-lifted", column(0), {}, { id })]);
    expect([...answers, ...later].map(({ outcome, findings }) => [outcome, findings[0]?.code])).toEqual([
      ["accepted", undefined], ["refused", "id-used"], ["refused", "id-used"], ["refused", "id-used"],
    ]);
  });

  it("sent by many at once is kept once", async () => {
    const { projectId, column } = await aSite();
    const event = aTick(column(0), "cut");
    const answers = await Promise.all(Array.from({ length: 6 }, () => record(company.leadingHand, projectId, [event])));
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect((await rowsOf(projectId))[0]).toMatchObject({ events: 1 });
  });
});

describe("an event", () => {
  it("speaks of a column of the project, that is still in the schedule", async () => {
    const [here, elsewhere] = [await aSite(), await aSite()];
    valueOf(await removeColumns(company.owner, { projectId: here.projectId, columnIds: [here.column(5)], reason: "Left out" }));
    const events = [aTick(elsewhere.column(0), "cut"), aTick(here.column(5), "cut"), aTick(here.column(0), "cut")];
    expect(await outcomes(company.leadingHand, here.projectId, events)).toEqual(["refused", "refused", "accepted"]);
    expect((await rowsOf(elsewhere.projectId))[0]).toMatchObject({ events: 0 });
  });

  it("withdraws, settles or acknowledges nothing of another column", async () => {
    const { projectId, column } = await aSite();
    const queried = aTick(column(0), "stripped");
    await record(company.leadingHand, projectId, [queried]);
    for (const remark of [
      aSiteEvent("withdrawn", column(1), { eventId: queried.id }, { reason: "No" }), aSiteEvent("settled", column(1), { eventId: queried.id, stands: false }, { reason: "No" }),
      aSiteEvent("acknowledged", column(1), { eventId: queried.id }),
    ]) expect((await record(company.owner, projectId, [remark]))[0]).toMatchObject({ outcome: "refused", findings: [{ code: "unknown-event" }] });
  });

  it("that breaks a rule waits for a reason; saved on a phone it waits to be settled instead", async () => {
    const { projectId, column } = await aSite();
    expect(await outcomes(company.leadingHand, projectId, [aTick(column(0), "poured")])).toEqual(["needs-reason"]);
    expect((await rowsOf(projectId))[0]).toMatchObject({ events: 0 });
    expect(await outcomes(company.leadingHand, projectId, [aTick(column(0), "poured")], true)).toEqual(["queried"]);
  });

  it("acknowledges a broken rule for the owner alone", async () => {
    const { projectId, column } = await aSite();
    const pour = { ...aTick(column(0), "poured"), reason: "Gate released by telephone" };
    await record(company.leadingHand, projectId, [pour]);
    const seen = () => aSiteEvent("acknowledged", column(0), { eventId: pour.id });
    expect((await record(company.leadingHand, projectId, [seen()]))[0]).toMatchObject({ outcome: "refused", findings: [{ code: "owner-only" }] });
    expect(await outcomes(company.owner, projectId, [seen()])).toEqual(["accepted"]);
  });

  it("meant to be somebody else's is not taken in", async () => {
    const { projectId, column } = await aSite();
    const answer = await recordSiteEvents(company.owner, { projectId, personId: company.leadingHand.personId, events: [aTick(column(0), "cut")] });
    expect(refusal(answer)).toBe("not-signed-in");
    expect((await rowsOf(projectId))[0]).toMatchObject({ events: 0 });
  });

  it("that cannot be kept whole leaves nothing, not even a number", async () => {
    const { projectId, column } = await aSite();
    const before = await rowsOf(projectId);
    await withOwner(database.url, async (client) => {
      await client.query(`create function fail_for_test() returns trigger language plpgsql as $$ begin raise exception 'the disk is full'; end $$;
        create trigger fail_for_test before insert on change_line for each row execute function fail_for_test()`);
      await expect(recordSiteEvents(company.leadingHand, { projectId, events: [aTick(column(0), "cut")] })).rejects.toThrow();
      await client.query("drop trigger fail_for_test on change_line");
    });
    expect(await rowsOf(projectId)).toEqual(before);
    expect((await keptStates(database.url, projectId)).every(({ done }) => done === 0)).toBe(true);
  });
});

describe("two who write at once", () => {
  it("share one row of numbers without a gap, each batch in one piece", async () => {
    const { projectId, columnIds } = await aSite();
    const batch = () => columnIds.map((columnId) => aTick(columnId, "cut"));
    const write = async (by: Caller): Promise<number[]> => {
      const last: number[] = [];
      for (let round = 0; round < 10; round += 1) last.push(valueOf(await recordSiteEvents(by, { projectId, events: batch() })).seq);
      return last;
    };
    const ends = (await Promise.all([write(company.leadingHand), write(company.owner)])).flat();
    expect(new Set(ends).size).toBe(20);
    const numbers = await ask<{ seq: number; line: boolean; by: string }>(database.url, `select seq::int, false as line, by_person_id::text as by from site_event where project_id = $1
      union all select seq::int, true, person_id::text from change_line where project_id = $1 order by seq`, [projectId]);
    expect(numbers.map(({ seq }) => seq)).toEqual(numbers.map((_, index) => index + 1));
    for (const end of ends) {
      const own = numbers.slice(end - columnIds.length - 1, end);
      expect([own.at(-1)?.line, own.filter(({ line }) => line).length, new Set(own.map(({ by }) => by)).size]).toEqual([true, 1, 1]);
    }
  });
});
