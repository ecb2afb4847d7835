import "server-only";
import { returnLines } from "#lib/contracts/hire/returns.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { enterCompany } from "../gate/store.ts";
import type { Tx } from "../platform/db.ts";

const own = ({ companyId, projectId, member }: ProjectScope) => ({ companyId, projectId, personId: member.id });

export const findOwnFeed = (scope: ProjectScope) =>
  scope.tx.calendarFeed.findFirst({ where: { ...own(scope), revokedAt: null }, select: { id: true, createdAt: true } });

export const addFeed = (scope: ProjectScope, id: string, tokenHash: string) =>
  scope.tx.calendarFeed.create({ data: { ...own(scope), id, tokenHash, createdAt: scope.now }, select: { id: true } });

export const revokeOwnFeeds = async (scope: ProjectScope): Promise<number> =>
  (await scope.tx.calendarFeed.updateMany({ where: { ...own(scope), revokedAt: null }, data: { revokedAt: scope.now } })).count;

/** What a calendar that knows the secret may read: the tasks of its project. */
export async function readFeedAtDoor(tx: Tx, tokenHash: string) {
  const [feed] = await tx.$queryRaw<{ companyId: string; projectId: string }[]>`
    select company_id::text "companyId", project_id::text "projectId" from door_find_feed(${tokenHash})`;
  if (!feed) return null;
  await enterCompany(tx, feed.companyId);
  const project = await tx.project.findFirstOrThrow({ where: { companyId: feed.companyId, id: feed.projectId }, select: { name: true, site: true } });
  const tasks = await tx.returnTask.findMany({ where: feed, include: { supplier: { select: { name: true, phone: true } } }, orderBy: [{ onDay: "asc" }, { id: "asc" }] });
  return {
    project,
    tasks: tasks.map(({ id, kind, onDay, collectOn, lines, state, sequence, changedAt, supplier }) => ({
      id, kind: kind as "call" | "load" | "collect", on: onDay.toISOString().slice(0, 10), collectOn: collectOn.toISOString().slice(0, 10), lines: returnLines.parse(lines),
      state: state as "open" | "done" | "withdrawn", sequence, changedAt: changedAt.toISOString(), supplier: supplier.name, phone: supplier.phone,
    })),
  };
}
