import "server-only";
import { foundCompanyInput, nothing } from "#lib/contracts/people.ts";
import { brokenRule, ok } from "#lib/kernel/result.ts";
import { doorUseCase } from "../gate/use-case.ts";
import { clashOf, transaction } from "../platform/db.ts";
import { env } from "../platform/env.ts";
import { newId } from "../platform/new-id.ts";
import { hashPassword } from "../platform/secrets.ts";
import { addCompany, addPersonTo, hasCompanies } from "./door-store.ts";

/** Open while the database holds no company at all, and as long as the server says so. */
export const mayFoundCompany = doorUseCase("people.mayFoundCompany", nothing, async () =>
  ok(env().ALLOW_NEW_COMPANIES === "true" || !(await transaction(hasCompanies))),
);

export const foundCompany = doorUseCase("people.foundCompany", foundCompanyInput, async (input) => {
  const passwordHash = await hashPassword(input.password);
  try {
    return await transaction(async (tx) => {
      if (env().ALLOW_NEW_COMPANIES !== "true" && (await hasCompanies(tx))) return brokenRule("founding-closed");
      const companyId = newId();
      await addCompany(tx, { id: companyId, name: input.companyName });
      const owner = { id: newId(), email: input.email, name: input.name, role: "owner" as const, passwordHash };
      await addPersonTo(tx, companyId, owner);
      return ok({ companyId, personId: owner.id });
    });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("email-in-use", { email: input.email });
    throw error;
  }
});
