import "server-only";
import { projectInput } from "#lib/contracts/projects.ts";
import { ok } from "#lib/kernel/result.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listStamp } from "./list-store.ts";
import { projectHead, readRules } from "./project-head.ts";
import { listGridLines, listImports, listLevels, listMarks, readProject } from "./store.ts";

const strip = <T extends { companyId: string; projectId: string }>({ companyId: _c, projectId: _p, ...rest }: T) => rest;

export const readSetUp = async (scope: ProjectScope) => {
  const project = await readProject(scope);
  const [levels, gridLines, marks] = [await listLevels(scope), await listGridLines(scope), await listMarks(scope)];
  return {
    project: projectHead(project),
    ...readRules(project),
    levels: levels.map(strip), gridLines: gridLines.map(strip), marks: marks.map(strip),
    /** To be sent along when a list is saved, so that nobody's save is lost unseen. */
    stamps: { levels: listStamp(levels), gridLines: listStamp(gridLines), marks: listStamp(marks) },
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
