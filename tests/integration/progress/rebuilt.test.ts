import { beforeAll, describe, expect, it } from "vitest";
import type { EventAnswer } from "#lib/contracts/progress.ts";
import { getColumn } from "#lib/server/columns/get-column.ts";
import { atMoment } from "#lib/server/platform/clock.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, ruleFor, type Project } from "#tests/support/builders/a-project.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";
import { eventsByColumn, keptStates, rebuiltStates } from "./kept-states.ts";
import { someBatches, toEvent } from "./random-walk.ts";

const SEED = 20_260_417;
const BATCHES = 220;

const database = ownDatabase();
let company: Company;
let project: Project;
const answers: EventAnswer[] = [];
beforeAll(async () => {
  company = await aCompany("Teasel Boxing");
  project = await aProject(company.owner, { gridX: ["A", "B", "C", "D"] });
});

const ruleNow = async () => valueOf(await getColumn(company.owner, { projectId: project.projectId, columnId: project.columnIds[0] ?? "" })).progressRule;

async function walk(): Promise<void> {
  let at = Date.parse("2031-03-03T21:00:00Z");
  for (const batch of someBatches(SEED, project.columnIds.length - 1, BATCHES)) {
    at += batch.minutesLater * 60_000;
    const moment = new Date(at).toISOString();
    const events = batch.steps.map((step) => toEvent(step, moment, project.columnIds[step.column] ?? "", answers));
    const by = batch.byOwner ? company.owner : company.leadingHand;
    const answer = valueOf(await atMoment(moment, () => recordSiteEvents(by, { projectId: project.projectId, saved: batch.saved, events })));
    answers.push(...answer.answers);
    const kept = new Map((await keptStates(database.url, project.projectId)).map((row) => [row.id, row]));
    for (const { id, done, flagged } of answer.columns) expect({ id, done, flagged }).toEqual({ id, done: kept.get(id)?.done, flagged: kept.get(id)?.flagged });
  }
}

describe(`a walk of ${BATCHES} batches over seven columns (seed ${SEED})`, () => {
  it("meets every outcome, and every kind of event in force", async () => {
    await walk();
    expect(new Set(answers.map(({ outcome }) => outcome))).toEqual(new Set(["accepted", "repeat", "queried", "needs-reason", "refused"]));
    const events = [...(await eventsByColumn(database.url, project.projectId)).values()].flat();
    expect(new Set(events.map(({ kind }) => kind)).size).toBe(10);
    expect(events.length).toBeGreaterThan(300);
    const fates = (await keptStates(database.url, project.projectId)).flatMap(({ state }) => (state as { known: { fate: string }[] } | null)?.known ?? []).map(({ fate }) => fate);
    expect(new Set(fates)).toEqual(new Set(["stands", "queried", "set-aside", "withdrawn"]));
  }, 120_000);

  it("leaves every kept state as its events alone make it", async () => {
    expect(await keptStates(database.url, project.projectId)).toEqual(await rebuiltStates(database.url, project.projectId, await ruleNow()));
  });

  it("is not passed by a state that was tampered with", async () => {
    await ask(database.url, "update column_lift set flagged = not flagged where project_id = $1 and id = $2", [project.projectId, project.columnIds[0]]);
    expect(await keptStates(database.url, project.projectId)).not.toEqual(await rebuiltStates(database.url, project.projectId, await ruleNow()));
    await ask(database.url, "update column_lift set flagged = not flagged where project_id = $1 and id = $2", [project.projectId, project.columnIds[0]]);
  });

  it("is folded again when the project's rule changes", async () => {
    const before = await keptStates(database.url, project.projectId);
    await ruleFor(company.owner, project.projectId, {
      plumbing: "before-pour", stripAfterHours: 96, gates: { "set-out checked": true, "cage released": true, "pre-pour released": false, "strip released": true },
    });
    const after = await keptStates(database.url, project.projectId);
    expect(after).not.toEqual(before);
    expect(after).toEqual(await rebuiltStates(database.url, project.projectId, await ruleNow()));
  });

  it("leaves a column nobody spoke of untouched", async () => {
    const [last] = (await keptStates(database.url, project.projectId)).filter(({ id }) => id === project.columnIds.at(-1));
    expect(last).toMatchObject({ done: 0, flagged: false, stateSeq: 0, state: null });
  });
});
