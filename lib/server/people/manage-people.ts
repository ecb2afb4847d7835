import "server-only";
import { changeRoleInput, nothing, setActiveInput } from "#lib/contracts/people.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { companyUseCase } from "../gate/use-case.ts";
import { countActiveOwners, findPersonRow, listOpenInvitations, listPersonRows, setActive, setRole } from "./store.ts";

export const listPeople = companyUseCase("people.listPeople", "people.read", nothing, async (scope) => {
  const invitations = scope.member.role === "owner" ? await listOpenInvitations(scope) : [];
  return ok({
    people: await listPersonRows(scope),
    invitations: invitations.map((row) => ({ ...row, expiresAt: row.expiresAt.toISOString() })),
  });
});

export const changeRole = companyUseCase("people.changeRole", "people.manage", changeRoleInput, async (scope, input) => {
  const owners = await countActiveOwners(scope);
  const person = await findPersonRow(scope, input.personId);
  if (!person) return notFound("person");
  if (person.role === "owner" && person.isActive && input.role !== "owner" && owners <= 1) return brokenRule("last-owner");
  await setRole(scope, person.id, input.role);
  return ok(null);
});

export const setPersonActive = companyUseCase("people.setPersonActive", "people.manage", setActiveInput, async (scope, input) => {
  const owners = await countActiveOwners(scope);
  const person = await findPersonRow(scope, input.personId);
  if (!person) return notFound("person");
  if (person.isActive === input.isActive) return ok(null);
  if (!input.isActive && person.role === "owner" && owners <= 1) return brokenRule("last-owner");
  await setActive(scope, person.id, input.isActive);
  return ok(null);
});
