import { backingExample } from "#lib/contracts/workings/backing.ts";
import { clampLayoutExample } from "#lib/contracts/workings/clamp-layout.ts";
import { plumbExample } from "#lib/contracts/workings/plumb.ts";
import { pressureExample } from "#lib/contracts/workings/pressure.ts";
import { sheathingExample } from "#lib/contracts/workings/sheathing.ts";
import { stripTimeExample } from "#lib/contracts/workings/strip-time.ts";
import type { Role } from "#lib/access/roles.ts";
import { createToken, listTokens } from "#lib/server/people/access-tokens.ts";
import { invitePerson } from "#lib/server/people/invitations.ts";
import { listPeople } from "#lib/server/people/manage-people.ts";
import { listClampKinds } from "#lib/server/projects/clamp-kinds.ts";
import { importSchedule } from "#lib/server/columns/import-schedule.ts";
import { previewSchedule } from "#lib/server/columns/schedule-preview.ts";
import { getCuttingRule } from "#lib/server/cutting/cutting-rule.ts";
import { getSetUp } from "#lib/server/projects/get-set-up.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { PASSWORD, type Company } from "#tests/support/builders/a-company.ts";
import { PROJECT, projectAsItIs, type Project } from "#tests/support/builders/a-project.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { aCsv } from "#tests/support/builders/a-schedule.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { gearPermissions } from "./gear-permissions.ts";
import { hirePermissions } from "./hire-permissions.ts";
import { orderPermissions } from "./order-permissions.ts";
import { reusePermissions } from "./reuse-permissions.ts";
import { returnPermissions } from "./return-permissions.ts";

export type Site = { readonly company: Company; readonly project: Project; readonly by: Caller; readonly word: string };
export type Row = {
  readonly may: readonly Role[] | "anyone";
  /** What another company's owner gets with the same input: nothing there, or the same for a company of the own. */
  readonly stranger: "not-found" | "own";
  readonly example: (site: Site) => unknown;
};

const all: readonly Role[] = ["owner", "leading hand", "office"];
const owner: readonly Role[] = ["owner"];
const desk: readonly Role[] = ["owner", "office"];
const crew: readonly Role[] = ["owner", "leading hand"];

const nothing = (): object => ({});
const own = (may: Row["may"], example: Row["example"]): Row => ({ may, stranger: "own", example });
const guarded = (may: Row["may"], example: Row["example"]): Row => ({ may, stranger: "not-found", example });
const ofProject = (may: Row["may"], example: (site: Site) => object = nothing): Row =>
  guarded(may, async (site) => ({ projectId: site.project.projectId, ...(await example(site)) }));

const newcomer = ({ word }: Site): string => `${word}@newcomer.example`;
const leadingHand = ({ company }: Site): { personId: string } => ({ personId: company.leadingHand.personId });
const firstColumn = ({ project }: Site): string => project.columnIds[0] ?? "";
const size = { shape: "rectangle", widthMm: 300, depthMm: 450, headedBy: "slab", formHeightMm: null };
const setUp = async ({ company, project }: Site) => valueOf(await getSetUp(company.owner, { projectId: project.projectId }));
const clampKinds = async ({ company }: Site) => valueOf(await listClampKinds(company.owner, {}));
const invitation = async (site: Site) => valueOf(await invitePerson(site.company.owner, { email: newcomer(site), role: "office" }));
const schedule = { fileName: "lifts.csv", file: aCsv([["N1", "A/9", "300x450", "Ground", "First"]]) };

/** Every use case, who may, and an input that serves. A use case without a row fails the test. */
export const PERMISSIONS: Readonly<Record<string, Row>> = {
  "people.mayFoundCompany": own("anyone", nothing),
  "people.foundCompany": own("anyone", ({ word }) => ({ companyName: word, name: word, email: `${word}@founder.example`, password: PASSWORD })),
  "people.signIn": own("anyone", ({ company }) => ({ email: company.emailOf("owner"), password: PASSWORD, address: "hut" })),
  "people.readInvitation": own("anyone", async (site) => ({ token: (await invitation(site)).token })),
  "people.acceptInvitation": own("anyone", async (site) => ({ token: (await invitation(site)).token, name: "New", password: PASSWORD })),
  "people.enterByToken": own("anyone", async ({ company }) => ({ token: valueOf(await createToken(company.owner, { name: "t", days: 1 })).token })),

  "people.getOwnAccount": own(all, nothing),
  "people.changePassword": own(all, () => ({ current: PASSWORD, next: "another long password" })),
  "people.createToken": own(all, () => ({ name: "counts", days: 30 })),
  "people.listTokens": own(all, nothing),
  "people.revokeToken": guarded(all, async ({ by }) => ({ tokenId: await tokenOf(by) })),
  "people.listPeople": own(all, nothing),
  "people.invitePerson": own(owner, (site) => ({ email: newcomer(site), role: "office" })),
  "people.linkNewPassword": guarded(owner, leadingHand),
  "people.revokeInvitation": guarded(owner, async (site) => ({ invitationId: await openInvitation(site) })),
  "people.changeRole": guarded(owner, (site) => ({ ...leadingHand(site), role: "office" })),
  "people.setPersonActive": guarded(owner, (site) => ({ ...leadingHand(site), isActive: false })),

  "workings.startWorkings": ofProject(all),
  "workings.workOutPressure": own(all, () => pressureExample),
  "workings.workOutSheathing": own(all, () => sheathingExample),
  "workings.workOutBacking": own(all, () => backingExample),
  "workings.workOutClampLayout": own(all, () => clampLayoutExample),
  "workings.workOutStripTime": own(all, () => stripTimeExample),
  "workings.workOutPlumb": own(all, () => plumbExample),

  "projects.listProjects": own(all, nothing),
  "projects.createProject": own(desk, ({ word }) => ({ ...PROJECT, name: word })),
  "projects.getProject": ofProject(all),
  "projects.getSetUp": ofProject(all),
  "projects.changeProject": ofProject(desk, ({ company, project }) => projectAsItIs(company.owner, project.projectId)),
  "projects.archiveProject": ofProject(desk, () => ({ archived: true })),
  "projects.changeShutterRule": ofProject(desk, async (site) => ({ shutterRule: (await setUp(site)).shutterRule })),
  "projects.changePourConditions": ofProject(desk, async (site) => ({ pourConditions: (await setUp(site)).pourConditions })),
  "projects.saveLevels": ofProject(desk, async (site) => ({ levels: (await setUp(site)).levels })),
  "projects.saveGridLines": ofProject(desk, async (site) => ({ gridLines: (await setUp(site)).gridLines })),
  "projects.saveMarks": ofProject(desk, async (site) => ({ marks: (await setUp(site)).marks })),
  "projects.listClampKinds": own(all, nothing),
  "projects.saveClampKind": guarded(desk, async (site) => ({ ...(await clampKinds(site))[0], isExample: false })),
  "projects.retireClampKind": guarded(desk, async (site) => ({ clampKindId: (await clampKinds(site))[0]?.id })),

  "columns.getColumnsSheet": ofProject(all),
  "columns.getColumn": ofProject(all, (site) => ({ columnId: firstColumn(site) })),
  "columns.addColumns": ofProject(desk, ({ project: { marks, levels } }) => ({
    markId: marks["K1"], gridRefs: ["A/8"], fromLevelId: levels["First"], toLevelId: levels["Roof"], headedBy: "slab", formHeightMm: null,
  })),
  "columns.changeColumn": ofProject(desk, (site) => ({ ...size, columnId: firstColumn(site), version: 0, concrete: null, remarks: null, reason: null })),
  "columns.changeMarkOnLevel": ofProject(desk, ({ project }) => ({ ...size, markId: project.marks["K1"], fromLevelId: project.levels["Ground"], andAbove: false })),
  "columns.removeColumns": ofProject(desk, (site) => ({ columnIds: [firstColumn(site)], reason: "Left out by the engineer" })),
  "columns.previewSchedule": ofProject(desk, () => schedule),
  "columns.importSchedule": ofProject(desk, async ({ company, project: { projectId } }) => ({
    ...schedule, digest: valueOf(await previewSchedule(company.owner, { projectId, ...schedule })).digest,
  })),
  "columns.getImportFile": ofProject(desk, async (site) => ({ importId: await importId(site) })),

  "pours.getPlannedDays": ofProject(all),
  "pours.savePlannedDays": ofProject(all, (site) => ({ columns: [{ columnId: firstColumn(site), pour: "Pour 1", stoodOn: "2031-03-03", pouredOn: "2031-03-04" }] })),

  "cutting.getCuttingRule": ofProject(all),
  "cutting.changeCuttingRule": ofProject(desk, cuttingRule),
  "cutting.getCuttingOrder": ofProject(all),
  "cutting.getReuseOrder": ofProject(all),
  ...reusePermissions(ofProject),

  "progress.getToday": ofProject(all),
  "progress.readChanges": ofProject(all, () => ({ since: 0 })),
  "progress.recordSiteEvents": ofProject(crew, (site) => ({ events: [aTick(firstColumn(site), "cut")] })),

  ...gearPermissions(ofProject),
  ...hirePermissions(ofProject),
  ...orderPermissions(ofProject),
  ...returnPermissions(ofProject),
};

async function cuttingRule({ company, project: { projectId } }: Site): Promise<object> {
  const { project, cuttingRule } = valueOf(await getCuttingRule(company.owner, { projectId }));
  return { version: project.version, cuttingRule };
}

async function tokenOf(by: Caller): Promise<string> {
  valueOf(await createToken(by, { name: "to be revoked", days: 1 }));
  return valueOf(await listTokens(by, {}))[0]?.id ?? "";
}

async function importId(site: Site): Promise<string> {
  const { company: { owner: by }, project: { projectId } } = site;
  const { digest } = valueOf(await previewSchedule(by, { projectId, ...schedule }));
  valueOf(await importSchedule(by, { projectId, ...schedule, digest }));
  return (await setUp(site)).imports[0]?.id ?? "";
}

async function openInvitation(site: Site): Promise<string> {
  await invitation(site);
  return valueOf(await listPeople(site.company.owner, {})).invitations[0]?.id ?? "";
}
