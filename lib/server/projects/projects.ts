import "server-only";
import { archiveProjectInput, changePourConditionsInput, changeProjectInput, changeShutterRuleInput, createProjectInput } from "#lib/contracts/projects.ts";
import { nothing } from "#lib/contracts/people.ts";
import { conflict, brokenRule, ok } from "#lib/kernel/result.ts";
import { EXAMPLE_POUR, EXAMPLE_POUR_US, EXAMPLE_RULE, EXAMPLE_RULE_US } from "#lib/trade/shutter/example-rule.ts";
import { recordChange } from "../gate/change-line.ts";
import { companyUseCase, projectUseCase } from "../gate/use-case.ts";
import { clashOf } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { refoldProject } from "../progress/refold.ts";
import { toProgressRule } from "../progress/rule.ts";
import { projectHead, readRules } from "./project-head.ts";
import { addProjectRow, changeProjectRow, listProjectRows, readProject, setOnProject } from "./store.ts";

const asDate = (day: string | null): Date | null => (day === null ? null : new Date(`${day}T00:00:00Z`));

export const listProjects = companyUseCase("projects.listProjects", "project.read", nothing, async (scope) =>
  ok(
    (await listProjectRows(scope)).map(({ project, counts }) => ({
      id: project.id, name: project.name, site: project.site, units: project.units === "us" ? ("us" as const) : ("metric" as const), isArchived: project.archivedAt !== null,
      counts: counts.map(({ done, count, flagged }) => ({ done, count, flagged })),
    })),
  ),
);

/** Gates asked for by default: the two that stop work which cannot be undone. */
const DEFAULT_PROGRESS = {
  plumbing: "during-pour",
  stripAfterHours: 24,
  gates: { "set-out checked": false, "cage released": false, "pre-pour released": true, "strip released": false },
};

export const createProject = companyUseCase("projects.createProject", "project.set-up", createProjectInput, async (scope, input) => {
  try {
    return ok(
      await addProjectRow(scope, {
        ...input, id: newId(), startsOn: asDate(input.startsOn),
        progressRule: DEFAULT_PROGRESS, shutterRule: input.units === "us" ? EXAMPLE_RULE_US : EXAMPLE_RULE, pourConditions: input.units === "us" ? EXAMPLE_POUR_US : EXAMPLE_POUR,
      }),
    );
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("project-name-taken", { name: input.name });
    throw error;
  }
});

export const changeProject = projectUseCase("projects.changeProject", "project.set-up", changeProjectInput, async (scope, input) => {
  const { projectId: _, version, startsOn, ...basics } = input;
  try {
    const kept = await changeProjectRow(scope, version, { ...basics, startsOn: asDate(startsOn) });
    if (!kept) return conflict("project");
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("project-name-taken", { name: input.name });
    throw error;
  }
  const seq = await recordChange(scope, { kind: "set-up", detail: { changed: "project" } });
  const project = await readProject(scope);
  await refoldProject(scope, toProgressRule(readRules(project).progressRule, projectHead(project)));
  return ok({ seq });
});

export const archiveProject = projectUseCase("projects.archiveProject", "project.set-up", archiveProjectInput, async (scope, { archived }) => {
  await setOnProject(scope, { archivedAt: archived ? scope.now : null });
  return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { archived } }) });
});

export const changeShutterRule = projectUseCase(
  "projects.changeShutterRule", "project.set-up", changeShutterRuleInput, async (scope, { shutterRule }) => {
    await setOnProject(scope, { shutterRule });
    return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { changed: "shutter rule" } }) });
  },
);

export const changePourConditions = projectUseCase(
  "projects.changePourConditions", "project.set-up", changePourConditionsInput, async (scope, { pourConditions }) => {
    await setOnProject(scope, { pourConditions });
    return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { changed: "pour conditions" } }) });
  },
);
