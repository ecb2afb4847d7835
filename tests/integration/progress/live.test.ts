import { afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import type { LiveMessage } from "#lib/contracts/columns-sheet.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { setPersonActive } from "#lib/server/people/manage-people.ts";
import { followProject } from "#lib/server/progress/follow-project.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { aCompany, aPersonOf, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, ruleFor, type Project } from "#tests/support/builders/a-project.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { aFollowingProcess } from "./following-process.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask, withOwner } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Bracken Boxing")));

const endings: (() => unknown)[] = [];
afterEach(async () => {
  for (const end of endings.splice(0)) await end();
});

let count = 0;
const aSite = (): Promise<Project> => aProject(company.owner, { name: `Site ${(count += 1)}` });
const tickAll = async (by: Caller, { projectId, columnIds }: Project): Promise<number> =>
  valueOf(await recordSiteEvents(by, { projectId, events: columnIds.map((id) => aTick(id, "cut")) })).seq;

type Following = { heard: LiveMessage[]; leave: () => void; hasEnded: () => boolean };
async function following(by: Caller, projectId: string, since = 0): Promise<Following> {
  const heard: LiveMessage[] = [];
  let hasEnded = false;
  let leave = (): void => undefined;
  leave = valueOf(await followProject(by, projectId, since, (message) => heard.push(message), () => {
    hasEnded = true;
    leave();
  }));
  endings.push(leave);
  return { heard, leave, hasEnded: () => hasEnded };
}

const seqs = (messages: readonly LiveMessage[]): number[] => messages.map(({ seq }) => seq);
const linesSince = async (projectId: string, since: number): Promise<number[]> =>
  (await ask<{ seq: number }>(database.url, "select seq::int from change_line where project_id = $1 and seq > $2 order by seq", [projectId, since])).map(({ seq }) => seq);
const until = (check: () => unknown): Promise<unknown> => vi.waitFor(() => expect(check()).toBeTruthy(), { timeout: 8000, interval: 20 });
const lastHeard = ({ heard }: { heard: readonly LiveMessage[] }): number => heard.at(-1)?.seq ?? 0;

describe("who follows a project", () => {
  it("hears in every process each change once, in order and whole, while two write", async () => {
    const site = await aSite();
    const here = await following(company.office, site.projectId);
    const there = await aFollowingProcess({ caller: company.leadingHand, projectId: site.projectId, since: 0 });
    endings.push(there.stop);
    const write = async (by: Caller): Promise<void> => {
      for (let round = 0; round < 20; round += 1) await tickAll(by, site);
    };
    await Promise.all([write(company.leadingHand), write(company.owner)]);
    const expected = await linesSince(site.projectId, 0);
    await until(() => lastHeard(here) === expected.at(-1) && lastHeard(there) === expected.at(-1));
    expect(seqs(here.heard)).toEqual(expected);
    expect(seqs(there.heard)).toEqual(expected);
    expect(here.heard.at(-1)).toMatchObject({ kind: "progress", columns: site.columnIds.map((id) => ({ id, done: 1, flagged: false })) });
  });

  it("misses nothing when the listening connection is cut, in either process", async () => {
    const site = await aSite();
    const here = await following(company.office, site.projectId);
    const there = await aFollowingProcess({ caller: company.leadingHand, projectId: site.projectId, since: 0 });
    endings.push(there.stop);
    await tickAll(company.owner, site);
    const cut = await ask(database.url, "select pg_terminate_backend(pid) from pg_stat_activity where application_name = 'shutterwright live' and datname = current_database()");
    expect(cut).toHaveLength(2);
    const last = await tickAll(company.owner, site);
    await until(() => lastHeard(here) === last && lastHeard(there) === last);
    const again = await tickAll(company.owner, site);
    await until(() => lastHeard(here) === again && lastHeard(there) === again);
    const expected = await linesSince(site.projectId, 0);
    expect([seqs(here.heard), seqs(there.heard)]).toEqual([expected, expected]);
  });

  it("misses nothing when the database cannot be read for a while", async () => {
    const site = await aSite();
    const here = await following(company.office, site.projectId);
    await tickAll(company.owner, site);
    await until(() => lastHeard(here) > 0);
    await withOwner(database.url, async (client) => {
      await client.query("revoke select on change_line from shutterwright_app");
      const last = await tickAll(company.owner, site);
      await new Promise((resolve) => setTimeout(resolve, 300));
      await client.query("grant select on change_line to shutterwright_app");
      await until(() => lastHeard(here) === last);
    });
    expect(seqs(here.heard)).toEqual(await linesSince(site.projectId, 0));
  });

  it("goes on from where it left", async () => {
    const site = await aSite();
    const first = await following(company.office, site.projectId);
    const seen = await tickAll(company.owner, site);
    await until(() => lastHeard(first) === seen);
    first.leave();
    const missed = [await tickAll(company.owner, site), await tickAll(company.owner, site)];
    const second = await following(company.office, site.projectId, seen);
    expect(seqs(second.heard)).toEqual(missed);
    const next = await tickAll(company.owner, site);
    await until(() => lastHeard(second) === next);
    expect([seqs(second.heard), lastHeard(first)]).toEqual([[...missed, next], seen]);
  });

  it("is told to read anew when too much was missed, or when more than ticks changed", async () => {
    const site = await aSite();
    for (let round = 0; round < 101; round += 1) await recordSiteEvents(company.owner, { projectId: site.projectId, events: [aTick(site.columnIds[0] ?? "", "cut")] });
    const late = await following(company.office, site.projectId);
    expect(late.heard).toEqual([{ seq: (await linesSince(site.projectId, 0)).at(-1), kind: "schedule", by: expect.any(String), columns: [] }]);
    await ruleFor(company.owner, site.projectId, { stripAfterHours: 30 });
    await until(() => late.heard.at(-1)?.kind === "set-up");
  });

  it("hears nothing of another project", async () => {
    const [one, other] = [await aSite(), await aSite()];
    const here = await following(company.office, one.projectId, (await linesSince(one.projectId, 0)).at(-1));
    await tickAll(company.owner, other);
    const last = await tickAll(company.owner, one);
    await until(() => lastHeard(here) === last);
    expect(seqs(here.heard)).toEqual([last]);
  });
});

describe("who may no longer", () => {
  it("is not let in: a stranger, nobody, somebody deactivated", async () => {
    const { projectId } = await aSite();
    const stranger = await aCompany("Gorse Boxing");
    const nothing = (): void => undefined;
    expect(refusal(await followProject(stranger.owner, projectId, 0, nothing, nothing))).toBe("not-found");
    expect(refusal(await followProject(null, projectId, 0, nothing, nothing))).toBe("not-signed-in");
  });

  it("is let go at the next change, and the others go on", async () => {
    const site = await aSite();
    const leaver = await aPersonOf(company.owner, { email: "leaver@bracken.example", role: "office" });
    const gone = await following(leaver, site.projectId);
    const stays = await following(company.office, site.projectId);
    const before = lastHeard(gone);
    valueOf(await setPersonActive(company.owner, { personId: leaver.personId, isActive: false }));
    const last = await tickAll(company.owner, site);
    await until(() => gone.hasEnded() && lastHeard(stays) === last);
    expect(lastHeard(gone)).toBe(before);
  });

  it("is let go within a minute where another reads for both, or nothing changes", async () => {
    vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
    endings.push(() => vi.useRealTimers());
    const site = await aSite();
    const leaver = await aPersonOf(company.owner, { email: "second@bracken.example", role: "office" });
    const stays = await following(company.office, site.projectId);
    const gone = await following(leaver, site.projectId);
    valueOf(await setPersonActive(company.owner, { personId: leaver.personId, isActive: false }));
    vi.advanceTimersByTime(60_000);
    await until(gone.hasEnded);
    expect(stays.hasEnded()).toBe(false);
  });
});
