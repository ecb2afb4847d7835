import type { Role } from "#lib/access/roles.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { foundCompany } from "#lib/server/people/found-company.ts";
import { acceptInvitation, invitePerson } from "#lib/server/people/invitations.ts";
import { signIn } from "#lib/server/people/sign-in.ts";
import { valueOf } from "./value-of.ts";

export const PASSWORD = "ten wedges a clamp";

export type Company = {
  readonly companyId: string; readonly name: string;
  readonly owner: Caller; readonly leadingHand: Caller; readonly office: Caller;
  emailOf(role: Role): string;
};

export const signedIn = async (email: string, password = PASSWORD): Promise<Caller> =>
  valueOf(await signIn({ email, password, address: "the site hut" }));

/** A person who took an owner's invitation, signed in. */
export async function aPersonOf(owner: Caller, given: { email: string; role: Role; name?: string }): Promise<Caller> {
  const { token } = valueOf(await invitePerson(owner, { email: given.email, role: given.role }));
  valueOf(await acceptInvitation({ token, name: given.name ?? given.role, password: PASSWORD }));
  return signedIn(given.email);
}

/** A company with one person of each role, all signed in; its name makes their addresses. */
export async function aCompany(name: string): Promise<Company> {
  const emailOf = (role: Role): string => `${role.replace(" ", ".")}@${name.toLowerCase().replaceAll(" ", "-")}.example`;
  const email = emailOf("owner");
  const { companyId } = valueOf(await foundCompany({ companyName: name, name: `Owner of ${name}`, email, password: PASSWORD }));
  const owner = await signedIn(email);
  const leadingHand = await aPersonOf(owner, { email: emailOf("leading hand"), role: "leading hand" });
  const office = await aPersonOf(owner, { email: emailOf("office"), role: "office" });
  return { companyId, name, owner, leadingHand, office, emailOf };
}
