import { describe, expect, it } from "vitest";
import { createToken, enterByToken, revokeToken, listTokens } from "#lib/server/people/access-tokens.ts";
import { changeRole, listPeople, setPersonActive } from "#lib/server/people/manage-people.ts";
import { changePassword, getOwnAccount } from "#lib/server/people/own-account.ts";
import { createProject, listProjects } from "#lib/server/projects/projects.ts";
import { atMoment } from "#lib/server/platform/clock.ts";
import { aCompany, aPersonOf, PASSWORD, signedIn } from "#tests/support/builders/a-company.ts";
import { PROJECT } from "#tests/support/builders/a-project.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();

describe("the last owner", () => {
  it("stays one, and stays", async () => {
    const { owner } = await aCompany("Wren Boxing");
    expect(refusal(await changeRole(owner, { personId: owner.personId, role: "office" }))).toBe("last-owner");
    expect(refusal(await setPersonActive(owner, { personId: owner.personId, isActive: false }))).toBe("last-owner");
  });

  it("may go once there is another, who is then the last", async () => {
    const { owner } = await aCompany("Lark Boxing");
    const second = await aPersonOf(owner, { email: "second@lark-boxing.example", role: "owner" });
    valueOf(await setPersonActive(owner, { personId: owner.personId, isActive: false }));
    expect(refusal(await changeRole(second, { personId: second.personId, role: "office" }))).toBe("last-owner");
  });

  it("is left even when two owners go at the same moment", async () => {
    for (const round of [1, 2, 3, 4, 5]) {
      const { owner } = await aCompany(`Finch Boxing ${round}`);
      const second = await aPersonOf(owner, { email: `second@finch-${round}.example`, role: "owner" });
      const both = await Promise.all([
        changeRole(owner, { personId: owner.personId, role: "office" }),
        setPersonActive(second, { personId: second.personId, isActive: false }),
      ]);
      expect(both.map(refusal).sort()).toEqual(["last-owner", null].sort());
      const left = both[0].ok ? second : owner;
      const people = valueOf(await listPeople(left, {})).people;
      expect(people.filter(({ role, isActive }) => role === "owner" && isActive)).toHaveLength(1);
    }
  });
});

describe("a session", () => {
  it("ends at the next request once the person is deactivated, and does not come back with them", async () => {
    const { owner, office, emailOf } = await aCompany("Dipper Boxing");
    expect((await listProjects(office, {})).ok).toBe(true);
    valueOf(await setPersonActive(owner, { personId: office.personId, isActive: false }));
    expect(refusal(await listProjects(office, {}))).toBe("not-signed-in");
    valueOf(await setPersonActive(owner, { personId: office.personId, isActive: true }));
    expect(refusal(await listProjects(office, {}))).toBe("not-signed-in");
    expect((await listProjects(await signedIn(emailOf("office")), {})).ok).toBe(true);
  });

  it("ends with the password it was made with; the one that changed it goes on", async () => {
    const { office, emailOf } = await aCompany("Siskin Boxing");
    expect(refusal(await changePassword(office, { current: "wrong one entirely", next: "another long password" }))).toBe("wrong-current-password");
    const renewed = valueOf(await changePassword(office, { current: PASSWORD, next: "another long password" }));
    expect(refusal(await getOwnAccount(office, {}))).toBe("not-signed-in");
    expect((await getOwnAccount(renewed, {})).ok).toBe(true);
    expect((await signedIn(emailOf("office"), "another long password")).personId).toBe(office.personId);
  });

  it("lets nobody at an open screen guess the password for long", async () => {
    const { office } = await aCompany("Wheatear Boxing");
    const guess = async (current: string) => refusal(await changePassword(office, { current, next: "another long password" }));
    for (let tries = 1; tries <= 8; tries += 1) expect(await guess(`wrong one ${tries}`)).toBe("wrong-current-password");
    expect(await guess(PASSWORD)).toBe("too-many-sign-ins");
  });

  it("has the role the person has now", async () => {
    const { owner, office } = await aCompany("Pipit Boxing");
    valueOf(await createProject(office, PROJECT));
    valueOf(await changeRole(owner, { personId: office.personId, role: "leading hand" }));
    expect(refusal(await createProject(office, { ...PROJECT, name: "Second" }))).toBe("not-allowed");
  });
});

describe("a program's token", () => {
  it("acts as the person it belongs to until it runs out, is revoked, or the person goes", async () => {
    const { owner, office } = await aCompany("Linnet Boxing");
    const aToken = async (days = 1): Promise<string> => valueOf(await createToken(office, { name: "counts", days })).token;
    const kept = await aToken();
    expect(valueOf(await enterByToken({ token: kept }))).toEqual(office);
    const old = await atMoment(new Date(Date.now() - 2 * 86_400_000).toISOString(), () => aToken());
    expect(refusal(await enterByToken({ token: old }))).toBe("not-signed-in");
    const [listed] = valueOf(await listTokens(office, {}));
    valueOf(await revokeToken(office, { tokenId: listed?.id ?? "" }));
    expect(refusal(await enterByToken({ token: kept }))).toBe("not-signed-in");
    const last = await aToken();
    expect(refusal(await enterByToken({ token: `${last.slice(0, -1)}?` }))).toBe("not-signed-in");
    valueOf(await setPersonActive(owner, { personId: office.personId, isActive: false }));
    expect(refusal(await enterByToken({ token: last }))).toBe("not-signed-in");
  });
});
