import { beforeAll, describe, expect, it } from "vitest";
import { acceptInvitation, INVITATION_DAYS, invitePerson, linkNewPassword, readInvitation, revokeInvitation } from "#lib/server/people/invitations.ts";
import { listPeople, setPersonActive } from "#lib/server/people/manage-people.ts";
import { getOwnAccount } from "#lib/server/people/own-account.ts";
import { signIn } from "#lib/server/people/sign-in.ts";
import { atMoment } from "#lib/server/platform/clock.ts";
import { aCompany, aPersonOf, PASSWORD, signedIn, type Company } from "#tests/support/builders/a-company.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Sedge Boxing")));

let count = 0;
const anAddress = (): string => `new${(count += 1)}@sedge-boxing.example`;
const invite = async (email: string, role: "owner" | "leading hand" | "office" = "office") => valueOf(await invitePerson(company.owner, { email, role }));
const accept = (token: string) => acceptInvitation({ token, name: "Newly Here", password: PASSWORD });

describe("an invitation", () => {
  it.each(["owner", "leading hand", "office"] as const)("carries the role of %s", async (role) => {
    const email = anAddress();
    const { token } = await invite(email.toUpperCase(), role);
    expect(valueOf(await readInvitation({ token }))).toMatchObject({ email, role, companyName: company.name, setsNewPassword: false });
    expect(valueOf(await accept(token))).toEqual({ email });
    expect(valueOf(await getOwnAccount(await signedIn(email), {}))).toMatchObject({ email, role, companyId: company.companyId });
  });

  it("serves once", async () => {
    const { token } = await invite(anAddress());
    valueOf(await accept(token));
    expect(refusal(await accept(token))).toBe("not-found");
    expect(refusal(await readInvitation({ token }))).toBe("not-found");
  });

  it("serves once, also to two who open it at the same moment", async () => {
    const { token } = await invite(anAddress());
    const answers = await Promise.all([accept(token), accept(token), accept(token)]);
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it(`is over after ${INVITATION_DAYS} days`, async () => {
    const at = new Date(Date.now() - (INVITATION_DAYS * 86_400 + 60) * 1000).toISOString();
    const { token } = await atMoment(at, () => invite(anAddress()));
    expect([refusal(await readInvitation({ token })), refusal(await accept(token))]).toEqual(["not-found", "not-found"]);
  });

  it("is over when it is revoked, or when a newer one was made for the address", async () => {
    const email = anAddress();
    const first = await invite(email);
    const second = await invite(email);
    expect(refusal(await accept(first.token))).toBe("not-found");
    const open = valueOf(await listPeople(company.owner, {})).invitations.find((each) => each.email === email);
    valueOf(await revokeInvitation(company.owner, { invitationId: open?.id ?? "" }));
    expect(refusal(await accept(second.token))).toBe("not-found");
    expect(refusal(await revokeInvitation(company.owner, { invitationId: open?.id ?? "" }))).toBe("not-found");
  });

  it("is over when whoever wrote it is deactivated", async () => {
    const writer = await aPersonOf(company.owner, { email: anAddress(), role: "owner" });
    const { token } = valueOf(await invitePerson(writer, { email: anAddress(), role: "office" }));
    valueOf(await setPersonActive(company.owner, { personId: writer.personId, isActive: false }));
    expect(refusal(await accept(token))).toBe("not-found");
  });

  it("is not written for an address that has a person, here or elsewhere", async () => {
    const other = await aCompany("Rush Boxing");
    expect(refusal(await invitePerson(company.owner, { email: company.emailOf("office"), role: "owner" }))).toBe("email-in-use");
    expect(refusal(await invitePerson(company.owner, { email: other.emailOf("owner").toUpperCase(), role: "owner" }))).toBe("email-in-use");
  });

  it("is refused a short password, and stays open", async () => {
    const { token } = await invite(anAddress());
    expect(refusal(await acceptInvitation({ token, name: "Newly Here", password: "too short" }))).toBe("invalid");
    expect((await accept(token)).ok).toBe(true);
  });
});

describe("a link for a lost password", () => {
  it("sets a new one for the same person and ends their sessions", async () => {
    const email = anAddress();
    const before = await aPersonOf(company.owner, { email, role: "leading hand" });
    const { token } = valueOf(await linkNewPassword(company.owner, { personId: before.personId }));
    expect(valueOf(await readInvitation({ token }))).toMatchObject({ email, setsNewPassword: true });
    valueOf(await acceptInvitation({ token, name: "Somebody Else", password: "a quite different one" }));
    expect(refusal(await getOwnAccount(before, {}))).toBe("not-signed-in");
    expect(refusal(await signIn({ email, password: PASSWORD, address: "hut" }))).toBe("wrong-sign-in");
    const after = await signedIn(email, "a quite different one");
    expect(valueOf(await getOwnAccount(after, {}))).toMatchObject({ id: before.personId, role: "leading hand", name: "leading hand" });
  });
});
