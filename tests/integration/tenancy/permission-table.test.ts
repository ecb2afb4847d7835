import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { ROLES, type Role } from "#lib/access/roles.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { useCases } from "#lib/server/gate/use-case.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { refusal } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";
import { PERMISSIONS, type Site } from "./permission-table.ts";

const SERVER = resolve("lib/server");
const areas = readdirSync(SERVER).filter((name) => name !== "gate" && name !== "platform");
for (const area of areas) {
  for (const name of readdirSync(`${SERVER}/${area}`, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts"))) await import(`${SERVER}/${area}/${name}`);
}

const callerOf = (company: Company, role: Role): Caller => ({ owner: company.owner, "leading hand": company.leadingHand, office: company.office })[role];
/** The one who may most comes last, because it may take away what the others are tried on. */
const leastFirst = [...ROLES].reverse();
let count = 0;
const aWord = (): string => `w${(count += 1)}`;

const database = ownDatabase();
let stranger: Company;
/** For whatever leaves its people as they are. */
let shared: Site;
beforeAll(async () => {
  stranger = await aCompany("Fernside Boxing");
  shared = await aSite();
});

async function aSite(): Promise<Site> {
  const company = await aCompany(`Alder ${aWord()}`);
  return { company, project: await aProject(company.owner), by: company.owner, word: aWord() };
}

/** Everything the database holds of a company, as one short word. */
async function imprintOf(companyId: string): Promise<string> {
  const tables = await ask<{ name: string }>(database.url, `select table_name as name from information_schema.columns
    where table_schema = 'public' and column_name = 'company_id' order by 1`);
  const parts = tables.map(({ name }) => `select '${name}' as name, md5(coalesce(string_agg(t::text, '|' order by t::text), '')) as sum from "${name}" t where company_id = $1`);
  return JSON.stringify(await ask(database.url, parts.join(" union all "), [companyId]));
}

it("has a row for every use case, and no row without one", () => {
  expect(Object.keys(PERMISSIONS).sort()).toEqual(useCases().map(({ name }) => name).sort());
});

describe.each(useCases().map((useCase) => [useCase.name, useCase] as const))("%s", (name, { call, within, permission }) => {
  const row = PERMISSIONS[name];
  if (!row) return;
  const given = async (site: Site): Promise<unknown> => row.example({ ...site, word: aWord() });

  if (row.may === "anyone") {
    it("is a door, open to anyone", async () => {
      expect([within, permission]).toEqual(["door", "public"]);
      expect(await call(null, await given(await aSite()))).toMatchObject({ ok: true });
    });
    return;
  }
  const may = row.may;

  it("is open to the roles of its row alone", async () => {
    const site = name.startsWith("people.") ? await aSite() : shared;
    for (const role of leastFirst) {
      const by = callerOf(site.company, role);
      const answer = await call(by, await given({ ...site, by, project: within === "project" ? await aProject(site.company.owner, { name: aWord() }) : site.project }));
      expect([role, refusal(answer)]).toEqual([role, may.includes(role) ? null : "not-allowed"]);
    }
  });

  it("knows nobody without a session that holds, and shows a stranger nothing", async () => {
    const site = shared;
    const input = await given(site);
    const before = await imprintOf(site.company.companyId);
    const { owner } = site.company;
    expect(refusal(await call(null, input))).toBe("not-signed-in");
    expect(refusal(await call({ ...owner, sessionEpoch: owner.sessionEpoch - 1 }, input))).toBe("not-signed-in");
    expect(refusal(await call({ ...owner, companyId: stranger.companyId }, input))).toBe("not-signed-in");
    expect(refusal(await call({ ...stranger.owner, companyId: site.company.companyId }, input))).toBe("not-signed-in");

    const outsider = name === "people.changePassword" ? (await aCompany(`Rowan ${aWord()}`)).owner : stranger.owner;
    const answer = await call(outsider, input);
    expect(refusal(answer)).toBe(row.stranger === "own" ? null : "not-found");
    const told = JSON.stringify(answer);
    for (const secret of [site.company.companyId, site.company.name, site.project.projectId, owner.personId, site.company.emailOf("owner")]) expect(told).not.toContain(secret);
    expect(await imprintOf(site.company.companyId)).toBe(before);
  });
});
