import "server-only";
import type { Role } from "#lib/access/roles.ts";
import type { Tx } from "../platform/db.ts";

declare const sealed: unique symbol;

export type Member = { readonly id: string; readonly name: string; readonly role: Role };

/** What the gate hands to a use case after it has checked the caller; stores take nothing less. */
export type CompanyScope = {
  readonly [sealed]: true;
  readonly tx: Tx;
  readonly companyId: string;
  readonly member: Member;
  readonly now: string;
};
export type ProjectScope = CompanyScope & { readonly projectId: string };

export const sealCompany = (parts: Omit<CompanyScope, typeof sealed>): CompanyScope => parts as CompanyScope;
export const sealProject = (scope: CompanyScope, projectId: string): ProjectScope => ({ ...scope, projectId });
