import "server-only";
import { projectInput } from "#lib/contracts/projects.ts";
import { ok } from "#lib/kernel/result.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { projectHead, readRules } from "./project-head.ts";
import { listGridLines, listImports, listLevels, listMarks, readProject } from "./store.ts";

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
