import { beforeAll, describe, expect, it } from "vitest";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, type Project } from "#tests/support/builders/a-project.ts";
import { aFormSet } from "#tests/support/builders/a-form-set.ts";
import { aStock, NOON } from "#tests/support/builders/a-stock.ts";
import { anId, aTick } from "#tests/support/builders/a-site-event.ts";
import { aCsv } from "#tests/support/builders/a-schedule.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { A_PICTURE } from "./hire-permissions.ts";
import { aFullHire } from "./a-full-hire.ts";
import { aFullOrder } from "./a-full-order.ts";
import { aFullReturn } from "./a-full-return.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { asApp, ask, refusalOf, withOwner } from "#tests/support/raw-sql.ts";
import { importSchedule } from "#lib/server/columns/import-schedule.ts";
import { previewSchedule } from "#lib/server/columns/schedule-preview.ts";
import { addCountPhoto } from "#lib/server/gear/counts/count-photos.ts";
import { lockCount } from "#lib/server/gear/counts/stocktake.ts";
import { assignSet } from "#lib/server/gear/panels/form-sets.ts";
import { recordPanelEvent } from "#lib/server/gear/panels/change-panels.ts";
import { createToken } from "#lib/server/people/access-tokens.ts";
import { invitePerson } from "#lib/server/people/invitations.ts";
import { acceptReuse } from "#lib/server/cutting/reuse/accept-reuse.ts";
import { savePlannedDays } from "#lib/server/pours/planned-days.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";

/** What the app may do to each table; anything more needs a line here, and somebody who reads it. */
const GRANTS: Readonly<Record<string, string>> = {
  access_token: "INSERT SELECT UPDATE", change_line: "INSERT SELECT", clamp_kind: "INSERT SELECT UPDATE", column_lift: "INSERT SELECT UPDATE",
  column_mark: "DELETE INSERT SELECT UPDATE", company: "INSERT SELECT UPDATE", grid_line: "DELETE INSERT SELECT UPDATE",
  invitation: "INSERT SELECT UPDATE", level: "DELETE INSERT SELECT UPDATE", person: "INSERT SELECT UPDATE", planned_days: "INSERT SELECT UPDATE", project: "INSERT SELECT UPDATE",
  schedule_import: "INSERT SELECT", site_event: "INSERT SELECT",
  gear_item: "INSERT SELECT UPDATE", gear_place: "INSERT SELECT UPDATE", gear_movement: "INSERT SELECT", gear_line: "INSERT SELECT", gear_balance: "SELECT",
  hire_supplier: "INSERT SELECT UPDATE", hire_query: "INSERT SELECT UPDATE", hire_terms: "INSERT SELECT", hire_rate: "INSERT SELECT", hire_docket: "INSERT SELECT",
  hire_docket_line: "INSERT SELECT", hire_photo: "INSERT SELECT", hire_invoice: "INSERT SELECT", hire_reversal: "INSERT SELECT",
  return_plan: "INSERT SELECT UPDATE", return_task: "INSERT SELECT UPDATE", calendar_feed: "INSERT SELECT UPDATE",
  gear_panel: "INSERT SELECT", gear_panel_event: "INSERT SELECT", gear_form_set: "INSERT SELECT UPDATE", gear_set_panel: "DELETE INSERT SELECT",
  gear_count: "INSERT SELECT", gear_count_line: "INSERT SELECT", gear_count_photo: "INSERT SELECT", gear_assignment: "INSERT SELECT", gear_shortfall: "INSERT SELECT", panel_reservation: "INSERT SELECT",
  gear_material: "INSERT SELECT", buying_rule: "INSERT SELECT UPDATE", material_order: "INSERT SELECT", material_order_line: "INSERT SELECT",
  material_receipt: "INSERT SELECT", material_receipt_line: "INSERT SELECT", material_order_end: "INSERT SELECT",
};
const APPEND_ONLY = [
  "site_event", "change_line", "schedule_import", "gear_movement", "gear_line", "gear_panel", "gear_panel_event", "gear_count", "gear_count_photo",
  "hire_terms", "hire_rate", "hire_docket", "hire_docket_line", "hire_photo", "hire_invoice", "hire_reversal",
  "gear_material", "material_order", "material_order_line", "material_receipt", "material_receipt_line", "material_order_end",
];
const DOORS = [
  /* Not a door: keeps the balances, and is called by its trigger alone. */ "gear_keep_balances",
  "door_clear_failures", "door_failures", "door_find_feed", "door_find_invitation", "door_find_person", "door_find_token", "door_has_companies", "door_note_failure", "door_tidy",
  /* The worker's: what waits for it, by id alone, and how it hears of more. */ "queue_return_plan", "return_plans_waiting",
];
const [DENIED, APPENDED, NO_SUCH_KEY] = ["42501", "23001", "23503"];

const database = ownDatabase();
let [ours, theirs]: Company[] = [];
const projects = new Map<string, Project>();

/** A company with at least one row in every table that a company has rows in. */
async function aFullCompany(name: string): Promise<Company> {
  const company = await aCompany(name);
  const project = await aProject(company.owner);
  projects.set(company.companyId, project);
  const { projectId, columnIds } = project;
  valueOf(await createToken(company.owner, { name: "t", days: 1 }));
  valueOf(await invitePerson(company.owner, { email: `new@${company.companyId}.example`, role: "office" }));
  valueOf(await recordSiteEvents(company.owner, { projectId, events: [aTick(columnIds[0] ?? "", "cut")] }));
  valueOf(await savePlannedDays(company.owner, { projectId, columns: [{ columnId: columnIds[0] ?? "", pour: null, stoodOn: "2031-03-03", pouredOn: null }] }));
  await aGear(company, project);
  const face = { columnId: columnIds[2] ?? "", face: "A" as const, source: { kind: "new" as const } };
  valueOf(await acceptReuse(company.owner, { projectId, whole: false, lines: [face] }));
  await aFullHire(company, projectId);
  await aFullOrder(company, projectId);
  await aFullReturn(company, project);
  const file = { projectId, fileName: "more.csv", file: aCsv([["K9", "A/9", "300x450", "Ground", "First"]]) };
  valueOf(await importSchedule(company.owner, { ...file, digest: valueOf(await previewSchedule(company.owner, file)).digest }));
  return company;
}
/** Stock, a set of panels on a column, an entry in a panel's life, and something used that the ledger did not know. */
async function aGear({ owner }: Company, { projectId, columnIds }: Project): Promise<void> {
  const [, columnId = ""] = columnIds;
  const stock = await aStock(owner, projectId);
  const countId = anId();
  valueOf(await lockCount(owner, { projectId, countId, placeId: stock.place("rack"), lines: [{ itemId: stock.item("Wedge"), counted: 37 }] }));
  valueOf(await addCountPhoto(owner, { projectId, countId, takenAt: NOON, file: A_PICTURE }));
  const { setId, itemIds } = await aFormSet(owner, projectId, columnId, "S-1");
  valueOf(await assignSet(owner, { projectId, setId, columnId, happenedAt: NOON }));
  valueOf(await recordPanelEvent(owner, { projectId, itemId: itemIds[0] ?? "", kind: "repaired", happenedAt: NOON, reason: "Patched" }));
  valueOf(await recordSiteEvents(owner, { projectId, saved: true, events: [aTick(columnId, "clamped")] }));
}
const at = (company: Company | undefined): Company => {
  if (!company) throw new Error("not set up");
  return company;
};

beforeAll(async () => void ([ours, theirs] = [await aFullCompany("Heron Boxing"), await aFullCompany("Plover Boxing")]));

const tables = async (): Promise<string[]> =>
  (await ask<{ name: string }>(database.url, `select relname as name from pg_class where relnamespace = 'public'::regnamespace
    and relkind in ('r', 'p') and relname <> '_prisma_migrations' order by 1`)).map(({ name }) => name);
const ofCompany = (table: string): string => (table === "company" ? "id" : "company_id");

describe("the locks themselves", () => {
  const unlocked = `select relname as name from pg_class c where relnamespace = 'public'::regnamespace and relkind in ('r', 'p')
    and relname <> '_prisma_migrations' and (not relrowsecurity or not exists (select from pg_policy p where p.polrelid = c.oid
    and p.polqual is not null and p.polwithcheck is not null and p.polcmd = '*'))`;

  it("are on every table", async () => expect(await ask(database.url, unlocked)).toEqual([]));

  it("are missed where they are missing", async () => {
    await withOwner(database.url, async (client) => {
      await client.query("begin; create table forgotten (company_id uuid); create table half (company_id uuid); alter table half enable row level security");
      expect((await client.query(unlocked)).rows.map(({ name }) => name).sort()).toEqual(["forgotten", "half"]);
      await client.query("rollback");
    });
  });

  it("bind the app: it owns nothing, is in no other role and cannot step round them", async () => {
    const [role] = await ask(database.url, `select rolsuper, rolbypassrls, rolcreaterole, rolcreatedb, rolcanlogin, rolreplication,
      (select count(*)::int from pg_class where relowner = r.oid) + (select count(*)::int from pg_proc where proowner = r.oid) owns,
      (select count(*)::int from pg_auth_members where member = r.oid) member_of from pg_roles r where rolname = 'shutterwright_app'`);
    expect(role).toEqual({ rolsuper: false, rolbypassrls: false, rolcreaterole: false, rolcreatedb: false, rolcanlogin: false, rolreplication: false, owns: 0, member_of: 0 });
  });

  it("come with the grants written above and no more", async () => {
    const rows = await ask<{ name: string; may: string }>(database.url, `select table_name as name, string_agg(privilege_type, ' ' order by privilege_type) as may
      from information_schema.role_table_grants where grantee in ('shutterwright_app', 'PUBLIC') and table_schema = 'public' group by 1`);
    expect(Object.fromEntries(rows.map(({ name, may }) => [name, may]))).toEqual(GRANTS);
    expect(await ask(database.url, "select 1 from information_schema.column_privileges where grantee = 'shutterwright_app' and table_name in ('sign_in_attempt', '_prisma_migrations')")).toEqual([]);
  });
});

describe("as the app, for one company", () => {
  it("every other company's rows are out of sight, and out of reach", async () => {
    const [own, other] = [at(ours).companyId, at(theirs).companyId];
    for (const table of (await tables()).filter((name) => GRANTS[name] !== undefined)) {
      const key = ofCompany(table);
      const [there] = await ask<{ count: number }>(database.url, `select count(*)::int count from "${table}" where ${key} = $1`, [other]);
      expect([table, (there?.count ?? 0) > 0]).toEqual([table, true]);
      await asApp(database.url, own, async (client) => {
        const seen = await client.query(`select ${key} as company from "${table}"`);
        expect([table, new Set(seen.rows.map(({ company }) => company))]).toEqual([table, new Set([own])]);
        const may = GRANTS[table] ?? "";
        if (may.includes("UPDATE")) expect((await client.query(`update "${table}" set ${key} = ${key} where ${key} = $1`, [other])).rowCount).toBe(0);
        if (may.includes("DELETE")) expect((await client.query(`delete from "${table}" where ${key} = $1`, [other])).rowCount).toBe(0);
        // A row of one's own taken over, or a new one written in the other's name.
        if (may.includes("UPDATE")) expect([table, await refusalOf(client, `update "${table}" set ${key} = $1`, [other])]).toEqual([table, DENIED]);
        const named = table === "company" ? "(id, name)" : "(company_id)";
        const values = table === "company" ? "($1, 'x')" : "($1)";
        expect([table, await refusalOf(client, `insert into "${table}" ${named} values ${values}`, [other])]).toEqual([table, DENIED]);
      });
    }
  });

  it("nothing at all is in sight before a company is named", async () => {
    for (const table of Object.keys(GRANTS)) {
      await asApp(database.url, null, async (client) => expect([table, (await client.query(`select 1 from "${table}"`)).rowCount]).toEqual([table, 0]));
    }
  });

  it("another role or another table's rows are not to be had by asking", async () => {
    await asApp(database.url, at(ours).companyId, async (client) => {
      expect(await refusalOf(client, "select * from sign_in_attempt")).toBe(DENIED);
      expect(await refusalOf(client, "insert into sign_in_attempt (key) values ('x')")).toBe(DENIED);
      expect(await refusalOf(client, "select * from _prisma_migrations")).toBe(DENIED);
      expect(await refusalOf(client, "alter table person disable row level security")).toBe(DENIED);
      expect(await refusalOf(client, "truncate site_event")).toBe(DENIED);
      expect(await refusalOf(client, "create table public.own (id int)")).toBe(DENIED);
    });
  });

  it("sign-in failures are reached through the doors alone", async () => {
    const rows = await ask<{ name: string; for_all: boolean }>(database.url, `select proname as name, has_function_privilege('public', oid, 'execute') for_all
      from pg_proc where pronamespace = 'public'::regnamespace and prosecdef order by 1`);
    expect(rows).toEqual([...DOORS].sort().map((name) => ({ name, for_all: false })));
    await asApp(database.url, null, async (client) => {
      await client.query("select door_note_failure('k')");
      expect((await client.query("select door_failures('k', 15) as count")).rows).toEqual([{ count: 1 }]);
      await client.query("select door_clear_failures('k')");
      expect((await client.query("select door_failures('k', 15) as count")).rows).toEqual([{ count: 0 }]);
    });
  });
});

describe("as the database's owner, whom no policy binds", () => {
  it("a row still cannot point into another company", async () => {
    const links = await ask<{ name: string; cols: number; key: string; from: string; to: string }>(database.url, `
      select conname as name, cardinality(conkey) cols, pg_get_constraintdef(oid) key, conrelid::regclass::text as from, confrelid::regclass::text as to
      from pg_constraint where contype = 'f' and connamespace = 'public'::regnamespace`);
    expect(links.length).toBeGreaterThan(15);
    const loose = links.filter(({ to, key }) => to !== "company" && !/FOREIGN KEY \(company_id,.*REFERENCES \w+\(company_id,/.test(key));
    expect(loose).toEqual([]);
  });

  it("is refused a column, an event or a token across companies", async () => {
    const [own, other] = [at(ours).companyId, at(theirs).companyId];
    const [mine, others] = [projects.get(own), projects.get(other)];
    await withOwner(database.url, async (client) => {
      await client.query("begin");
      expect(await refusalOf(client, "update column_lift set mark_id = $2 where company_id = $1", [own, others?.marks["K1"]])).toBe(NO_SUCH_KEY);
      expect(await refusalOf(client, "update column_lift set from_level_id = $2 where company_id = $1", [own, others?.levels["Ground"]])).toBe(NO_SUCH_KEY);
      expect(await refusalOf(client, "update column_lift set project_id = $2 where company_id = $1 and id = $3", [own, others?.projectId, mine?.columnIds[5]])).toBe(NO_SUCH_KEY);
      expect(await refusalOf(client, "update access_token set person_id = $2 where company_id = $1", [own, at(theirs).owner.personId])).toBe(NO_SUCH_KEY);
      const event = `insert into site_event (company_id, project_id, id, seq, column_id, kind, payload, happened_at, arrived_at, by_person_id, standing)
        values ($1, $2, gen_random_uuid(), 999999, $3, 'held', '{}', now(), now(), $4, 'accepted')`;
      expect(await refusalOf(client, event, [own, mine?.projectId, others?.columnIds[0], at(ours).owner.personId])).toBe(NO_SUCH_KEY);
      expect(await refusalOf(client, event, [own, mine?.projectId, mine?.columnIds[0], at(theirs).owner.personId])).toBe(NO_SUCH_KEY);
      expect(await refusalOf(client, event, [own, mine?.projectId, mine?.columnIds[0], at(ours).owner.personId])).toBe(null);
      await client.query("rollback");
    });
  });

  it.each(APPEND_ONLY)("%s is never rewritten", async (table) => {
    await withOwner(database.url, async (client) => {
      await client.query("begin");
      expect(await refusalOf(client, `update ${table} set company_id = company_id`)).toBe(APPENDED);
      expect(await refusalOf(client, `delete from ${table}`)).toBe(APPENDED);
      await client.query("rollback");
    });
  });
});
