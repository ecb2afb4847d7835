import { groupBy } from "#lib/kernel/group-by.ts";
import { randomBytes } from "node:crypto";
import { dayIn } from "#lib/kernel/days.ts";
import { uuidv7From } from "#lib/kernel/ids.ts";
import type { ProposedEventInput } from "#lib/contracts/progress.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { atMoment } from "#lib/server/platform/clock.ts";
import { closeDb } from "#lib/server/platform/db.ts";
import { foundCompany } from "#lib/server/people/found-company.ts";
import { acceptInvitation, invitePerson } from "#lib/server/people/invitations.ts";
import { signIn } from "#lib/server/people/sign-in.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { hireOut } from "./hire/hire-out.ts";
import { layOutSite, type LaidColumn } from "./lay-out-site.ts";
import { must } from "./must.ts";
import { orderPly } from "./order-ply.ts";
import { planPours } from "./plan-pours.ts";
import { stockGear } from "./stock-gear.ts";
import { CLINIC, COMPANY, PASSWORD, PEOPLE, WHARF } from "./scenario.ts";
import { cycleOf, STEPS_OF, type Happening } from "./work-done.ts";

export type DemoSignIn = { email: string; password: string; role: string };
const signIns: DemoSignIn[] = PEOPLE.map(({ email, role }) => ({ email, password: PASSWORD, role }));

const enter = async (email: string): Promise<Caller> =>
  must(`sign in ${email}`, await signIn({ email, password: PASSWORD, address: "demo" }));

/**
 * The demo company: two sites, one half built, about 120 columns, the three roles. Goes through the same use cases as
 * everyone, at the moments it tells of. Does nothing when the company is there already.
 */
export async function loadDemo(databaseUrl: string): Promise<DemoSignIn[]> {
  process.env["DATABASE_URL"] = databaseUrl;
  process.env["ALLOW_NEW_COMPANIES"] = "true";
  try {
    if (await isThere()) return signIns;
    const [owner, ...others] = PEOPLE;
    must("found the company", await foundCompany({ companyName: COMPANY, name: owner.name, email: owner.email, password: PASSWORD }));
    const caller = await enter(owner.email);
    for (const { email, name, role } of others) {
      const { token } = must("invite", await invitePerson(caller, { email, role }));
      must("join", await acceptInvitation({ token, name, password: PASSWORD }));
    }
    const wharf = await layOutSite(caller, WHARF, 30);
    await layOutSite(caller, CLINIC, 3);
    const leadingHand = await enter(PEOPLE[1].email);
    const { timeZone, currency, workingDays } = WHARF.project;
    await hireOut(await enter(PEOPLE[2].email), leadingHand, { projectId: wharf.projectId, timeZone, currency });
    await planPours(caller, { projectId: wharf.projectId, timeZone, workingDays }, wharf.columns.filter(({ level }) => level === "Level 3" || level === "Level 4"));
    await stockGear(caller, wharf);
    await orderPly(await enter(PEOPLE[2].email), leadingHand, { projectId: wharf.projectId, timeZone });
    await buildHalf(leadingHand, wharf);
    await holdOne(leadingHand, wharf);
    return signIns;
  } finally {
    await closeDb();
  }
}

async function isThere(): Promise<boolean> {
  return (await signIn({ email: PEOPLE[0].email, password: PASSWORD, address: "demo" })).ok;
}

/** Two lifts stripped, the third in every stage, the rest to come. */
function stepsFor(column: LaidColumn): { daysAgo: number; steps: number } {
  if (column.level === "Ground") return { daysAgo: 22 - Math.floor(column.place / 5), steps: STEPS_OF.stripped };
  if (column.level === "Level 1") return { daysAgo: 13 - Math.floor(column.place / 5), steps: STEPS_OF.stripped };
  if (column.level !== "Level 2") return { daysAgo: 0, steps: STEPS_OF.nothing };
  const row = Math.floor(column.place / 4);
  const steps = [STEPS_OF.stripped, STEPS_OF.plumbed, STEPS_OF.clamped, STEPS_OF.stood, STEPS_OF.cut][row] ?? 0;
  return { daysAgo: [6, 3, 2, 2, 1][row] ?? 0, steps };
}

async function buildHalf(caller: Caller, site: { projectId: string; columns: readonly LaidColumn[] }): Promise<void> {
  const today = dayIn(new Date().toISOString(), WHARF.project.timeZone);
  const happenings = site.columns.flatMap((column) => {
    const { daysAgo, steps } = stepsFor(column);
    return cycleOf(today, WHARF.project.timeZone, WHARF.project.workingDays, daysAgo, steps, column.place * 2)
      .map((happening) => ({ ...happening, columnId: column.id }));
  });
  const past = happenings.filter(({ at }) => Date.parse(at) < Date.now() - 60_000).sort((a, b) => a.at.localeCompare(b.at));
  for (const [at, group] of groupBy(past, (happening) => happening.at.slice(0, 13))) {
    const arrived = new Date(Math.min(Date.parse(`${at}:59:00Z`), Date.now())).toISOString();
    const events = group.map(toEvent);
    const answer = must("record the work", await atMoment(arrived, () => recordSiteEvents(caller, { projectId: site.projectId, events })));
    const odd = answer.answers.find(({ outcome }) => outcome !== "accepted" && outcome !== "repeat");
    if (odd) throw new Error(`The demo's own record was not accepted: ${JSON.stringify(odd)}`);
  }
}

/** One column waits for others, as there always is one. */
async function holdOne(caller: Caller, site: { projectId: string; columns: readonly LaidColumn[] }): Promise<void> {
  const column = site.columns.find(({ level, place }) => level === "Level 2" && place === 13);
  if (!column) throw new Error("The demo has no column to hold.");
  const now = new Date();
  const event = {
    kind: "held" as const, id: uuidv7From(now.getTime(), randomBytes(10)), columnId: column.id, happenedAt: now.toISOString(),
    reason: "Cast-in plate for the balustrade not on site yet",
  };
  must("hold a column", await recordSiteEvents(caller, { projectId: site.projectId, events: [event] }));
}

const toEvent = ({ step, at, columnId }: Happening & { columnId: string }): ProposedEventInput => ({
  ...step, id: uuidv7From(Date.parse(at), randomBytes(10)), columnId, happenedAt: at, reason: null,
});
