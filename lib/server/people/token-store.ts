import "server-only";
import type { CompanyScope } from "../gate/scope.ts";

const own = (scope: CompanyScope) => ({ companyId: scope.companyId, personId: scope.member.id });

export const listOwnTokens = (scope: CompanyScope) =>
  scope.tx.accessToken.findMany({
    where: { ...own(scope), revokedAt: null, expiresAt: { gt: scope.now } },
    orderBy: { createdAt: "asc" },
    select: { id: true, name: true, createdAt: true, expiresAt: true, lastUsedAt: true },
  });

export const addToken = (scope: CompanyScope, row: { id: string; name: string; tokenHash: string; expiresAt: string }) =>
  scope.tx.accessToken.create({ data: { ...row, ...own(scope) }, select: { id: true } });

export const revokeOwnToken = async (scope: CompanyScope, id: string): Promise<boolean> =>
  (await scope.tx.accessToken.updateMany({ where: { ...own(scope), id, revokedAt: null }, data: { revokedAt: scope.now } })).count === 1;
