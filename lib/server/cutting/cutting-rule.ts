import "server-only";
import { cuttingRuleInput } from "#lib/contracts/planning/cutting.ts";
import { projectInput } from "#lib/contracts/projects.ts";
import { conflict, ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectHead, readRules } from "../projects/project-head.ts";
import { changeProjectRow, readProject } from "../projects/store.ts";
import { readCuttingRule } from "./read-cutting-rule.ts";

export const getCuttingRule = projectUseCase("cutting.getCuttingRule", "project.read", projectInput, async (scope) => {
  const project = await readProject(scope);
  return ok({ project: projectHead(project), cuttingRule: readCuttingRule(project), ply: readRules(project).shutterRule.ply });
});

export const changeCuttingRule = projectUseCase("cutting.changeCuttingRule", "project.set-up", cuttingRuleInput, async (scope, input) => {
  if (!(await changeProjectRow(scope, input.version, { cuttingRule: input.cuttingRule }))) return conflict("project");
  return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { changed: "ply and timber stock" } }) });
});
