"use server";

import { foundCompany } from "#lib/server/people/found-company.ts";

export async function foundCompanyAction(input: Parameters<typeof foundCompany>[0]) {
  return foundCompany(input);
}
