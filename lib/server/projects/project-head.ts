import "server-only";
import { progressRule } from "#lib/contracts/projects.ts";
import { pourConditions, shutterRule } from "#lib/contracts/shutter.ts";
import type { ProjectRow } from "./store.ts";

/** What every page of a project shows or formats by. */
export const projectHead = (row: ProjectRow) => ({
  id: row.id, name: row.name, site: row.site, timeZone: row.timeZone, units: row.units === "us" ? ("us" as const) : ("metric" as const),
  currency: row.currency, workingDays: row.workingDays, startsOn: row.startsOn?.toISOString().slice(0, 10) ?? null,
  isArchived: row.archivedAt !== null, version: row.version, lastSeq: Number(row.lastSeq),
});
export type ProjectHead = ReturnType<typeof projectHead>;

export const readRules = (row: ProjectRow) => ({
  progressRule: progressRule.parse(row.progressRule),
  shutterRule: shutterRule.parse(row.shutterRule),
  pourConditions: pourConditions.parse(row.pourConditions),
});
