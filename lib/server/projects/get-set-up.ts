import "server-only";
import { progressRule, projectInput } from "#lib/contracts/projects.ts";
import { pourConditions, shutterRule } from "#lib/contracts/shutter.ts";
import { ok } from "#lib/kernel/result.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listGridLines, listImports, listLevels, listMarks, readProject, type ProjectRow } from "./store.ts";

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

const strip = <T extends { companyId: string; projectId: string }>({ companyId: _c, projectId: _p, ...rest }: T) => rest;

export const readSetUp = async (scope: ProjectScope) => {
  const project = await readProject(scope);
  return {
    project: projectHead(project),
    ...readRules(project),
    levels: (await listLevels(scope)).map(strip),
    gridLines: (await listGridLines(scope)).map(strip),
    marks: (await listMarks(scope)).map(strip),
  };
};

export const getProject = projectUseCase("projects.getProject", "project.read", projectInput, async (scope) =>
  ok(projectHead(await readProject(scope))),
);

export const getSetUp = projectUseCase("projects.getSetUp", "project.read", projectInput, async (scope) => {
  const imports = await listImports(scope);
  return ok({
    ...(await readSetUp(scope)),
    imports: imports.map(({ importedAt, person, ...row }) => ({ ...row, importedAt: importedAt.toISOString(), by: person.name })),
  });
});
